### Words of the report.

## Head

report-title = Walk report: { $rig }, { $day }
report-rig = { $kind }, { $service }
report-walked-by = Walked by { $person }
report-ended-whole = Gone through to the end.
report-ended-early = Ended early: { $why }
report-not-ended = Not ended yet; it stands at: { $phase }.
report-foot = { $edition }, made { $printed }
report-day-and-time = { $day }, { $time }
report-at-time = at { $time }
report-unknown-record = no longer in the book

## Parts

report-part-result = What came of it
report-part-cautions = Cautions
report-part-walk = Rig and walk
report-part-isolated = Power taken away
report-part-proved = Proved dead
report-part-bays = As found, as left
report-part-power = Power brought back
report-part-sources = Where the figures come from
report-part-verify = How to verify this report

## Result

report-out = Stays out of service
report-out-none = Nothing was left out of service.
report-out-bay-open = Bay { $bay } was left open: do not bring power back.
report-out-source = { $source }, left away: { $why }
report-out-source-still = { $source }, not brought back
report-out-circuit = { $point }: { $how }
report-alive = Counts as live
report-alive-source = { $source }: { $why }
report-alive-not-found = searched for, not found
report-alive-never-away = never taken away
report-not-judged = Not judged
report-not-judged-none = Every point was judged.
report-not-judged-bay = { $bay }: { $points }
report-not-judged-all =
    { $count ->
        [one] its one point, not reached
       *[other] all { $count } points, not reached
    }
report-not-judged-point = { $point } ({ $why })
report-not-reached = Not reached
report-counts = Counts
report-gone-through = { $done } of { $total } gone through.
report-strip = The rig from the side, nose left
report-strip-reads = The rig from the side, nose left. Each bay is filled from below by what was found in it, in the patterns above; what is blank was not judged or not reached. Dashed: reached from the right. Thick upper edge: closed again. Raised lid: open.
report-strip-bay = { $bay } ({ $stage }): { $told }.
report-strip-rest =
    { $count ->
        [0] nothing to go through
       *[other] { $count } not reached
    }
report-looked-at-means = Looked at: seen, or seen and tugged, without a torque tool. It does not say that a screw held.
report-moved = What had moved
report-moved-caption =
    { $count ->
        [one] One terminal had moved, was loose or apart
       *[other] { $count } terminals had moved, were loose or apart
    }
report-moved-none = Nothing had moved among what was judged.
report-moved-before = Moved in an earlier walk, not noted as moved in this one: { $points }.
report-findings = Findings
report-findings-none = No open findings.
report-findings-open =
    { $count ->
        [one] One open finding
       *[other] { $count } open findings
    }
report-findings-closed =
    { $count ->
        [one] One closed finding
       *[other] { $count } closed findings
    }
report-finding-since = open since { $day }
report-decided = Decided: { $decision }
report-decided-by = Decided: { $decision }, by { $day }
report-figure-was = The figure shown was { $torque }.
report-next = When next
report-next-walk = Next walk due
report-next-unknown = Not worked out: the walk has not ended.
report-next-distance = or at { $distance } { $unit }, whichever comes first
report-second-look = Second look
report-second-look-why = or after { $miles } miles: what was set or remade settles (common practice by analogy)

## Cautions

report-caution-title = Before anyone works by this report
report-caution-prove = A report proves nothing dead. Take every source away and prove it gone again before a cover is opened.
report-caution-limits = Limits marked “our rule” are this tool’s own. No standard’s text was seen; each value says how it is known. This report tells what one person found on one day; it certifies nothing.

## Rig and walk

report-term-rig = Rig
report-term-kind = Kind and service
report-term-person = Walked by
report-term-began = Began
report-term-last = Last entry
report-term-scope = Went through
report-term-without = Gone without
report-scope-whole = the whole rig
report-scope-plan = { $scope }; by a plan of { $minutes } minutes for the bays, what it left out stands under Not judged
report-scope-second-look = a second look at what had been set or remade
report-scope-bays = bays { $bays }
report-without = { $item }: { $why }
report-tools = Torque tools used
report-tools-none = No torque tool was used.
report-tool-range = { $least } to { $most }
report-col-tool = Tool
report-col-kind = Kind
report-col-calibrated = Calibrated

## Isolation

