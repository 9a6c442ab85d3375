### A text for every member of every coded list of the domain: key LIST-CODE.

## Before a walk

ready-still = Level ground, wheels chocked, jacks and slides still, nobody underneath
ready-engine-off = Engine off, key in your pocket, generator cold
ready-body = Rings and watch off, glasses on
ready-lamp = A lamp of your own: the house lights will go out
ready-meter = Contact meter of the right category
ready-torque-tool = Torque tool
ready-hand-tools = Insulated tools, tape, tags
ready-gas = LP gas closed at the tank
ready-company = A second person near
ready-phone = Phone charged

## Grades as found

grade-held = Held
grade-moved = Moved
grade-loose = Loose
grade-apart = Apart
grade-looked-at = Looked at
grade-not-judged = Not judged
angle-hair = a hair
angle-eighth = 1/8 turn
angle-quarter = 1/4 turn
angle-half = 1/2 turn
angle-three-quarters = 3/4 turn
angle-turn = 1 turn or more
not-judged-not-reached = out of reach, or no time
not-judged-alive = something there stays live
not-judged-sealed = sealed by its maker
not-judged-no-tool = the right tool or meter is not at hand
not-judged-for-qualified = left for a qualified person
not-judged-other = another reason

## Steps of a walk

phase-before = before you start
phase-taking-away = taking power away
phase-at-bays = the work at the bays
phase-powering-up = bringing power back
phase-ended = the end
bay-stage-shut = not opened yet
bay-stage-open = open
bay-stage-closed = closed, everything counted
no-exception-ac = This set carries AC, and there is no exception for AC.
no-exception-switch = A switch upstream can take this set away.
no-exception-too-high = Its highest possible voltage is 50 V or more.
no-exception-not-noted = The highest voltage of a source that reaches it is not noted.

## As left

alone-not-to-tighten = it may not be tightened
alone-no-figure = there is no figure for it
alone-no-tool = the right tool is not at hand
alone-for-qualified = left for a qualified person
damage-heat = signs of heat
damage-melted = melted insulation
damage-corrosion = corrosion
damage-strands = broken strands
damage-insulation-caught = insulation under the clamp
damage-too-many = more conductors than allowed
damage-moisture = moisture
damage-chafed = chafed or gnawed
damage-cracked = cracked or loose body

## Dead proof

meter-contact = contact meter
meter-proximity = proximity tester
lapse-pause = the walk was stopped for a while
lapse-restart = the phone or computer was started anew
lapse-idle = nothing was noted for over 30 minutes (our limit)
lapse-clock-jump = the clocks disagree
lapse-found-live = a conductor was found live
lapse-isolation = a source or a proof was changed

## Sources

source-kind-shore = shore power
source-kind-generator = generator
source-kind-inverter = inverter
source-kind-solar = solar
source-kind-tow-link = tow-vehicle link
source-kind-engine-link = engine-battery link
source-kind-portable = portable unit
source-kind-chassis-battery = chassis battery
source-kind-house-battery = house battery
presence-have = Have
presence-have-not = Have not
presence-not-sure = Not sure: search for it, it counts as connected
isolation-unplug = unplug it, plug in hand or locked
isolation-switch = open its switch or breaker and lock it
isolation-lead-off = take its lead off the post and tape it
isolation-never = it can't be taken away: its posts stay live

## Rig

rig-kind-motorhome = motorhome
rig-kind-trailer = towed trailer
service-none = no shore service
service-30a-120v = 30 A, 120 V
service-50a-120-240v = 50 A, 120/240 V
side-left = left
side-right = right
side-front = front
side-back = back
side-inside = inside
side-roof = roof
side-under = underneath
device-kind-inlet = shore inlet
device-kind-surge-device = surge device
device-kind-transfer-switch = transfer switch
device-kind-ac-panel = distribution panel, AC
device-kind-dc-panel = distribution panel, DC
device-kind-converter = converter
device-kind-inverter = inverter
device-kind-battery-bank = battery bank
device-kind-battery = battery
device-kind-fuse-block = high-current fuse
device-kind-shunt = shunt
device-kind-busbar = busbar
device-kind-disconnect = disconnect
device-kind-solar-controller = solar controller
device-kind-dc-link = DC-DC charger or isolator
device-kind-hydraulic-pump = hydraulic pump
device-kind-actuator = slide, jack or step motor
device-kind-control-board = control board
device-kind-water-pump = water pump
device-kind-generator = generator
device-kind-outlet = outlet
device-kind-ground-bond = ground bond
device-kind-junction-box = junction box
device-kind-detector = detector or alarm
device-kind-tow-socket = tow-vehicle socket
device-kind-other = other device
supply-kind-ac = AC
supply-kind-dc = DC
set-system-split-phase = 120/240 V: L1, L2, N, G
set-system-single-phase = 120 V: L, N, G
set-system-dc = DC: positive, negative, chassis
set-system-bond = ground and bonds
conductor-l1 = L1
conductor-l2 = L2
conductor-l = L
conductor-n = N
conductor-g = G
conductor-plus = +
conductor-minus = −
conductor-chassis = chassis

