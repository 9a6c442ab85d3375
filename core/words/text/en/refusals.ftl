### Why an act is not taken: what, what was found, what to do.

## Why an act is not taken: what, what was found, what to do

refusal-no-rig = There is no such rig here. Load a rig file, or start a rig from a layout.
refusal-no-walk = No walk is open for this rig. Start a walk first.
refusal-walk-open = A walk is open already. Go on with it, or end it early, and then do this.
refusal-paused = The walk is stopped for now. Resume it first; every bay then needs a new dead proof.
refusal-not-paused = The walk is not stopped, so there is nothing to resume. Go on where it stands.
refusal-phase-early = Not yet: this belongs to { $expected }, and the walk stands at { $found }. Finish { $found } first.
refusal-phase-late = Too late in this walk: this belongs to { $expected }, and the walk stands at { $found }. Leave it for the next walk, or end this one early and start anew.
refusal-not-ready = Every item of the list before the start is answered before power is taken away; this one is not: { $item }. Answer it: done, or without it and why.
refusal-must-have = The walk can't go on without this: { $item }. See to it, then answer it as done.
refusal-no-sources = No sources are noted for this rig, so nothing can be taken away and proved gone. Note each one first: shore, generator, inverter, solar, batteries, engine or tow link.
refusal-source-not-away = { $source } is not dealt with yet. Taking away: isolate it as its record says, or say why it stays live. Bringing back: restore it, or leave it away and say why.
refusal-source-first = { $source } goes first. Away: solar before its battery. Back: batteries before solar and before AC, and a source before its readings.
refusal-source-done = { $source } is away already, or back already: nothing is to be done there. Undo the earlier act if it was a mistake.
refusal-alive-by-choice = { $bay } stays closed: { $source } stays live and feeds it with AC. Note its points as not judged, or take that source away in a new walk.
refusal-not-in-book = No such { $what } is in use in the rig's book. Choose one from the list, or add it first.
refusal-photo = The photo was not taken in: its digest is not 64 hexadecimal digits. Take the photo again.
refusal-bay-not-open = { $bay } is { $found }; this needs it open. Open it and prove it dead first.
refusal-bay-stage = { $bay } is { $found }; this needs it { $expected }. Bring it there first.
refusal-proximity = A pen tester or other proximity tester proves nothing: it can stay quiet beside a live conductor. Use a meter whose probes touch the conductor; without one, look only.
refusal-no-meter = No contact meter is at hand, as answered before the start, so nothing can be proved dead. Look only in this walk; start a new one with a meter.
refusal-not-known-live = This reading does not show a live source: at least { $least } V { $supply } is expected (our rule). Check meter, range, leads and battery, then read a source that is surely live.
refusal-no-proof = No { $supply } proof runs here, or it no longer counts. Read a named { $supply } source that is known to be live, then the pairs, then that source again.
refusal-no-such-pair = The device has no such set or pair of conductors. Choose one from its list.
refusal-exception-isolate = No exception here. { $reason } Take it away and prove it dead; what can't be taken away is look only, for a qualified person.
refusal-exception-note = No exception here. { $reason } Note it in the book first: charging maximum, or solar in the cold.
refusal-exception-qualified = No exception here. { $reason } Look only; work on it belongs to a qualified person.
refusal-locked = Hands off { $point }. { $needs }
refusal-wrong-kind-terminal = { $point } is a terminal, not a look. Note what was found there: Held, Moved, Loose, Apart, Looked at or Not judged.
refusal-wrong-kind-look = { $point } is a look, not a terminal. Note it as clear, or what was seen.
refusal-noted-already = { $point } is noted already. Correct the note and say why, or undo it if it is the newest act.
refusal-nothing-noted = Nothing is noted at { $point } yet. Note first what was found.
refusal-not-by = { $point } can't be judged or set that way; the advice for it is: { $advice }. Go by its card, or note it as Looked at or Not judged.
refusal-no-tool = This torque tool is not in use in the rig's book. Choose another, or note the tool with its range first.
refusal-leave-what-held = { $point } held, and what held is left alone: the full value would be a re-torque. Go on to the next point.
refusal-remake-not-set = { $point } is remade, not set, because of this finding: { $because }. Remake it, or take its circuit out of service.
refusal-cant-leave-so = { $point } is loose, apart or opened by us, and can't be left so. Set it, remake it, or take its circuit out of service.
refusal-waits-for-left = { $point } moved, or was loose, apart or opened by us, and nothing says how it was left. Note that before the bay closes.
refusal-not-counted = { $bay } does not close yet: conductors clear, hardware back, tools out and cover on must each be seen. Count them, then close.
refusal-bay-open = { $bay } is open already. Go on in it, or close it with everything counted; until then power stays away.
refusal-reading-first = This reading comes first: { $reading }. Take it, or say why it is not taken.
refusal-reading-stops = Power stays away: this reading is not safe: { $reading }. Take away what came back last, find the cause, then read it again.
refusal-no-such-reading = This rig does not ask for this reading: { $reading }. Take the next one of the list.
refusal-measure-is-voltage = This reading is a voltage: { $reading }. Type the volts, or say why it was not measured.
refusal-measure-is-test = This is a test, not a voltage: { $reading }. Say whether it works or not, or why it was not done.
refusal-say-why = A reason, place or name is needed here and nothing was typed. Type it in a few words.
refusal-no-finding = There is no such open finding. Choose one from the list of open findings.
refusal-odometer-back = The odometer reading is below an earlier note. Read the odometer again, and its unit. If it was replaced, or the earlier note was wrong, note that instead.
refusal-nothing-to-mend = No odometer note stands that could be wrong. Note the odometer as it is.
refusal-put-off-too-far = It can't be put off to that day. Expected is a day ahead, at most 92 days from today.
refusal-what-rule = rule
refusal-what-event = event
refusal-not-newest = Only the newest act can be undone, and this is an older one. Undo the newer ones first, or correct the note.
refusal-nothing-to-strike = Nothing is left to undo in this walk. To drop the walk itself, end it early.
refusal-other = This can't be done now, and nothing is changed. Go on with what is asked for next.

## What a record is called in a refusal

refusal-what-source = source
refusal-what-bay = bay
refusal-what-device = device
refusal-what-point = point
refusal-what-tool = tool
refusal-what-record = record

## Refusals of the screens themselves

refused-no-walk = No walk is open for this rig. Start a walk first.
refused-not-in-book = That is not in use in this rig's book. Choose one from the list, or add it first.

refusal-tool-not-set = { $tool } is not said to be set to that. Set it, say so, then use it.
refusal-name-meter = The meter has no name. Type what it is called, so that the report shows that before and after were read with the same one.
refusal-meter-category = This meter proves no AC conductor dead: { $found }. Expected is a contact meter marked CAT II, III or IV for the voltage (our rule); one without may burst on a fault. Without one, look only.
refusal-no-route = No plan is followed, or the plan has no minutes. Make a plan with the minutes at hand first.