report-isolated-caption = Each source, as { $person } took it away and brought it back
report-sources-none = No sources are noted for this rig.
report-col-source = Source
report-col-away = Taken away
report-col-back = Brought back
report-away-not-found = Searched for, not found; counted as connected
report-away-stays = Stayed on
report-away-never = Not taken away
report-wait = Hands off for { $minutes } ({ $basis }).
report-back-restored = Brought back
report-back-left = Left away
report-back-not = Not brought back
report-back-never-away = Was never away

## Proof

report-proof-method = A source known to be live, the pairs, that source again, with one contact meter; AC, then DC (NFPA 70E 120.5 as method, second hand).
report-proof-limits = Dead below { $ac } V AC and below { $dc } V DC (our rule).
report-proof-caption = One row a proof, in the order of the bays
report-proof-none = Opened; nothing was proved dead here.
report-proof-shut = Not opened: { $bays }.
report-bay-open = This bay is still open.
report-col-bay = Bay and kind
report-col-known-before = Known live before
report-col-pairs = Pairs read
report-col-known-after = Known live after
report-col-outcome = Outcome
report-known-missing = not read
report-pairs =
    { $count ->
        [one] 1 pair
       *[other] { $count } pairs
    }
report-pairs-read = { $read } of { $asked }
report-highest = highest { $volts }, { $pair }
report-pair = { $device }, { $pair }
report-live-pair = { $pair }: { $volts }
report-pairs-excepted =
    { $count ->
        [one] 1 pair left out by exception
       *[other] { $count } pairs left out by exception
    }
report-pairs-unread =
    { $count ->
        [one] 1 pair not read: counts as live
       *[other] { $count } pairs not read: they count as live
    }
report-proof-spoiled = Proves nothing: a conductor was live
report-lapse-at = { $why }, { $time }
report-proof-unfinished = Proves nothing: meter not shown to work again
report-proof-lapsed = Proof held until it lapsed
report-proof-holds = Proved dead, meter shown to work before and after
report-proof-part = The pairs read were dead, meter shown to work before and after; the rest was not proved
report-exceptions = Knowing exceptions: stayed live
report-col-stays-live = What stayed live
report-col-reason = Reason

## Bays

report-bay-caption =
    { $count ->
        [one] One point
       *[other] { $count } points
    }
report-keep-out = Keep out
report-retired = retired
report-landed =
    { $count ->
        [one] one conductor
       *[other] { $count } conductors
    }
report-allowed = { $landed }, { $allowed } allowed
report-col-point = Point
report-col-torque = Torque
report-col-found = As found
report-col-left = As left
report-basis = { $basis }: { $source }
report-no-figure = No figure
report-nothing-shown = no figure was shown
report-found-angle = { $grade }, { $angle }
report-found-opened = Opened by us
report-held-at = no turn at { $torque }, { $tool }
report-held-tug = did not give at the tug
report-moved-below = turned before { $torque }, { $tool }
report-moved-at = began to turn at { $torque }, { $tool }
report-moved-mark = by its paint mark
report-moved-gave = gave at the tug
report-moved-in-earlier = had moved in an earlier walk
report-looked-tugged = seen and tugged, no torque tool
report-looked-only = seen, no hand, no tool
report-seen-trouble = Something seen
report-damage = damage: { $damage }
report-damage-note = damage: { $damage }; { $note }
report-corrected = corrected note
report-corrected-why = was noted as { $was }: { $why }
report-left-alone = Left as it was
report-left-set = Set to { $torque }
report-with-tool = with { $tool }
report-left-remade = Remade
report-left-out = Out of service
report-left-unsaid = not said how it was left
report-left-as-found = as found
report-left-nothing = nothing done
report-photo = photo { $number }
report-photos = Photos
report-col-where = Where
report-col-finding = Finding
report-col-todo = When, and what to do
report-col-decision = Decision

## Readings

report-readings-caption =
    { $count ->
        [one] One reading or test, at a place that needs no cover off
       *[other] { $count } readings and tests, at places that need no cover off
    }
report-readings-none = Power was not brought back in this walk.
report-not-measured = Not measured
report-limits = { $least } to { $most } V
report-col-reading = Reading
report-col-value = Value
report-col-limits = Expected
report-col-verdict = Verdict

## Sources

