### The past: charts and what they tell, tables.

## A point through the years

past-point = { $point } through the years
past-point-none = Nothing was noted here yet.
past-point-told = { $walks ->
        [one] In one walk:
       *[other] In { $walks } walks:
    } { $held } × held, { $moved } × moved, loose or apart, { $rest } × looked at or not judged.
past-point-more = { $count ->
        [one] One earlier walk is not drawn; it stands in the list.
       *[other] { $count } earlier walks are not drawn; they stand in the list.
    }
past-one-walk = One walk alone shows no change.
past-set = set { $torque }
past-left-alone = left alone
past-left-out = out of service
past-walk = { $date }: { $told }
past-walk-far = { $walk } (at { $far })

## Kinds that loosen

past-kinds = Kinds that loosen
past-kinds-scale = Share that moved, from 0 to { $most } %; the line is its 90 % interval
past-k-of-n = { $moved } of { $joints }
past-kind = { $kind }: still held, %
past-kind-n = n = { $joints }, { $moved } moved. Boxes: as counted; broken line: law; hatched: its 90 % band
past-kind-axis = months since it was set or known to be tight
past-kind-steps = { $kind }, counted without a law: by { $months } months between { $least } and { $most } % had moved.
past-kind-step = { $kind }, counted without a law: by { $months } months { $least } % had moved.
past-kinds-law = The law is that of copper set by a known hand, all kinds fitted together; inside a box nobody can tell when it moved.
past-moved = { $point }: moved { $times ->
        [one] once
       *[other] { $times } times
    }

## Minutes and voltage

past-minutes = Minutes in each bay
past-minutes-none = No bay was opened in a walk yet.
past-minutes-legend = Bar: last walk; tick: the usual of all walks
past-minutes-axis = minutes open, stops left out
past-minutes-told = In the walk of { $date } the bays stood open for { $all } minutes in all; { $bay } took most, { $most } minutes.
past-volts = Service voltage on power-up
past-volts-none = The voltage of the service was not measured yet.
past-volts-limits = between these lines: what is expected of a leg
past-volts-told = { $reading }: { $walks ->
        [one] measured in one walk, { $last } V.
       *[other] { $least } to { $most } V in { $walks } walks, { $last } V in the last.
    }

past-volts-same = { $reading }: { $walks ->
        [one] measured in one walk, { $last } V.
       *[other] { $last } V in each of { $walks } walks.
    }

## What is asked for

past-no-chart = “{ $found }” is no chart. Expected: point, kinds, minutes or volts.
past-which-point = Whose past is to be drawn? Name a point by its code, such as F8.
past-no-point = The chart “{ $chart }” is of the whole rig, and “{ $found }” was named. Leave it out, or ask for the chart of a point.
past-which-export = Nothing was asked for. Name a file of lines with --to, a folder of tables with --csv, or --schema.

## Tables

past-table = { $file }: { $rows ->
        [one] one row
       *[other] { $rows } rows
    }
past-tables-guard = Text that a spreadsheet would run has an apostrophe before it.
past-cant-write = The tables can't be written ({ $why }). Choose another place, or make room.
past-table-there = { $path } is there already and is not written over. Name another folder.
past-photos-apart = { $count ->
        [0] No entry names a photo.
        [one] One photo is named by its SHA-256 and is not in the file: a backup carries it.
       *[other] { $count } photos are named by their SHA-256 and are not in the file: a backup carries them.
    }
