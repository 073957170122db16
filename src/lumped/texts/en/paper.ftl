### Words on paper.

paper-size = There is no sheet “{ $paper }” here. Choose one of: { $known }.
paper-invented = invented: its people, places and readings are made up
paper-true-size = Drawn at true size: lay the dough on the outlines. Parts and the pack are signs, not to size.
paper-reduced = Too large for this sheet: drawn at 1/{ $parts } of true size. Parts and the pack are signs, not to size.
paper-turned = The drawing is turned: the right edge of the table is at the bottom of the sheet.
paper-ruler = Measure this: if it is not 100 mm, print again at 100 %.
paper-table-ruler = 100 mm on the table, as drawn here
paper-gauge = A roll, ball or edge should just fill its slot.
paper-gauge-slot = { $size } mm
paper-alt-drawing = The sculpture seen from above
paper-alt-ruler = A ruler of 100 mm
paper-alt-gauge = Slots as wide as each roll is thick

paper-shape = 1  Shape
paper-push = 2  Push in
paper-start = 3  Switch on
paper-does = What each part will do
paper-why = Why
paper-know = Worth knowing
paper-careful = Be careful
paper-computed = How this was computed

paper-roll = { $names } – { $dough } dough, { $count ->
    [one] a roll
   *[other] { $count } rolls
} { $length } mm long, { $thickness } mm thick
paper-path = { $names } – { $dough } dough, { $count ->
    [one] a roll
   *[other] { $count } rolls
} { $length } mm long, { $thickness } mm thick, bent along its outline
paper-ball = { $names } – { $dough } dough, { $count ->
    [one] a ball
   *[other] { $count } balls
} { $thickness } mm across
paper-block = { $names } – { $dough } dough, { $length } × { $width } mm, { $thickness } mm high
paper-disc = { $names } – { $dough } dough, { $count ->
    [one] a disc
   *[other] { $count } discs
} { $width } mm across, { $thickness } mm high
paper-ring = { $names } – { $dough } dough, a ring { $width } mm across with a hole of { $hole } mm, { $thickness } mm high
paper-gap = Between { $first } and { $second }: a gap of { $gap } mm.
paper-pressed = { $second } is pressed { $depth } mm into { $first }.

paper-leg = { $leg } → { $place }
paper-leg-dangles = { $leg } → stays in the air
paper-leg-long = long leg
paper-leg-short = short leg (flat edge)
paper-leg-red = red wire
paper-leg-black = black wire
paper-leg-one = one leg
paper-leg-other = other leg
paper-leg-joined = { $leg } → twisted together with { $other }, outside the dough
paper-last-wire = Push in last: the black wire of { $pack }. Look, then compare with the table below.
paper-no-pack = There is no pack to push in.
paper-switch-closed = Close { $switch }.
paper-switch-open = Leave { $switch } open: the table below holds for that.
paper-last-any = Join the last wire of { $pack } last. Look, then compare with the table below.
paper-stop = Take a pack wire out when you stop.

paper-column-part = part
paper-column-does = does
paper-column-volts = volts
paper-column-milliamperes = mA
paper-pair = { $first } and { $second }
letters-missing = Lumped has no type for: { $letters }. It prints Latin, Greek, Cyrillic and Japanese letters; write titles, names and steps with those.
