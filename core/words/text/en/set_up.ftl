### Setting a rig up where one stands, and filling it in later.

## What can be added

set-up-bay = New bay
set-up-device-new = New device
set-up-terminal = New terminal
set-up-look-new = New look

## What is asked

set-up-name = What is it called? Leave it empty to take the name of its kind.
set-up-bay-name = What is the bay called?
set-up-side = From where is it reached?
set-up-along = Where along the rig is it?
set-up-nose = At the nose
set-up-front-half = Front half
set-up-middle = In the middle
set-up-rear-half = Rear half
set-up-tail = At the tail
set-up-device = What kind of device is it?
set-up-system = What are its conductors?
set-up-sets = How many groups of these conductors come in and go out?
set-up-set-count =
    { $count ->
        [one] One
       *[other] { $count }
    }
set-up-on-device = On which device?
set-up-fastening = What holds it?
set-up-look = What is looked at?
set-up-place = Where is it?
set-up-note = A note
set-up-presence = Is it there?
set-up-how = How is it taken away?
set-up-keep-out = What must stay untouched here?
set-up-torque = Torque from the label or the maker's document, with its unit, such as 45 lbf.in
set-up-torque-basis = Where was the torque read?
set-up-torque-source = Which label or document, in your words
set-up-set = Which group of conductors of the device does it belong to?
set-up-conductor = Which conductor is it?
set-up-wire = Its size, such as 6 AWG
set-up-current = The current of its circuit, such as 30 A

## What is told

set-up-all-sets = Count every cable that comes to it. Each group is proved dead before hands go in; one that is not counted is not proved.
set-up-sources = Everything that can make a conductor live. What you are not sure of counts as there until it is found or proved away.
set-up-added = { $code } is in the book: { $name }. The rest can be filled in later.
set-up-not-noted = not noted
set-up-device-first = The bay has no device yet. Add the device first: what is proved dead is proved at it.
set-up-answers = { $found } answers were given; expected are { $expected }, one to each question in order.
set-up-not-offered = “{ $found }” is none of the answers offered. Choose one of them.
set-up-no-piece = “{ $found }” can't be added. Expected is one of: bay, device, terminal, look.
set-up-first-walk = First walk: { $bays }. Look, tug, photograph the labels; figures can wait.
set-up-have = Have
set-up-have-not = Have not
set-up-not-sure = Not sure
set-up-and-dc = { $system }, and DC beside it
