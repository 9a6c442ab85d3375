### The torque card.

## The torque card

advice-check = Set the tool to { $check }: { $percent } % of { $target }, our rule. Turn right, slowly, stop at the click or when it moves.
advice-check-full = Set the tool to { $check }: the full value, the maker's order. Turn right, slowly, stop at the click.
advice-question-check = Did it move?
advice-question-tug = Did it give?
advice-question-look = What do you see?
advice-set = SET TO { $target }, one steady pull.
advice-basis-label = From the label on the part: { $source }
advice-basis-document = From the maker's document: { $source }
advice-basis-table = From { $table }: row { $row }, { $column }. Known: { $known }.
advice-basis-calculation = Calculated, T = K·D·F: K { $factor }, D { $diameter } mm, F { $preload } N (75 % of proof stress). K from { $least } to { $most } gives { $low } to { $high }. It is not the maker's figure.
advice-no-figure = No figure can be trusted here.
advice-no-torque = Not tightened to a torque.
advice-missing = To settle it: { $what }.
advice-other = To compare, not to set by: { $torque }. { $basis }

## The tool

advice-calibration-unknown = Calibration not known. Have it calibrated, or note the day of its last one.
advice-calibration-holds =
    { $left ->
        [one] Calibration holds until { $date }, or one more click.
       *[other] Calibration holds until { $date }, or { $left } more clicks.
    }
advice-calibration-due = Calibration due since { $date }. Have the tool calibrated before its figures are trusted.
advice-calibration-due-clicks = Calibration due by the count of clicks. Have the tool calibrated before its figures are trusted.