## Points and fastenings

look-kind-leak = leak
look-kind-moisture = moisture
look-kind-chafe = chafed insulation
look-kind-rodent = rodents
look-kind-heat-mark = marks of heat
look-kind-hydraulic = hydraulic fittings: look, never tighten under pressure
look-kind-general = general look
fastening-pressure-screw = set screw or pressure plate
fastening-split-bolt = split-bolt connector
fastening-device-screw = binding screw of a wiring device
fastening-board-screw = terminal screw of a board, relay or contactor
fastening-block-screw = screw of a terminal block
fastening-stud = lug on a stud
fastening-bolt = bolted lug or busbar joint
fastening-battery-post = battery post
fastening-wing-nut = wing nut
fastening-shear-bolt = break-away bolt
fastening-push-in = push-in clamp
fastening-spring-clamp = spring clamp
fastening-lever = lever clamp
fastening-blade = push-on blade
fastening-plug-on-breaker = plug-on breaker
fastening-bolt-on-breaker = bolt-on breaker
fastening-plug = plug of solar or high current
fastening-wire-connector = twist-on wire connector
fastening-crimp = crimped barrel or splice
fastening-piercing = self-piercing device
fastening-chassis-screw = braid or screw on the chassis
fastening-sealed = sealed device
fastening-cell-link = cell link
fastening-sense-lead = sense lead
drive-slotted = slot
drive-hex = hexagon head
drive-allen = hexagonal socket
drive-square = square socket
drive-cross = cross
drive-star = star
landing-bare = bare conductor
landing-ferrule = ferrule
landing-ring = ring lug
landing-fork = fork lug
landing-receptacle = blade receptacle
nut-none = no nut
nut-plain = plain nut
nut-nylon = nylon-insert nut
nut-over-jam = nut over a jam nut
nut-wing = wing nut
washer-none = no washer
washer-flat = flat washer
washer-split = split washer
washer-spring = spring (Belleville) washer
washer-toothed = toothed washer
locking-none = no locking
locking-thread-locker = thread-locker
locking-witness-mark = paint mark
bolt-grade-sae2 = SAE grade 2
bolt-grade-sae5 = SAE grade 5
bolt-grade-sae8 = SAE grade 8
bolt-grade-iso4-6 = class 4.6
bolt-grade-iso4-8 = class 4.8
bolt-grade-iso5-8 = class 5.8
bolt-grade-iso8-8 = class 8.8
bolt-grade-iso10-9 = class 10.9
bolt-grade-a2-70 = stainless A2-70
bolt-grade-silicon-bronze = silicon bronze
bolt-grade-brass = brass
bolt-grade-copper = copper
material-copper = copper
material-tinned-copper = tinned copper
material-aluminium = aluminum
strands-solid = solid
strands-stranded = stranded
strands-fine = fine-stranded
role-power = power
role-ground = ground or bond
role-control = control or signal
thread-state-dry = dry
thread-state-greased = greased or wet
torque-basis-label = label on the part
torque-basis-document = maker's document
recheck-unsaid = the maker says nothing of checking again
recheck-full-value = the maker orders the full value again
recheck-never = the maker says never to tighten again
tool-kind-click-wrench = click wrench
tool-kind-click-driver = click screwdriver
tool-kind-indicating = indicating tool
tool-kind-preset = preset tool

## Findings: the name, and under .do what to do

finding-moved-again = Moved again
    .do = Don't set it once more: cut back and remake, or renew lug and hardware.
finding-moved-left = Moved, left as it was
    .do = Get the figure or the tool, then set it or remake it.
finding-was-apart = Conductor was out
    .do = Look why it came out. Look at it again after a day or 50 miles.
finding-out-of-service = Out of service
    .do = Keep it off and tagged until it is mended.
finding-damaged = Damage
    .do = Don't use it. Find the cause, then renew what is damaged.
