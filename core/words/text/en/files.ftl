### Faults of rig files.

## Where a fault of a rig file stands

file-at = { $file }, line { $line }, column { $column }, { $field }: { $fault }
file-at-no-field = { $file }, line { $line }, column { $column }: { $fault }
file-nothing-stored =
    { $count ->
        [one] One fault was found; nothing is stored. Mend it and load the files again.
       *[other] { $count } faults were found; nothing is stored. Mend them and load the files again.
    }

## The faults

file-too-many-bytes = The file has { $found } bytes or more; at most { $most } are read. Split the rig, or take notes out.
file-too-many-records = There are { $found } records of this kind or more; at most { $most } are read. Take some out.
file-too-many-points = There are { $found } points or more; at most { $most } are read. Take some out.
file-too-many-columns = The table has { $found } columns; at most { $most } are read. Take out what is not in the format.
file-too-many-faults = There are more faults than the { $most } told here. Mend these first, then load the files again.
file-not-utf8 = The file is not UTF-8 text. Save it as UTF-8 in the editor or spreadsheet.
file-syntax = This is not TOML. Expected is a line such as name = "Our rig", or a head such as [[bay]]; look for a missing quotation mark or bracket.
file-separator = The cells are parted by “{ $found }”. Expected is a comma: export the table again with commas.
file-open-quote = A quotation mark is opened here and never closed. Close it, or double it inside the text.
file-newer = The file has format { $found }; formats up to { $known } are read here. Use a newer version of this program.
file-unknown-field = This name is not known here. Expected is one of: { $expected }.
file-repeated-field = This name stands here twice. Keep one of them.
file-missing = This is missing. Fill it in.
file-missing-one-of = None of these is filled: { $expected }. Fill one of them.
file-too-many-cells = The row has { $found } cells and the header { $expected }. A text with a comma in it needs quotation marks.
file-type = This is a value of the type { $found }; expected is { $expected }. Look at the quotation marks.
file-range = “{ $found }” is no range of conductor sizes. Expected is such as 14 AWG to 6 AWG.
file-whole = “{ $found }” does not fit here. Expected is a whole number from { $least } to { $most }.
file-yes-no = “{ $found }” does not fit here. Expected is yes or no.
file-date = “{ $found }” is no date. Expected is year, month and day, such as 2027-03-20.
file-taken = Code { $code } stands already in { $file }, line { $line }. A code is given once in a rig: choose another.
file-no-such-source = There is no source { $code }. Add it to the rig file, or correct the code.
file-no-such-bay = There is no bay { $code }. Add it to the rig file, or correct the code.
file-no-such-device = There is no device { $code }. Add it to the rig file, or correct the code.
file-no-such-set = The device has no set “{ $found }”. Expected is one of: { $expected }.
file-repeated-set = The device has two sets with the name “{ $found }”. Give each set a name of its own.
file-needs = This says nothing without { $other }. Fill { $other } too, or leave this empty.
file-clashes = This can't stand beside { $other }. Keep one of the two.
