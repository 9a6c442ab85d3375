### Words of the command.

## Help of the command

terminal-about = The yearly walk through a motorhome's or trailer's electrical terminations, offline.
terminal-command-try = Walk the sample rig from a recorded script and write its report
terminal-command-rig = Show, load or write out a rig
terminal-command-walk = Walk a rig, prompt by prompt; it goes on where it stopped
terminal-command-torque = Torque advice for a terminal of the rig
terminal-command-due = When the next walk is due, and why
terminal-command-findings = Open findings and what was decided
terminal-command-report = Write the report of a walk
terminal-command-verify = Check the whole ledger
terminal-command-calc = One computation: JSON in, JSON out

## Commands, values and options, added with the shell

terminal-command-note = Note the odometer
terminal-exit-codes = Exit codes: 0 done, 1 unexpected, 2 what was typed or read can't be used, 3 the rules refuse it, 4 no such thing, 5 no room, 6 another process has the logbook, 7 a newer version, 8 damaged.
terminal-torque-fields = A point of a rig by its code (F8), or a terminal by the columns of points.csv: role=power fastening=pressure_screw drives=slotted "wire=6 AWG". docs/rig-files.md lists them.
terminal-rig-layouts = List the layouts to start from
terminal-rig-start = Start a rig of your own from a layout
terminal-rig-load = Load a rig from its two files
terminal-rig-amend = Bring a rig to what its two files say; records that they no longer have are retired
terminal-rig-write = Write a rig to its two files
terminal-rig-add = Add a source, bay, device, point or tool, on a walk too
terminal-rig-change = Change what is noted of a record
terminal-rig-retire = Retire a record; its past stays
terminal-findings-decide = Decide about a finding
terminal-argument-layout = A layout of the list
terminal-argument-name = What you call the rig
terminal-argument-toml = The rig file
terminal-argument-csv = The file of its points
terminal-argument-folder = The folder to write to
terminal-argument-record = What to add
terminal-argument-code = The code of the record, such as F8
terminal-argument-fields = Fields as name=value
terminal-argument-odometer = The reading and its unit, such as "41230 mi"
terminal-argument-out = The file to write
terminal-argument-number = The number of the finding in the list
terminal-argument-decision = mended, licensed, ourselves, next_walk or accepted
terminal-argument-calc = The name of a computation; none lists them
terminal-option-store = The folder of the logbook
terminal-option-language = The language: en or es
terminal-option-json = Print as JSON
terminal-option-folder = The folder for its logbook and report
terminal-option-person = Who walks
terminal-option-bays = Some bays only, by their codes
terminal-option-second-look = Only what the last walk set or remade
terminal-option-script = Replay a script of acts, one JSON object a line
terminal-option-walk = A walk by its id; the last one where left out
terminal-option-by = The day until which it is done
terminal-option-note = A note
terminal-option-rig = The rig by its name
terminal-option-schema = Print the JSON Schemas of what goes in and out
terminal-cant-read = { $path } can't be read ({ $why }). Look at its name and place.
terminal-cant-write = { $path } can't be written ({ $why }). Choose another place, or make room.
terminal-written = Written: { $path }
terminal-kept = Everything entered is kept. The same command goes on at this card.
report-no-walk-id = “{ $found }” names no walk. Leave it out for the last one.
terminal-command-check-share = Show or set the share of the figure at which terminals are checked, and why it is so
terminal-argument-percent = Percent, 80 to 90; none shows it
terminal-command-backup = Write the whole logbook into one file, and read it back
terminal-command-restore = Get the logbook back from a backup; everything is checked first
terminal-command-recover = Get what can be read of a damaged logbook into a new one; the damaged one is kept
terminal-command-export = Write all entries as JSON lines
terminal-command-import = Take exported entries into an empty logbook
terminal-argument-backup = The file to write; one that is there is not written over
terminal-argument-restore = The backup
terminal-argument-export = The file to write
terminal-argument-import = The file of exported entries
terminal-option-passphrase = With a passphrase, typed without being shown or given as the first line of standard input
terminal-option-look = Only check it and tell what a restore would do
terminal-option-replace = Replace the logbook that is here; it is kept under another name
terminal-option-backup = A backup to fill up from
terminal-command-photo = Take photos in, and hold those that are kept against the ledger
terminal-photo-add = Take a photo in from a file, in the open walk
terminal-photo-expect = Note a photo before a camera writes it to a file
terminal-photo-arrived = Enter the expected photos that have arrived
terminal-photo-forget = Expect a photo at a file no longer
terminal-photo-check = Hold every photo against the ledger
terminal-photo-clear = Remove the files that no entry names
terminal-photo-thumbnails = Make all thumbnails anew
terminal-photo-originals = Show or set whether pictures are kept as they came
terminal-argument-about = A point, bay or source by its code, or the rig by its name
terminal-argument-photo = The file: JPEG or PNG
terminal-argument-keep = yes or no; none shows it
terminal-option-caption = What there is to see
terminal-command-plan = What matters most within the minutes at hand for the bays
terminal-option-minutes = The minutes at hand for the bays; without them a plan that was left is rejoined
terminal-option-why = What each rank is made of
terminal-option-follow = Follow the plan in the open walk, or rejoin it
terminal-option-leave = Leave the plan that is followed