finding-worn = Wear
    .do = Find the cause, clean or renew before the season.
finding-too-many-conductors = More conductors than allowed
    .do = One conductor a terminal, unless its marking says more (NEC 110.14(A)). Move the others.
finding-wire-outside-range = Conductor outside the marked sizes
    .do = Change the terminal or the conductor so that they fit (NEC 110.14(A)).
finding-set-off-figure = Set to another figure
    .do = Look up the figure again. Don't add turns; remake if it was set too high.
finding-look-trouble = Seen at a look
    .do = Find the cause and mend it before the season.
finding-not-reached-alive = Not judged: stays live
    .do = Keep out. Have a qualified person look at it.
finding-bad-reading = Reading not safe
    .do = Keep that power away until the cause is found and the reading is right.
finding-odd-reading = Reading near a limit
    .do = Measure it again under load, and at another supply.
finding-source-left-away = Source left away
    .do = Keep it tagged. Say when it is to come back.
finding-bay-left-open = Bay left open
    .do = Keep power away. Prove it dead anew, close it, count tools and covers.
finding-source-unknown = Source not found
    .do = Search for it. Until then it counts as connected.
urgency-before-use = before it is used again
urgency-soon = before the season
urgency-next-walk = at the next walk
decision-mended = mended, closed
decision-licensed = a licensed person is asked
decision-ourselves = mended by ourselves later
decision-next-walk = looked at again at the next walk
decision-accepted = left as it is, with a reason, closed

## Units

torque-unit-n-m = N·m
torque-unit-lbf-in = inch-pounds
torque-unit-lbf-ft = foot-pounds
torque-unit-kgf-cm = kilogram-force centimeters
voltage-unit-v = V
voltage-unit-mv = mV
current-unit-a = A
current-unit-ma = mA
distance-unit-km = km
distance-unit-mi = miles
length-unit-mm = mm
length-unit-in = in

## Torque advice

