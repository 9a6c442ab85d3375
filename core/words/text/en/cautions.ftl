### Cautions, where the hand is about to go.

## Where the hand is about to go. Two lines at most each.

caution-label-first = The maker's label and local code come first, before every figure and step here.
caution-qualified = Work on or near live parts belongs to a qualified person.
caution-method = OSHA and NFPA 70E are followed here as a method. They bind employers, not owners; local law may ask more.
caution-until-proved = Treat every conductor as live until it is proved dead.
caution-first-cover = Before the first cover: every source away, plug in hand or locked, rings off, glasses on, your own lamp.
caution-dead-proof = Live, dead, live: a source known to be live, the conductors, that source again. Gloves and glasses as for live work.
caution-dead-limit = Dead is below 1 V AC and below 0.5 V DC (our rule). No standard gives a number.
caution-pen-testers = Pen testers prove nothing. Contact meter only.
caution-known-source = No known live source of the same kind at hand: AC bays stay closed, look only.
caution-one-bay = Dead here is dead here only. Every other bay stays live until it is proved too.
caution-battery = A battery can't be switched off: its posts and links stay live. Negative off and taped first, on last.
caution-battery-bypass = A battery switch is often bypassed: pump, generator start, detector, solar, sense leads. Prove, don't assume.
caution-battery-zero = A battery that shows 0 V may reconnect by itself. That is no isolation.
caution-battery-vent = Lead-acid batteries give off gas that explodes: air first, no spark, no flame.
caution-capacitor = Inverters hold charge after they are off. Hands off for the time on the maker's label, then prove dead.
caution-precharge = Connecting an inverter's capacitors arcs. Precharge the maker's way, face away.
caution-wait = The end of a wait unlocks nothing. A reading does.
caution-solar = In daylight the panel side stays live, and cold raises its voltage. Open it under no load, before the battery leaves it.
caution-inverter-switch = An inverter that is off at its switch is not isolated. Open and lock its DC disconnect; prove its AC in and out.
caution-generator = A generator can start by itself. Auto-start off, its breaker open, start lead off.
caution-tow = Tow vehicle unplugged: its charge line feeds the trailer too.
caution-exception = This stays live, below 50 V DC, with no switch upstream. Arc and burn: one hand, insulated tool, no metal near.
caution-keep-out = Keep out: { $what }
caution-look-only-alive = Alive here: look only. Hands, tools and probes stay out.
caution-gas = LP closed at the tank, bay aired. Smell gas: out, no switch touched.
caution-hydraulic = Hydraulic fittings are looked at only, never tightened under pressure. Keep hands off sprays.
caution-airbag = Yellow airbag plugs are not touched.
caution-slipping-tool = A slipping tool bridges posts. Negative off first, tool wrapped, other posts covered.
caution-hot-skin = Before touching the body: metal to damp soil with the meter. Above 3 V, stop (our rule).
caution-neutral-bond = Don't bond neutral to ground in the coach for shore power: that bond is at the park's service.
caution-weak-neutral = A weak neutral hides until it is loaded. Electronics off, plain load on one leg, then the other.
caution-meter-category = Meter and leads of the category for the supply, fuse good, probes shrouded.

## Torque again or leave alone: both sides on one short screen

caution-retorque-title = Why check below the figure, and not pull it again
caution-retorque-against = Against: NEC Annex I, note to table I.1 (second hand): joints relax in service, so a later check does not tell the torque that was applied. Bickford (second hand): pulling again and again ratchets the preload up.
caution-retorque-for = For: NFPA 70B, older text (second hand): don't assume that tight hardware stays tight. RV trade press (second hand): yearly, since road and heat loosen. NEC 110.14(D): where a figure is given, it is met.
caution-retorque-ours = Our rule: look, fingers, check at { $percent } %. What held stays. Only what moved is set, once. A maker who orders otherwise is followed.
