### Units, numbers with units, dates.

## A figure with its unit; text as typed, the second figure computed

unit-figure = { $number } { $unit }
unit-torque = { $number } { $unit } ({ $also } { $alsounit })
unit-between = { $least } to { $most } { $unit }
unit-at-most = at most { $most } { $unit }
unit-minutes =
    { $count ->
        [one] { $count } minute
       *[other] { $count } minutes
    }
unit-points =
    { $count ->
        [one] { $count } point
       *[other] { $count } points
    }

## Dates

unit-date = { $day } { $month } { $year }
unit-date-short = { $day } { $month } { $year }
unit-month-1 = January
unit-month-2 = February
unit-month-3 = March
unit-month-4 = April
unit-month-5 = May
unit-month-6 = June
unit-month-7 = July
unit-month-8 = August
unit-month-9 = September
unit-month-10 = October
unit-month-11 = November
unit-month-12 = December
unit-month-short-1 = Jan
unit-month-short-2 = Feb
unit-month-short-3 = Mar
unit-month-short-4 = Apr
unit-month-short-5 = May
unit-month-short-6 = Jun
unit-month-short-7 = Jul
unit-month-short-8 = Aug
unit-month-short-9 = Sep
unit-month-short-10 = Oct
unit-month-short-11 = Nov
unit-month-short-12 = Dec