torque-action-check-then-set = Check, set only what moved
torque-action-look-and-tug = Look and tug
torque-action-leave-alone = Leave alone
torque-action-remake = Remake
torque-action-ask-maker = Ask the maker
torque-action-refer = Look only
found-by-check-screw = Look, then fingers: wire out, screw loose? Then the check torque, then a tug along the wire, never a twist.
found-by-check-lug = Look, then lug by finger: loose? Hold the inner nut, then the check torque.
found-by-check-spring-washer = Look: spring washer flat or cracked? Lug by finger, then the check torque.
found-by-check-post = Look, then twist the clamp by hand: loose? Then the check torque.
found-by-full-value = Look, then fingers. The maker orders the full value: pull it once, slowly.
found-by-lug-by-finger = Look, then lug by finger. No torque check: the drag of the nut proves nothing.
found-by-mark = Look: paint mark in line? Turn nothing.
found-by-twist-clamp = Look, then twist the clamp by hand. No tool.
found-by-tug = Look, then tug along the wire, never twist. No tool.
found-by-pull-each = Hold the housing; pull each conductor lightly, 15 N at most (our rule). Which one gave?
found-by-seat-and-heat = Prove zero current first. Then look: seated to the stop, marks of heat?
found-by-look = Eyes only. Hands and tools off.
left-by-set-once = Set once to the full value, tug along the wire, paint a mark.
left-by-set-stud = Largest lug on the face, no washer in the current path. Set once, paint a mark.
left-by-set-spring-washer = Set to the maker's figure, no extra turn. Paint a mark.
left-by-set-post = Set to the maker's figure. Negative goes on last.
left-by-cut-back = Cut back, strip anew, land it, set once, tug, paint a mark.
left-by-cut-back-aluminium = Cut back, brush, inhibitor on the conductor, not on the thread. Set once, no more turns after.
left-by-remake-lug = Renew or clean lug, faces and hardware. Set once, paint a mark.
left-by-new-nut = New nut, or thread-locker made anew. Then set once.
left-by-strip-anew = Strip anew and insert to the stop. Tug.
left-by-remake-splice = Make the splice or connector anew. Tug.
left-by-remake-chassis = Bare clean metal, toothed washer, then tighten. Keep the spot dry.
left-by-replace = Replace it with a new part.
left-by-out-of-service = If it is loose: take the circuit out of service until the maker's figure is known.
left-by-refer = Leave it to its maker or a qualified person.
torque-caution-battery-live = A battery can't be switched off: its posts stay live. Negative off and taped first, back on last.
torque-caution-zero-current = Don't pull or push it under load: prove zero current first.
torque-caution-hold-jam-nut = Hold the inner or jam nut, or the stud turns.
torque-caution-split-washer = A split washer secures nothing. Check as if it were not there.
torque-caution-spring-washer = Spring washer flat or cracked: replace it. Add no turn.
torque-caution-fork-lug = A fork lug slips out when its screw backs off.
torque-caution-wing-nut = A wing nut holds by hand force alone: no nut for high current. Plan a hexagon nut.
torque-caution-fine-strands = Fine strands need a ferrule, or a terminal marked for them. Never tin them.
torque-caution-aluminium = Aluminum flows: never add turns. Loose means cut back and remake.
torque-caution-mark-shows-rotation = A paint mark in line shows no turning. It does not show clamp force.
torque-caution-thread-locker = Turning breaks the thread-locker. Broken: make it anew.
torque-caution-nylon-nut = The nylon insert drags: torque proves nothing about the clamp.
torque-caution-combination-drive = The head takes several tools. The figure goes with the tool you use.
torque-caution-greased-thread = Greased or wet thread: the dry figure is void. Clean and dry it, or get the maker's figure.
torque-caution-foot-pounds = Foot-pounds stand here; inch-pounds are usual, 12 times less. Read the label again.
torque-caution-far-from-table = The maker's figure is far from what tables give for such a part. Read the label again.
torque-caution-control-circuit = Tables for power terminals do not cover control and signal circuits. Ask the maker.
torque-caution-calculated = Calculated for the bolt, not given for the part. The maker's figure comes first.
torque-caution-from-memory = The table's values are from memory of the standard. Check them before you trust them.
torque-caution-tables-differ = Published tables differ here. The lowest that applies is taken.
torque-caution-maker-full-value = The maker orders the full value to be pulled again. It is followed and recorded as such.
torque-caution-maker-never = The maker says never to tighten again. Look only.
torque-caution-moved-before = It moved on the walk before. If it moves again: remake, don't set.
torque-caution-crowded = More conductors are landed than allowed: the clamp can't be trusted. Move the others before it is used again.
torque-caution-size-outside = The conductor is outside the sizes marked on the terminal: the clamp can't be trusted. Change one of them.
torque-caution-out-of-service-if-loose = No figure. If it is loose, take the circuit out of service until there is one.
torque-missing-maker-torque = the maker's torque, from the label or a document
torque-missing-wire-size = the size of the conductor
torque-missing-size-in-table = a conductor size that the table has
torque-missing-drive = the drive of the screw
torque-missing-drive-in-table = a drive that the table has
torque-missing-socket-size = the size across flats of the socket
torque-missing-slot-width = the width of the slot
torque-missing-slot-length = the length of the slot at its bottom
torque-missing-thread = the thread
torque-missing-pitch = the pitch of the thread
torque-missing-grade = the grade of the bolt or stud
torque-missing-dry-thread = a clean dry thread, or a figure for the greased one
basis-kind-label = label
basis-kind-document = maker's document
basis-kind-table = table of a standard
basis-kind-calculation = calculated
known-second-hand = second hand, from a copy or quotation
known-memory = from memory of the standard
certainty-high = several copies agree
certainty-medium = one copy, or memory with a check by formula
certainty-low = hearsay
standing-default = stands in where the part bears no figure
standing-comparison = to compare, never to set by
standing-geometry = for calculation
table-nec-annex-i1 = UL 486A-B and NEC Annex I, table I.1 (NEC 2017 to 2023, column B)
table-nec-annex-i2 = UL 486A-B and NEC Annex I, table I.2 (NEC 2017 to 2023)
table-nec-annex-i3 = UL 486A-B and NEC Annex I, table I.3 (NEC 2017 to 2023)
table-neta-100-12-1 = NETA ATS and MTS, table 100.12.1 (edition not noted)
table-neta-100-12-2 = NETA ATS and MTS, tables 100.12.2 to 100.12.4 (edition not noted)
table-nema-cc1 = NEMA CC 1, bolt torque (2009)
table-switch-maker = a maker's manual for transfer switches, studs of grade 5 (not dated)
table-telecom-maker = a maker's manual for telecom DC power plants, grade 2 (not dated)
table-supply-maker = a maker's manual for uninterruptible supplies, spring washers (not dated)
table-battery-maker = a maker's manual for lithium batteries, dry (not dated)
table-iec-60947-1-4 = IEC 60947-1 table 4 and IEC 60999-1 (edition not noted)
table-threads = ASME B1.1, ISO 261 and ISO 262, pitches
table-proof-stress = SAE J429, ISO 898-1 and ISO 3506-1, proof stress
table-nut-factors = textbook short form T = K·D·F, nut factor K
finish-plain-dry = plain steel, dry
finish-zinc-dry = zinc plated, dry
finish-zinc-oiled = zinc plated, lightly oiled
finish-stainless-dry = stainless on stainless, dry
finish-stainless-antiseize = stainless on stainless, anti-seize