report-sources = Labels, documents and tables used
report-no-sources = No figure was used.
report-col-basis = Basis
report-col-source-name = Which
report-col-used = Used at
report-own = Rules of this tool, named as ours:
report-own-check = The check is made below the figure, never above it; what held is not tightened.
report-own-dead = The limits for dead, and 30 minutes after which a proof lapses.
report-own-second-look = The second look after a day or { $miles } miles.

## Verify

report-term-digest = Digest of the ledger
report-term-sequence = Newest entry
report-term-walk = Walk
report-term-edition = Made by
report-term-printed = Made at
report-verify-how = Verify the logbook that this came from. The entry with that number must have the digest printed here.
report-verify-proves = Each entry is hashed with the one before (SHA-256 over RFC 8785 JSON): an entry changed, taken out or put in since then gives another digest.
report-verify-not = It does not prove that a note is true, who made it, or that the clock was right. Whoever has the file can make a whole new chain; only a digest kept elsewhere, as on this page, shows that.
report-verify-photos = A photo is the one named here when the SHA-256 of its file is the one printed beside it.
report-known-meter = with { $name }, { $category }
report-service = The circuit of the service, after the reading “{ $after }”: { $said }
report-pins = Pins: { $pins }

## On paper

report-page = page { $page } of { $pages }
report-lacking =
    { $kinds ->
        [one] { $box } stands for a letter that the type of this file lacks (copying the text gives it back): { $letters }.
       *[other] { $box } stands for letters that the type of this file lacks (copying the text gives them back): { $letters }.
    }
report-digest = SHA-256 { $digest }
report-photo-found = as found
report-photo-left = as left
report-labels-title = Labels: { $rig }
report-labels-note = The maker’s label on the part and local code come first. A label is no proof that anything is dead. Cut along the lines; keep clear of vents, warnings and moving parts.
report-label-check = Check first: { $check }
report-label-keep-out = Keep out: { $what }
report-label-bay = Take every source away and prove it gone before opening.

## Follow-up

report-follow-up-title = Follow-up: { $finding }, { $about }
report-follow-up-by = Found { $day } by { $person }
report-follow-up-label = The maker’s label and local code come before everything on this sheet. Work on or near live parts belongs to a qualified person.
report-follow-up-noted = What was noted
report-follow-up-found = As found and as left
report-part-asked = What is asked
report-part-place = Where, and what was found
report-part-live = Power when the walk was left
report-part-answer = Answer
report-answer = To be filled in by whoever mends it; the owner enters it in the logbook.
report-answer-done = What was found and done
report-answer-torque = Set to torque, with which tool
report-answer-readings = Readings after power was back
report-answer-parts = Parts renewed
report-answer-name = Name
report-answer-licence = Licence or qualification
report-answer-day = Day
report-labels-none = This rig has no bays and no points yet, so there is nothing to print labels for. Add a bay first.
report-no-ending = The name { $found } does not say what kind of file is asked for. End it in .html or in .pdf.
report-no-paper = { $found } is no paper known here. Ask for a4 or letter.
report-no-photo-size = { $found } is no size of photos known here. Ask for stored, mail or none.
report-labels-written =
    { $count ->
        [one] One label.
       *[other] { $count } labels.
    }

## At a glance

report-part-details = What had moved, and findings
report-glance-moved = { $point }: { $found }; { $left }
report-glance-finding = { $finding }: { $about }
report-glance-more =
    { $count ->
        [one] and one more, told below
       *[other] and { $count } more, told below
    }
report-glance-tool = { $tool }: { $told }

## Keys of a phone

report-key-mail = Report to mail, PDF
report-key-mail-note = photos made smaller, the file below 10 MB
report-key-stored = Report whole, PDF
report-key-stored-note = photos as they are stored
report-key-page = Report as a page, HTML
report-key-page-note = opens in any browser, photos inside
report-key-labels = Labels, PDF
report-key-labels-note = for bays and points, to print and cut out
report-key-sheet = Sheet for a licensed person, PDF

## What is asked

report-asked-heading = What is asked, and by which rule
report-asked = As the logbook stood when this was made
report-col-when = Day
report-col-rule = Rule
report-col-first = What came first, and each limit
report-unwritten = The PDF was not written ({ $why }). This is a fault of the program, not of your logbook: everything entered is kept. Write it as .html, and tell the makers what stands in brackets.
