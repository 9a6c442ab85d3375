### When to look again: rules, what is due, what was put off.

## Rules

timing-about-kind = All terminals of this kind: { $kind }
timing-months =
    { $months ->
        [one] every month
       *[other] every { $months } months
    }
timing-every = every { $figure }
timing-season = each year on { $day } { $month } ({ $anchor })
timing-after =
    { $days ->
        [0] at once after { $event }
        [one] a day after { $event }
       *[other] { $days } days after { $event }
    }
timing-after-far = { $after } of at least { $distance }
timing-chance = when the chance that a critical terminal has moved passes { $percent } %
timing-rule = { $about }: { $limits }; whichever comes first.
timing-rule-one = { $about }: { $limits }.
timing-with-word = { $rule } The owner's word: { $word }
timing-yearly = the rig as a whole

## What is due

timing-due = { $about }: due { $date }; { $reason }.
timing-due-at = { $about }: due { $date } or at { $at }; { $reason }.
timing-due-never = { $about }: due now; { $reason }.
timing-put-off = Put off from { $date } to { $until }: { $why }
timing-bound = { $limit }: { $date }
timing-bound-range = { $limit }: about { $date }, between { $from } and { $to } in nine of ten cases
timing-bound-open = { $limit }: about { $date }, not before { $from } in nine of ten cases, and perhaps much later
timing-bound-at = { $bound }, at { $at }
timing-bound-unknown = { $limit }: no day can be told yet. Two notes some weeks apart are needed.

## What was typed and can't be taken

timing-no-rules = There is no rule beside the yearly one.
timing-no-rule = There is no rule number { $number }. The list shows the numbers.
timing-no-due = Nothing that is due has the number { $number }. The list shows the numbers.
timing-no-field = “{ $found }” is no part of a rule. Expected is one of: { $expected }.
timing-no-about = “{ $found }” names no bay, point or kind of fastening of this rig. Leave it out for the whole rig.
timing-no-year-day = “{ $found }” is no day of a year. Expected are month and day, such as 04-15.
timing-no-whole = “{ $found }” is no whole number that can be here. Expected are digits alone.
timing-no-event = A distance of bad road is given without the days after it. Give rough_road too.

## What the rig's own past tells

timing-kind = { $kind }: { $moved } of { $joints } lives ended by moving, a share of { $share } % (between { $least } and { $most } % in nine of ten cases).
timing-kind-law = { $kind } The chance that one has moved a year after it was set: { $share } % (between { $least } and { $most } %).
timing-kind-few = { $kind } Fewer than five have moved: the share is all that can be told.
timing-never-tight = { $count ->
        [one] One terminal had moved that was never known to be tight. It tells nothing of how long a joint holds and is left out.
       *[other] { $count } terminals had moved that were never known to be tight. They tell nothing of how long a joint holds and are left out.
    }
timing-learned-none = No life of a terminal is known yet. One begins when a terminal is set, or found held at its check torque.
timing-learned-first = The first critical terminal likely to have moved: { $point }, by { $date }.
timing-learned-how = A due day from this only ever comes before the fixed rule. A longer interval needs the owner's word, in a rule.
timing-condition = Condition { $number } of 3: { $condition }. An analogy with NFPA 70B (9.3.1), which is for industry and does not bind you; it moves no day.

## The calendar file

timing-calendar = Terminations of { $rig }
timing-event = { $rig }: look at the terminations
timing-event-note = { $items } Take power away and prove it gone first. The maker's label and your local code come before every figure; live parts are for a qualified person.
timing-event-gone = Done or dropped since: it is asked no longer.
timing-calendar-hint = Phones put an app that is not used for months to sleep and drop its reminders. Put the dates into your own calendar too, by the rig's calendar file.

## The keys of when next

timing-key-odometer = Note the odometer
timing-key-hours = Note the hour meter
timing-key-trip = Note a trip
timing-key-event = Something happened
timing-key-rule = A rule of my own
timing-key-put-off = Put off
timing-key-drop = Drop this rule
timing-ask-odometer = What does the odometer show, with its unit, such as 41234 mi?
timing-ask-hours = What does the hour meter show, such as 812 h?
timing-ask-trip = How far was it, with its unit, such as 320 mi?
timing-ask-event = What happened?
timing-ask-note = What was it, in your words?
timing-ask-limit = What is it counted in?
timing-limit-months = Months
timing-limit-distance = Distance
timing-limit-hours = Engine hours
timing-ask-figure = How much, such as 6 for months, 3000 mi, or 100 h?
timing-ask-until = Until when?