## Columns of the torque tables

table-column-slot-small = slot up to 0.047 in wide and up to 1/4 in long
table-column-slot-large = slot over 0.047 in wide or over 1/4 in long
table-column-hex-split-bolt = hexagon, split-bolt connector
table-column-hex-other = hexagon, other connectors
table-column-narrow = slot narrower than 0.047 in
table-column-wide = slot 0.047 in or wider
table-column-torque = torque
table-column-sae2 = SAE grade 1 and 2
table-column-sae5 = SAE grade 5
table-column-sae7 = SAE grade 7
table-column-sae8 = SAE grade 8
table-column-bronze-dry = silicon bronze, dry
table-column-bronze-lubricated = silicon bronze, lubricated
table-column-aluminium-lubricated = aluminum, lubricated
table-column-stainless = stainless 18-8, uncoated
table-column-bronze-steel-stainless = silicon bronze, galvanized or stainless steel
table-column-wire = wire connections
table-column-head = tightened at the head
table-column-one-washer = one spring washer
table-column-two-washers = two spring washers
table-column-column-2 = column II
table-column-column-3 = column III

## Due

due-reason-months = the months come first
due-reason-distance = the distance comes first, by the odometer notes
due-reason-never-walked = no whole walk is recorded yet

## Readings while power comes back

verdict-expected = As expected
verdict-watch = Near a limit
verdict-stop = Stop
verdict-unknown = Not measured, so not known
safe-act-go-on = Go on.
safe-act-supply-away = Supply breaker off, then unplug. Check supply and cord; prove dead before opening again.
safe-act-dont-plug-in = Don't plug in. Supply breaker off; tell whoever runs the supply.
safe-act-dont-touch = Hands off the body. Supply breaker off, then unplug. Nobody steps in or out until it is found.
safe-act-battery-off = Negative off, or left off. Check polarity and each joint again.
safe-act-out-of-service = Leave that part off and tag it until it is mended.
safe-act-measure-later = Measure it when it can be measured. Until then nothing is known.
limit-basis-ansi-c84-1-b = ANSI C84.1 range B, from memory
limit-basis-practice = common practice, no source
limit-basis-ours = our rule
reading-dc-polarity = DC polarity, before the negative goes on
reading-dc-bus = DC bus, positive to negative
reading-supply-l1-n = Supply outlet, L1 to N, before plugging in
reading-supply-l2-n = Supply outlet, L2 to N, before plugging in
reading-supply-l1-l2 = Supply outlet, L1 to L2, before plugging in
reading-supply-l-g = Supply outlet, L to G, before plugging in
reading-supply-n-g = Supply outlet, N to G, before plugging in
reading-hot-skin = Body metal to a rod in damp soil, before touching
reading-leg-1 = Outlet on leg 1, L to N
reading-leg-2 = Outlet on leg 2, L to N
reading-outlet-n-g = Outlet, N to G
reading-load-1-leg-1 = Leg 1, with a plain load on leg 1
reading-load-1-leg-2 = Leg 2, with a plain load on leg 1
reading-load-2-leg-1 = Leg 1, with a plain load on leg 2
reading-load-2-leg-2 = Leg 2, with a plain load on leg 2
reading-gfci = GFCI and AFCI tested
reading-inverter-alone = Inverter alone, at an outlet
reading-generator-alone = Generator alone, transfer seen
reading-detectors = Gas detector and alarms alive
reading-breakaway = Breakaway switch of the trailer

## A service read from its pairs

