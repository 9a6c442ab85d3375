### Keeping the logbook safe: backup, restore, recovery, lines.

## Making a backup

backup-made = Backup written and read back: { $path }. { $entries ->
        [one] One entry
       *[other] { $entries } entries
    }, { $photos ->
        [one] one photo
       *[other] { $photos } photos
    }. Keep it off this device.
backup-photos-missing = { $count ->
        [one] One photo that an entry names is missing or damaged, and is not in it.
       *[other] { $count } photos that entries name are missing or damaged, and are not in it.
    }
backup-with-passphrase = Without its passphrase nobody can open it, and nobody can recover the passphrase: keep it apart from the file.
backup-without-passphrase = It has no passphrase: whoever has the file can read all of it.
backup-never = No backup yet: { $entries ->
        [one] one entry
       *[other] { $entries } entries
    } and { $walks ->
        [one] one walk
       *[other] { $walks } walks
    } are on this device alone. Make a backup, and keep it off this device.
backup-since = Since the backup of { $date }: { $entries ->
        [one] one entry
       *[other] { $entries } entries
    } and { $walks ->
        [one] one walk
       *[other] { $walks } walks
    } are on this device alone. Make a new backup, and keep it off this device.
backup-low-room = Little room: { $free } MB are free, and { $low } MB are wanted for a walk with photos (our rule). Make room first; what does not fit is refused, never half kept.
backup-ask-passphrase = Passphrase:
backup-ask-again = Once more:
backup-not-the-same = The two passphrases are not the same. Nothing was written; begin anew.
backup-empty-passphrase = The passphrase is empty. Type one, or leave the option out.

## What can stand in the way

backup-stopped = Stopped. Everything is as it was.
backup-exists = { $path } is there already and is not written over. Choose another name.
backup-no-room = There is no room for the backup. Nothing is left of it; make room or choose another place.
backup-cant-write = { $path } can't be written ({ $why }). Nothing is left of it; choose another place.
backup-read-back = The backup did not read back as it was written, and was taken away again: { $why } Try another place.
backup-unread = It can't be read ({ $why }). Look at its name and place.
backup-no-archive = This is no backup, or one that was cut off. Nothing was touched; use another copy of it.
backup-needs-passphrase = This backup has a passphrase. Give the option for it, then type it.
backup-wrong-passphrase = The passphrase does not open this backup, or its first bytes are damaged. Nothing was touched; type it again.
backup-too-much-work = Opening this file takes more memory than a phone has; it was not made here. Nothing was touched.
backup-too-new = This backup is of a newer version: { $found }, and { $known } is the newest known here. Nothing was touched; use the newer version.
backup-changed = This backup is not as it was written: something was changed, added or cut off. Nothing was touched; use another copy of it.
backup-member = This backup can't be used: { $name }: { $why }. Nothing was touched; use another copy of it.
backup-member-name = no backup has a member of this name
backup-member-twice = it stands twice
backup-member-no-file = it is a link or a folder, and a backup has files alone
backup-member-packed = it is compressed or locked by itself, and nothing in a backup is
backup-member-too-large = it is larger than it can be
backup-member-place = it lies over another one or outside of the file
backup-member-bytes = its bytes are not those that it should have
backup-member-missing = it is missing
backup-member-not-named = no entry names it
backup-line = Line { $line } does not fit: { $why }. Nothing was taken; use another copy of the file.
backup-line-digest = its digest is { $found }, and { $expected } belongs to its bytes behind the line before: something in it was changed, or a line before it is missing
backup-line-number = it calls itself entry { $found }, and entry { $expected } was expected
backup-line-entry = it is no entry as entries are written ({ $why })
backup-line-end = the end is missing, names another entry, or has something behind it
backup-line-form = it is no entry in the form in which entries are written

## Restoring

restore-holds = The backup was made on { $made } and holds { $entries ->
        [one] one entry
       *[other] { $entries } entries
    }, { $rigs ->
        [one] one rig
       *[other] { $rigs } rigs
    }, { $walks ->
        [one] one walk
       *[other] { $walks } walks
    }.
restore-present = Here is a logbook already: { $rigs ->
        [one] one rig
       *[other] { $rigs } rigs
    }, { $walks ->
        [one] one walk
       *[other] { $walks } walks
    }, the newest entry of { $newest }.
restore-same = The backup has all of it.
restore-newer = The backup has all of it and { $more ->
        [one] one entry
       *[other] { $more } entries
    } more.
restore-older = The backup is older: { $lost ->
        [one] one entry here is
       *[other] { $lost } entries here are
    } not in it.
restore-apart = The two went apart: { $lost ->
        [one] one entry here is
       *[other] { $lost } entries here are
    } not in the backup. Two logbooks can't be joined.
restore-other = The backup is of another logbook: { $lost ->
        [one] one entry here is
       *[other] { $lost } entries here are
    } not in it. Two logbooks can't be joined.
restore-unreadable = Here is a logbook already that can't be read.
restore-say-replace = Nothing was touched. To replace it, say so with --replace; what is here is kept under another name.
restore-no-room = There is not enough room: { $needed } MB are needed, { $free } MB are free. Nothing was touched; make room first.
restore-done = Restored. Every entry, photo and table was checked.
restore-kept = What was here is kept in { $path }.
restore-new-proof = A walk is open in it: what was done since the backup is not known. Treat everything as live until it is proved dead anew.

## Recovery

recover-told = { $whole ->
        [one] One entry is
       *[other] { $whole } entries are
    } whole and kept as they were; { $anew ->
        [one] one later entry was
       *[other] { $anew } later entries were
    } read and sealed anew. The damaged ledger had reached entry { $reached }.
recover-gap = Missing: entries { $from } to { $to }, by their old numbers.
recover-no-gap = No entry is missing.
recover-photos-missing = { $count ->
        [one] One photo is missing or damaged.
       *[other] { $count } photos are missing or damaged.
    }
recover-kept = The damaged logbook is kept in { $path }.
recover-new-proof = Where a walk is open, treat everything as live until it is proved dead anew. Make a backup now.
recover-whole = Nothing is damaged, so nothing was done.
recover-none = There is no logbook in this folder. Look at its name and place.
recover-nothing = Not one entry can be read. The file is kept as it is; restore the newest backup.

## Where the logbook comes from

verify-from-backup = Entry { $entry }: restored on { $date } from a backup whose last entry is { $backup }, digest { $digest }.
verify-replaced = It replaced a logbook whose last entry was { $entry }, digest { $digest }.
verify-recovered = Entry { $entry }: recovered on { $date } from a damaged logbook.

## Lines

backup-exported = { $entries } entries written. Newest digest { $digest }.
backup-imported = { $entries } entries taken in, byte for byte. Newest digest { $digest }.
backup-import-into-empty = This logbook has entries, and two logbooks can't be joined. Import into an empty one: name another folder with --store.
