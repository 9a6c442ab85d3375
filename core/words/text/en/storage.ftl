### Storage, scripts and the check of the ledger.

## What can stand in the way of storing

storage-unreadable = The logbook in { $path } can't be opened. See that the folder can be read and written, then try again.
storage-newer = The logbook was written by a newer version: format { $found }, and { $known } is the newest known here. It is left untouched; use the newer version.
storage-newer-entry = An entry of the kind { $kind }, version { $found }, is not known here. The logbook is left untouched; use a newer version.
storage-damaged = The logbook is damaged at entry { $entry }. It is kept as it is; restore the newest backup, or recover what can be read.
storage-damaged-file = The file { $path } is no logbook, or is damaged. It is kept as it is; restore the newest backup.
storage-full = There is no room left, so this act is not stored; everything before it is. Make room, then do it again.
storage-busy = Another process holds the logbook: { $holder }. Close it there, then try again.
storage-busy-unknown = Another process holds the logbook. Close it there, then try again.
storage-unexpected = Something went wrong that should not: { $detail }. The logbook is closed as it was; open it again.
storage-same-act = This act is stored already under the same name, but says something else. Nothing is changed; give it a new name.





## Added with the screens

storage-holder = process { $pid }, since { $time }
storage-tail-gone = The ledger ends at entry { $found } and had reached { $expected }: the newest entries are gone. It is kept as it is; restore the newest backup.
storage-damaged-inside = The logbook is damaged ({ $why }). It is kept as it is; restore the newest backup.
storage-earlier = This is earlier than the newest entry: { $found } comes before { $expected }. Lines of a script go in the order of time, and behind all that is there.
