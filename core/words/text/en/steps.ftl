### The steps of a walk: cards and keys.

## The line under the header

line-live =
    { $count ->
        [0] Power is coming back. Covers stay on.
        [one] Live: one source is not away yet.
       *[other] Live: { $count } sources are not away yet.
    }
line-hands-off = Bay { $bay }: hands off { $left }. Then prove it dead.
line-unproved = Sources away. Treat as live until proved, bay by bay.
line-dead = Only bay { $bay } dead, proved { $time }.
line-dead-but = Bay { $bay } proved { $time }, but part of it stays live by exception.

## On many cards

step-no-key = There is no key “{ $key }” on this card. Press one of those shown.
step-why = Why?
step-note = Note, if any
step-reading = Reading
step-skip = Skip
step-damage = Damage
step-damage-what = What damage?
step-undo = Undo
step-stop = Stop for now
step-close-early = Close up early
step-end-early = End the walk here

## Before

step-ready-title = Before you start
step-ready-done = So it is
step-ready-without = Without it

## Sources

step-away-question = { $source }: taken away?
step-away-search = { $source }: not sure it is there. Search for it.
step-away-wait = Then hands off for { $minutes } minutes ({ $basis }). The end of the wait unlocks nothing.
step-away-key = It is away
step-away-kept = How is it kept away? (tag, lock, plug in hand)
step-away-not-found = Searched, not found
step-away-searched = Where was it searched for?
step-away-stays = It stays on
step-back-question = { $source }: back on?
step-back-key = It is back
step-back-leave = Leave it away

## Bays

step-open-question = Open bay { $bay }
step-open-key = Bay is open
step-open-points =
    { $points ->
        [one] One point, about { $minutes } min to open.
       *[other] { $points } points, about { $minutes } min to open.
    }
step-open-fed = Reached by: { $sources }.
step-close-question = All four true?
step-close-conductors = Conductors lie clear of cover and edges.
step-close-hardware = Screws and nuts counted, all back.
step-close-tools = Tools counted, all out.
step-close-covers = Cover on.
step-close-key = All true, bay closed

## Dead proof

step-prove-title = Prove bay { $bay } dead, { $supply }
step-prove-anew = Prove again: { $why }.
step-prove-found-live = A conductor was found live. Find what feeds it, take it away, prove again.
step-live-before = Read a source that is known to be live.
step-live-again = Read the known live source again: does the meter still work?
step-live-source-ac = For AC: the supply outlet, or a proving unit. None at hand: this bay stays closed.
step-live-source-dc = For DC: a battery.
step-live-key = It reads live
step-live-where = Which source?
step-read-question = { $pair }: what does the meter show?
step-read-key = Enter reading
step-except-question = “{ $set }” has no switch upstream. Go on while it is live?
step-except-rule = Only below 50 V DC, with a reason. Else look only.
step-look-only = Look only
step-look-only-at = { $point }, no hand, no tool
step-except-key = Go on, knowingly

## Points

step-found-turned = Did it move?
step-found-tug = Tug each conductor. Did it give?
step-found-looked = Look, and tug. What did you find?
step-found-how-far = How far did you turn it in?
step-found-held-click = clicked, no turn
step-found-moved-click = turned, then clicked
step-found-held-tug = did not give
step-found-moved-tug = gave a little
step-found-looked-note = looked and tugged, nothing odd
step-found-loose = moves by hand
step-found-apart = conductor is out
step-look-clear = Nothing to note
step-look-trouble = Something there
step-look-what = What is there?
step-left-question = What did you do?
step-left-set = Set to { $torque }
step-left-remade = Remade
step-left-out = Out of service
step-left-how-out = How is it kept from being used?
step-left-alone = Left as it is

## Power back

step-power-title = Bring power back
step-power-question = Covers on, nobody at a bay?
step-power-order = DC first, then the supply measured, then shore, then one load at a time.
step-power-key = Begin
step-measure-where = Where? (a place that needs no cover off)
step-measure-works = Works
step-measure-fails = Does not
step-measure-not = Not measured
step-unsafe-question = Not safe to go on. Do this first, then measure again.
step-end-title = The end of the walk
step-end-question = Done?
step-end-tools = Click tools backed off to their lowest setting. Gas open last, detector alive.
step-end-key = End the walk
step-stopped-title = Stopped
step-stopped-question = Go on where it stopped? Each bay is proved again before it is touched.
step-stopped-key = Go on

## Cautions of single steps

caution-shore = Coach main off, supply breaker off, unplug. Keep the plug in hand or locked.
caution-battery-back = Polarity proved first. Precharge the maker's way; negative last. It arcs: face away.
caution-shore-back = Branch breakers off. Plug in, supply breaker on. Don't touch the body before it is measured.
caution-ac-back = One AC source at a time. See it transfer, and no other way round.
caution-dc-back = After its battery, under no load.
caution-supply-outlet = Live parts: qualified person only. Shrouded probes, one hand; or read a fixed display, or note “not measured”.
caution-excepted = Live by exception here: { $set }, { $device }. One hand, insulated tool.

## Rigs

rigs-empty = No rig is in this logbook yet. Start from a layout close to yours, or load your own rig files.
rigs-walk-open = a walk is open
rigs-no-such = There is no rig “{ $name }” in this logbook. Name one of those that the list shows.
rigs-several = Several rigs are in this logbook. Name the one you mean.
rig-points = { $total } points
rig-points-done = { $done } of { $total } points
rig-moved = { $moved } moved, { $loose } loose, { $apart } apart
rig-findings =
    { $count ->
        [0] No open findings.
        [one] One open finding.
       *[other] { $count } open findings.
    }

