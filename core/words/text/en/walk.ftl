### What a walk says of terminals, sources, readings, findings and the next walk.

## Names of things: code and name

walk-named = { $code }, { $name }
walk-this-source = this source
walk-this-bay = this bay
walk-this-device = this device
walk-this-point = this point
walk-this-tool = this tool
walk-about-rig = the rig

## What a terminal still needs before it may be touched

walk-needs-open = { $bay } is not open. Open it, then prove it dead.
walk-needs-source = { $source } is not away yet, so nothing here can be proved. Take it away first, then prove every pair anew.
walk-needs-sets = { $device } has no set of conductors noted, so nothing can be proved. Note its sets first.
walk-needs-pairs =
    { $left ->
        [one] { $device }: one pair is not proved dead. Read it: { $pair }.
       *[other] { $device }: { $left } pairs are not proved dead. Read the next: { $pair }.
    }
walk-needs-live-again = The meter is not shown to work again. Read the known live { $supply } source once more.
walk-needs-found-live = A conductor at { $device } read live. Keep clear, find what feeds it and take it away, then prove every pair anew.
walk-needs-lapsed = The dead proof no longer counts: { $lapse }. Prove it dead anew.
walk-pair = { $from } to { $to }, { $set }, { $supply }
walk-pair-between = { $from } of { $set } to { $to } of { $other }, { $supply }

## As found

walk-found-held-torque = Held: no turn at { $at } with { $tool }
walk-found-held-tug = Held: did not give at the tug
walk-found-turned = Moved: turned { $angle } below { $below } with { $tool }
walk-found-began = Moved: began to turn at { $at } with { $tool }
walk-found-mark-off = Moved: paint mark off by { $angle }
walk-found-gave = Moved: gave at the tug
walk-found-loose = Loose: moved by hand
walk-found-apart = Apart: conductor out
walk-found-opened = Not judged: opened by us, must be set
walk-found-looked = Looked at, no tool
walk-found-looked-tugged = Looked at and tugged, no torque tool
walk-found-not-judged = Not judged: { $why }
walk-found-not-judged-note = Not judged: { $why }; { $note }

## As left

walk-left-alone = Left as it was: { $why }
walk-left-set = Set to { $torque } with { $tool }
walk-left-remade = Remade
walk-left-remade-set = Remade, set to { $torque } with { $tool }
walk-left-out-of-service = Circuit out of service: { $how }
walk-seen-clear = Nothing to note
walk-seen-trouble = Seen: { $what }

## Sources

walk-away-isolated = away
walk-away-isolated-note = away: { $note }
walk-away-not-found = searched for, not found: counts as connected
walk-away-not-found-note = searched for, not found: counts as connected; { $note }
walk-away-stays = stays live: { $note }

## Readings

walk-measured-works = works
walk-measured-fails = does not work
walk-measured-not = not measured: { $why }
walk-verdict = { $act } { $verdict }: { $expected } ({ $basis }).
walk-verdict-test = { $act } { $verdict }.
walk-expected = { $range } is expected

## Findings and what is decided

walk-finding = { $what }: { $finding }. { $do }
walk-follow-up-by = { $decision }, by { $date }
walk-with-note = { $text }; { $note }

## When next

walk-due = Next walk due { $date }: { $reason }.
walk-due-odometer = Next walk due { $date } or at { $at }: { $reason }.
walk-due-never = Due now: { $reason }.
walk-second-look = Second look at what was set or remade: { $date }, or after 50 to 100 miles.
walk-seen-not-looked = Nobody looked: { $why }
walk-service-faults = What explains it: { $faults }.
walk-service-hidden = Not ruled out yet: { $faults }.
walk-service-fault-at = { $fault } ({ $at })
walk-service-ask-pair = { $ask } Next: { $pair }.