service-fault-healthy = Nothing wrong that these readings can show
service-fault-low-service = Sound, but low voltage
service-fault-high-service = Sound, but high voltage
service-fault-supply-208 = 208Y/120 V supply where 120/240 V is expected
service-fault-one-leg-adapter = Both lines on one hot conductor, as by an adapter from 30 A
service-fault-weak-neutral = Weak neutral: a bad joint
service-fault-open-neutral = Open neutral
service-fault-weak-leg = Weak line: a bad joint
service-fault-open-leg = Open line
service-fault-line-neutral-swapped = Line and neutral swapped
service-fault-line-ground-swapped = Line and ground swapped: the body is live
service-fault-open-ground = Open ground, or no neutral-ground bond at the source
service-fault-neutral-ground-mixed = Neutral and ground swapped, or bonded a second time
service-conductor-line-1 = line 1
service-conductor-line-2 = line 2
service-conductor-both-lines = both lines
service-conductor-neutral = the neutral
service-conductor-ground = the equipment ground
service-place-outlet = at the supply outlet, before plugging in
service-place-coach = in the coach, plugged in
service-standing-sound = No fault that these readings could show; hidden ones may remain
service-standing-open = Not settled: a fault explains the readings too
service-standing-faulty = Only a fault explains the readings
service-standing-unexplained = Nothing known here explains the readings
service-ask-read-pair = Read one more pair, nothing switched on.
service-ask-low-impedance = Read the pairs again with the low-impedance setting of the meter.
service-ask-load-leg-1 = Plain load on leg 1, electronics off, then the pairs again.
service-ask-load-leg-2 = Plain load on leg 2, electronics off, then the pairs again.
service-ask-continuity-dead = Proved dead only: continuity of each conductor, in ohms.
service-ask-body-to-soil = Body metal to a rod in damp soil, before anyone touches it.
service-ask-all-again = Read every pair once more.
pair-l1-n = L1 to N
pair-l2-n = L2 to N
pair-l1-l2 = L1 to L2
pair-l1-g = L1 to G
pair-l2-g = L2 to G
pair-n-g = N to G
voltage-band-ansi-service-a = ANSI C84.1 range A at the service
voltage-band-ansi-service-b = ANSI C84.1 range B at the service
voltage-band-ansi-use-a = ANSI C84.1 range A at the appliance
voltage-band-ansi-use-b = ANSI C84.1 range B at the appliance
voltage-band-cut-out = where protectors commonly cut out
band-certainty-high = little doubt
band-certainty-medium = some doubt
band-certainty-low = other figures are quoted too
grounds-memory = from memory of the standard
grounds-common-practice = common practice, no source
wire-table-nec-ch9-table-8 = NEC chapter 9 table 8, at 75 °C
wire-table-iec-60228 = IEC 60228, at 20 °C

## A joint by its heat

heat-compared-similar = against a like part under a like load
heat-compared-ambient = against the air around
heat-class-unclassed = Below 1 °C: nothing to act on
heat-class-possible = Possible deficiency: investigate
heat-class-probable = Probable deficiency: repair as time permits
heat-class-monitor = Watch it until it is corrected
heat-class-major = Major discrepancy: repair at once
heat-surface-covered = on insulation, paint or tape beside the joint
heat-surface-bare-metal = on bare metal
heat-surface-contact = with a probe that touches, proved dead before
heat-caution-bare-metal-reads-low = Bare metal shows less heat than it has. Measure on the insulation beside it.
heat-caution-not-constant = A loose joint does not keep its resistance: the rise at normal load is only an orientation.
heat-caution-load-unknown = Without the current nothing is known of the rise at normal load.
heat-caution-no-trip = A glowing joint trips neither breaker, fuse nor GFCI. Take the load away; don't wait for them.

## A DC bank by its readings

dc-nominal-12v = 12 V
dc-nominal-24v = 24 V
dc-nominal-48v = 48 V (passes 50 V in use)
bank-finding-reversed = Positive and negative are exchanged
bank-finding-high = Above what charging gives
bank-finding-no-voltage = Hardly any voltage. This is no proof of absence: an electronic switch can close again.
bank-finding-low = Below a nearly empty bank
bank-finding-large-drop = More than 10 % is lost under load
bank-finding-drop = More than 3 % is lost under load
bank-finding-rises = The voltage rose under load: something charges, or the readings were exchanged
bank-finding-borderline = Within the meter's error of a limit
drop-class-within-3-percent = up to 3 %
drop-class-within-10-percent = up to 10 %
drop-class-over-10-percent = above 10 %

## Why no law of loosening is told

no-fit-nothing = no joint was checked after it was set
no-fit-none-moved = none had moved
no-fit-few-moved = fewer than five had moved, too few to tell how fast
no-fit-one-age = all were checked at one age, which tells how many but not how fast
no-fit-from-the-start = they moved no later than others held, as if some had never been tight
no-fit-no-end = no curve fits what was found
