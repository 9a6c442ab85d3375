### Units, numbers with units, dates.

## A figure with its unit; text as typed, the second figure computed

unit-figure = { $number } { $unit }
unit-torque = { $number } { $unit } ({ $also } { $alsounit })
unit-between = { $least } a { $most } { $unit }
unit-at-most = { $most } { $unit } como máximo
unit-minutes =
    { $count ->
        [one] { $count } minuto
       *[other] { $count } minutos
    }
unit-points =
    { $count ->
        [one] { $count } punto
       *[other] { $count } puntos
    }

## Dates

unit-date = { $day } de { $month } de { $year }
unit-date-short = { $day } { $month } { $year }
unit-month-1 = enero
unit-month-2 = febrero
unit-month-3 = marzo
unit-month-4 = abril
unit-month-5 = mayo
unit-month-6 = junio
unit-month-7 = julio
unit-month-8 = agosto
unit-month-9 = septiembre
unit-month-10 = octubre
unit-month-11 = noviembre
unit-month-12 = diciembre
unit-month-short-1 = ene
unit-month-short-2 = feb
unit-month-short-3 = mar
unit-month-short-4 = abr
unit-month-short-5 = may
unit-month-short-6 = jun
unit-month-short-7 = jul
unit-month-short-8 = ago
unit-month-short-9 = sep
unit-month-short-10 = oct
unit-month-short-11 = nov
unit-month-short-12 = dic
