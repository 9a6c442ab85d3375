### Photos: why one is not taken in, what is kept, what is missing.

## Why a file is not taken in

photo-empty = The file is empty: the camera has written nothing. Take the photo again.
photo-none = The file is no photo: neither JPEG nor PNG by its first bytes, whatever its name says. Choose a JPEG or PNG file.
photo-foreign = The file is { $found }; JPEG and PNG are taken in. Set the camera to JPEG, or save the picture as JPEG first.
photo-too-large = The file has more than { $most } MB. Choose a smaller size in the camera.
photo-too-many-pixels = The photo has { $width } × { $height } pixels; photos of this form are taken in up to { $most } million. Choose a smaller size in the camera.
photo-too-many-scans = The photo has { $pixels } pixels in more than { $most } scans, which would take too long to read. Save it anew as a plain JPEG, not a progressive one.
photo-cut-off = The photo is cut off: the file ends before the picture does. Copy it again, or take it again.
photo-damaged = The photo is damaged ({ $why }). Copy it again, or take it again.
photo-unsupported = The photo is of a form that cameras don't write ({ $why }). Save it as a plain JPEG first.
photo-cant-read = The photo { $path } can't be read ({ $why }). Look at its name and place.
photo-no-place = There is no bay, point or source { $found } in the rig. Name one by its code, or the rig by its name.

## Photos that are expected of a camera

photo-expected = Expected: { $path }. It is entered when the walk goes on, or by: photo arrived.
photo-none-expected = No photo is expected.
photo-entered = Entered: the photo of { $about } from { $path }. The file itself still tells what the camera wrote beside it.
photo-nothing = The camera wrote nothing to { $path }; no photo of { $about } is entered.
photo-not-entered = The photo of { $about } in { $path } is not entered and still expected. { $why }
photo-expected-no-longer = No longer expected: { $path }. The file is left where it is.

## Photos held against the ledger

photo-all-there =
    { $count ->
        [0] No entry names a photo.
        [one] The one photo that an entry names is there as it was.
       *[other] All { $count } photos that entries name are there as they were.
    }
photo-some-missing =
    { $missing ->
        [one] One of { $count } photos that entries name is not there as it was.
       *[other] { $missing } of { $count } photos that entries name are not there as they were.
    }
photo-gone = Entry { $seq }, { $about }: the file of the photo is gone ({ $digest }). Bring it back from a backup.
photo-changed = Entry { $seq }, { $about }: the file of the photo is not what was entered ({ $digest }). Bring it back from a backup.
photo-unreadable = Entry { $seq }, { $about }: the file of the photo can't be read ({ $digest }). See that its folder can be read.
photo-original-changed = Entry { $seq }, { $about }: the photo is there, and the picture as it came is not what was kept ({ $digest }).
photo-stray = { $path } ({ $size } kB): no entry names it.
photo-unfinished = { $path } ({ $size } kB): it was not written to its end.
photo-not-ours = { $path } ({ $size } kB): not a file of ours, so it is left alone.
photo-strays =
    { $count ->
        [one] One file is named by no entry. It stays until you remove it by: photo clear. Where newest entries were lost, it may be a photo of theirs; restore a backup first.
       *[other] { $count } files are named by no entry. They stay until you remove them by: photo clear. Where newest entries were lost, they may be photos of theirs; restore a backup first.
    }
photo-cleared =
    { $count ->
        [0] Nothing to remove: every file is named by an entry.
        [one] One file that no entry named is removed, { $size } kB.
       *[other] { $count } files that no entry named are removed, { $size } kB.
    }
photo-thumbnails =
    { $count ->
        [one] One thumbnail is made anew.
       *[other] { $count } thumbnails are made anew.
    }
photo-no-thumbnail = No thumbnail could be made of { $digest }. Check the photos.
photo-originals-kept = Pictures are kept as they came, beside a smaller master: all pixels, with the time and which way is up, and nothing else that the camera wrote. They take ten times the room.
photo-originals-not-kept = Pictures are kept as masters with a long edge of 1600 pixels; the picture as it came is not kept.

## The photo that shows a bay, and its pins

photo-of-bay =
    { $count ->
        [0] Photo of { $bay }, with no pins yet.
        [one] Photo of { $bay }, with a pin at { $pins }.
       *[other] Photo of { $bay }, with pins at { $pins }.
    }
photo-show-newer = Show the newer photo; its pins are put anew
photo-pin-beside = A pin at { $across }, { $down } would stand beside the photo. Expected are thousandths of its width and height, 0 to 1000 each.
photo-none-of-bay = There is no photo of { $bay } to put pins on. Take one in a walk first.
