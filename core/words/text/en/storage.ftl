### Storage, scripts and the check of the ledger.

## What can stand in the way of storing

storage-not-found = There is no logbook in { $path }. Name another folder, or start one.
storage-exists = A logbook stands already in { $path }. Name another folder; nothing is changed.
storage-unreadable = The logbook in { $path } can't be opened. See that the folder can be read and written, then try again.
storage-newer = The logbook was written by a newer version: format { $found }, and { $known } is the newest known here. It is left untouched; use the newer version.
storage-newer-entry = An entry of the kind { $kind }, version { $found }, is not known here. The logbook is left untouched; use a newer version.
storage-damaged = The logbook is damaged at entry { $entry }. It is kept as it is; restore the newest backup, or recover what can be read.
storage-damaged-file = The file { $path } is no logbook, or is damaged. It is kept as it is; restore the newest backup.
storage-full = There is no room left, so this act is not stored; everything before it is. Make room, then do it again.
storage-busy = Another process holds the logbook: { $holder }. Close it there, then try again.
storage-busy-unknown = Another process holds the logbook. Close it there, then try again.
storage-failed = This act is not stored: { $detail }. The logbook is as it was before; try again.
storage-unexpected = Something went wrong that should not: { $detail }. The logbook is closed as it was; open it again.
storage-clock-back = The clock stands before the last entry. The act is stored and flagged; set the clock right.
storage-same-act = This act is stored already under the same name, but says something else. Nothing is changed; give it a new name.

## Scripts and imports

storage-script-version = The script has version { $found }; version { $known } is read here. Write it anew in version { $known }.
storage-script-line = Line { $line } of the script can't be read: { $detail }. Nothing from this line on is stored.
storage-script-refused = Line { $line } of the script is refused. { $reason }
storage-script-time = Line { $line } of the script is earlier than the last entry: { $found } comes before { $expected }. Put the lines in order of time.

## The check of the whole ledger

storage-verify-good =
    { $count ->
        [one] One entry checked; the chain is whole. Newest digest: { $digest }.
       *[other] { $count } entries checked; the chain is whole. Newest digest: { $digest }.
    }
storage-verify-broken = The chain breaks at entry { $entry }: { $expected } was expected and { $found } found. Keep the file; restore the newest backup.
storage-verify-empty = The logbook is empty. Load a rig, then check again.