## Result, findings, due

result-open = This walk is open.
result-whole = Gone through to the end.
result-early = Ended early: { $why }
result-moved = { $point }: { $found }; left: { $left }
findings-no-day = “{ $found }” is no day. Expected is year, month and day, such as 2027-04-30.
findings-no-such = There is no finding number { $number }. The list shows the numbers.
due-second-look = Second look at what was set or remade, from { $date } or after 50 miles: { $points }.

## What was noted

told-recorded = Noted.
told-dead = Dead.
told-live = LIVE. The bay is locked again. Could be fed by: { $sources }. Hands out, find the source, take it away, prove again.
told-clock-back = The clock of this machine stands before that of an earlier entry. Noted as it is, and marked.
told-lapse = Earlier proofs no longer count: { $why }.
told-struck = Undone.

## Torque by hand

torque-tool-fits = { $tool }: set to { $torque }.

## Checking the logbook

verify-whole = { $entries } entries fit together. Newest digest { $digest }.
verify-broken = Entry { $seq } does not fit: { $why }. What stands before it is sound. Keep the file and restore the last backup beside it.
verify-chain = The chain tells of accident and clumsy change, not of a forger who has the file.

## Points and the book

point-landed = { $landed } landed of { $allowed } allowed
book-nothing = Nothing in the book changes by that.
book-no-code = There is no record with the code { $code } in this rig.
book-no-equals = “{ $found }” is no setting. Expected is a name, an equals sign and a value, such as torque=45 lbf.in.

## Scripts

script-at = Line { $line }: { $what }
script-head = This is no head of a script ({ $found }). Expected is such as { "{" }"script": 1, "seed": "my-walk"{ "}" }.
script-newer = The script has version { $found }; versions up to 2 are read here. Use a newer version of this program.
script-since = This act came with version { $since } of scripts. Write that version in the head, so that an older program tells that the script is newer.
script-line = This line is no act ({ $found }). The list of acts stands in docs/scripts.md.
script-order = The time of this line is before that of an earlier line. A script's lines stand in the order of their times.
script-no-code = Nothing in this rig is called “{ $code }”. Use a code of the rig.
script-missing = This act can't be made of what stands here: look at { $field }.
script-file = A file that this line names can't be used ({ $found }).
script-not-refused = This line is marked as one that the rules refuse, and they did not. Take the mark away or mend the line.

## Replaying a script

replay-refused = Line { $line } is refused, as it should be: { $why }
replay-start = The walk begins.
replay-away = Away: { $name }
replay-open = Open: bay { $name }
replay-close = Closed: bay { $name }
replay-power = Power comes back.
replay-back = Back: { $name }
replay-pause = Stopped for now.
replay-resume = Gone on.
replay-undo = Undone.
replay-left = Set right: { $name }
replay-end = The walk ends.
replay-other = { $name }
try-begin = A sample rig, its whole walk replayed from a script, in the folder { $folder }.
try-end = Look around: baywalk --store { $folder } rig, findings, due, verify; and open the report in a browser.

## Lists of the result

result-out-of-service = Stays out of service:
result-not-judged = Not judged ({ $count }):
result-alive = Alive now:
result-had-moved = What had moved, and how it was left:
result-findings = Open findings ({ $count }):

## Starting, reporting, layouts

start-somebody = somebody
report-none = This rig has not been walked yet. Start with: baywalk walk.
layout-sample-motorhome = an invented 50 A motorhome, whole
layout-sample-trailer = an invented 30 A trailer, whole
layout-starter-motorhome-50a = to start a 50 A motorhome from
layout-starter-trailer-30a = to start a 30 A trailer from
layout-starter-van-dc = to start a van without AC from
layout-starter-empty-motorhome = to build the book of a motorhome on the first walk
layout-starter-empty-trailer = to build the book of a trailer on the first walk
book-no-column = There is no column “{ $found }” in the table of points. docs/rig-files.md lists them.
torque-no-terminal = A look has no torque. Describe a terminal: its role and fastening at least.

## Setting the tool

step-tool-title = Set the tool
step-tool-question = { $tool }: set to { $torque }?
step-tool-key = It is set
step-tool-band = Its class allows ±{ $percent } %: { $low } to { $high } at the joint.

## Photos and the book on the way

step-photo = Photo
step-photo-file = Which file?
step-book = Note in the book
step-book-note = add, change or retire a bay, device or point
step-book-what = What? Such as: add point code=F15 device=FTS name=spare lug role=power fastening=stud
book-no-line = “{ $found }” can't be noted. Expected is such as: add point code=F15 …, change F8 torque=45 lbf.in, retire F8.
line-excepted = Bay { $bay }: live by exception, nothing here is proved dead.
step-close-all = Conductors clear, screws back, tools out, cover on?
step-close-not-yet = Not yet
layout-other = a layout
step-live-meter = Meter: { $name }, { $category }.
step-live-other-meter = With another meter
step-live-meter-name = Which meter?
step-live-meter-category = Which category is marked on it?
step-away-reaches = It reaches: { $bays }.
step-away-stays-live = Stays live after that: { $sets }. Cover it; one insulated tool, no jewellery.
step-unsafe-away = Take { $source } away now
step-unsafe-leave = Leave { $source } away
step-measure-load = The load: a plain heater of { $least } to { $most } W (our rule), electronics off.
torque-role = What does it carry?
torque-fastening = What holds the conductor?
findings-key-decide = Decide
findings-ask-decision = What is to be done about it?
findings-ask-by = By when?
findings-ask-note = A note, such as who was asked
findings-no-date = No date
