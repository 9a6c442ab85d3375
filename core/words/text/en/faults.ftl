### What was typed and can't be taken.

## What a person typed and can't be taken

fault-unknown-code = “{ $found }” is not known here. Expected is one of: { $expected }.
fault-number = “{ $found }” is no number. Expected are digits with one decimal mark at most and no thousands mark, such as 45 or 0.5.
fault-range = { $found } { $unit } is outside what { $quantity } can be here: { $least } to { $most } { $unit }. Read it again, and its unit.
fault-quantity-torque = a torque
fault-quantity-voltage = a voltage
fault-quantity-current = a current
fault-quantity-distance = a distance
fault-quantity-length = a length
fault-quantity-check-percent = the share for the check
fault-quantity-hours = hours of an engine
fault-quantity-other = this value
fault-length = “{ $found }” is no length. Expected is a number or fraction, a blank and a unit, such as 3/16 in or 5 mm.
fault-thread = “{ $found }” names no thread. Expected is a trade name such as #10-32, 1/4-20, M6 or M8x1.25.
fault-wire-size = “{ $found }” is no conductor size. Expected is a size and its unit, such as 6 AWG, 2/0 AWG, 250 kcmil or 2.5 mm2.
fault-code = “{ $found }” is no code. Expected are one to eight letters and digits, such as F8.
fault-terminal-torque-on-clamp = This is not tightened to a torque: { $kind }. Leave the torque empty, or correct the fastening.
fault-terminal-none-allowed = A terminal allows no conductor, as it is noted. Expected is at least one; read its marking again.
fault-terminal-half-set = A conductor is named without its set, or a set without its conductor. Note both, or neither.
fault-at-record = { $code }: { $fault }
fault-code-taken = Code { $code } is taken: a code is given once in a rig, also when its record is retired. Choose another.
fault-missing-record = { $code } names a { $what } that is not in the book. Add it first, or name another.
fault-no-such-set = { $code } names a set or conductor that its device does not have. Choose one of the device's own.
fault-empty-name = A name is empty. Type what it is called.
fault-months = A rule of { $months } months can't be. Expected is 1 to 12: a year is custom, and only less is stricter.

## Why no torque is calculated for a bolt

fault-bolt-pitch = Thread { $thread } does not tell its pitch. Expected is such as 1/4-20 or M8x1.25.
fault-bolt-grade = No torque is calculated for this material: { $grade }. Expected is a steel grade; ask the maker of the part.
fault-bolt-diameter = The proof stress of { $grade } is known up to { $most } mm only. Ask the maker of the part.
fault-bolt-finish = No nut factor is known for this finish: { $finish }. Ask the maker of the part.

## Why a tool is not set to a torque

fault-setting-outside = This tool does not reach { $wanted }: it goes from { $least } to { $most }. Use a tool whose range holds it.
fault-setting-coarse = The scale of this tool is too coarse for { $wanted }: its step is { $step }. Use a tool with a finer scale.
fault-setting-tool = Range and step of this tool do not fit together: { $least } to { $most }, step { $step }. Note all three in the tool's own unit, least first.
fault-adapter-lever = The adapter leaves { $left } mm of a lever of { $lever } mm. Expected is over half of it; turn the adapter, or use a longer wrench.
fault-quantity-angle = an angle
fault-quantity-temperature = a temperature
fault-terminal-range-reversed = The range of sizes begins above where it ends. Write the thinner conductor first, such as 14 AWG to 6 AWG.
fault-tool-scale = { $code }: range and step of a tool are in one unit, and the range begins with the least. Write all three in the tool's own unit.
fault-not-wired = { $code } is wired to { $to }, which is not in the book. Add that first, or name another.
fault-feed = “{ $found }” names no set of a device. Expected is a source such as S1, or a set such as FTS/shore in.
fault-pin = A pin on the photo of { $code } names a point that is in another bay, or names it twice. Expected is one pin for a point of { $code }.
fault-no-photo = The photo of { $code } is named by nothing. Expected is a photo that was taken in.
