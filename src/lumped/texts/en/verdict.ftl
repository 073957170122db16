### Verdicts: states, reasons, findings, cautions. A ten-year-old reads them.

state-lamp-dark = dark
state-lamp-barely-lit = barely lit
state-lamp-dim = dim
state-lamp-bright = bright
state-lamp-too-hot = too hot to last
state-motor-still = still
state-motor-straining = straining
state-motor-turning = turning
state-pack-idle = idle
state-pack-working = working
state-pack-nearly-shorted = nearly shorted
state-pack-fuse-tripped = fuse tripped
motor-turns = { $does }, { $turns } turns a minute
state-switch-open = open
state-switch-closed = closed
state-resistor-no-current = no current
state-resistor-carrying = carrying
state-resistor-hot = gets hot
state-range = { $one } to { $other }
state-if-touching = { $head } – but { $other } if { $what } touch
state-if-apart = { $head } – but { $other } if { $what } come apart

what-lumps = “{ $first }” and “{ $second }”
touch-pair = { $first } and { $second }

leg-long = the long leg of “{ $part }”
leg-short = the short leg of “{ $part }”
leg-red = the red wire of “{ $part }”
leg-black = the black wire of “{ $part }”
leg-one = one leg of “{ $part }”
leg-other = the other leg of “{ $part }”

## Why

reason-no-pack = Nothing drives it: there is no pack.
reason-leg-out = Push in { $leg }: it is not in any dough, so no current can pass.
reason-pack-leg-out = Push in { $leg }: it is not in any dough, so the pack drives nothing.
reason-switch-open = The switch “{ $switch }” is open.
reason-wrong-way = It sits the wrong way round: a lamp lets current through one way only. Turn it, so that { $leg } is on the side of the red wire.
reason-wrong-way-hot = It sits the wrong way round: a lamp lets current through one way only. Turn it, so that { $leg } is on the side of the red wire – but put more dough in the way first, or it gets too hot.
reason-metal-touch = Metal touches metal ({ $pairs }): the current takes that way and goes round the dough. Move them apart.
reason-bridged = Dough joins its two legs ({ $lumps }): the current goes through the dough beside it. Keep a gap between the dough of one leg and that of the other.
reason-pack-tired = The pack is tired. Put in fresh cells.
reason-pack-weak = The pack gives too few volts for this ({ $given } V). Use more cells, or fresh ones.
reason-shared = It shares the pack with { $others }; what needs fewer volts takes most of the current. Use lamps of one colour side by side, or fewer parts.
reason-in-a-row = It sits in a row with { $others }, and each thing in the row, and each further lump, takes its own volts. Put them side by side instead.
reason-metal = Passing from metal to dough and back costs { $volts } of the pack's { $given } V. Use iron, push the legs in deeper, or add a cell.
reason-legs-thin = Thin legs, or legs that are not deep, cost twice: { $volts } V in the dough close round them ({ $ohms } Ω), and more where little metal meets dough. Push deeper, or use iron nails.
reason-path = The way through the dough is too long or too thin: { $ohms } Ω, which takes { $volts } V. Make it shorter or fatter.
reason-too-little = Too little current reaches it, and no single change would do. Look at several of: cells, deeper legs, fatter dough, fewer parts.
reason-not-connected = Nothing connects it to both wires of a pack. Follow the way from each of its legs, through dough and parts, to a red and to a black wire.
reason-dough-blocks = Its legs are in “{ $dough }”, which hardly lets any current through: it is for walls. Use a conducting dough.
reason-same-lump = Both its legs are in one piece of dough ({ $lumps }), so there are no volts between them. Put one leg into a piece of its own.
reason-same-metal = Both its legs are joined to each other, so there are no volts between them.
reason-pack-in-one = Both wires of the pack are joined to the same piece: the current goes from wire to wire and never reaches this. Put one wire into a piece of its own.
reason-bypassed = The closed switch “{ $switch }” lets the current go round it. Open the switch, or put it into the same row.
reason-metal-outside = It is wired straight to the pack ({ $pairs }). Put dough in the way.
reason-too-much = More current flows than it can bear for long. Put more dough, or a resistor, in the way.
reason-range-dough = Which of these it will be depends mostly on the dough, which nobody measured. Measure it, or try.
reason-range-price = Which of these it will be depends mostly on what passing from metal to dough costs: cleaner, deeper or thicker legs make it surer.
reason-range-parts = Which of these it will be depends mostly on the piece you have: two of a kind differ.
reason-range-dough-hot = Which of these it will be depends mostly on the dough, which nobody measured. To be safe start with more dough in the way, or a resistor.
reason-range-price-hot = Which of these it will be depends mostly on what passing from metal to dough costs. To be safe start with more dough in the way, or a resistor.
reason-range-parts-hot = Which of these it will be depends mostly on the piece you have: two of a kind differ. To be safe put more dough in the way, or a resistor.
reason-pack-idle = No current leaves it: nothing joins its wires, or only something that blocks.
reason-pack-heavy = What joins its wires lets through far more current than a dough circuit should.
reason-two-packs = Several packs ({ $packs }) work against each other, or join into one short path. Use one pack.

## Worth knowing

finding-joined = Twisted together: { $first } and { $second }.
finding-metal-touch = Metal meets metal inside the dough: { $first } and { $second } touch.
finding-packs = There are { $count } packs. What they do together depends on how they meet; one is enough for dough.
finding-no-pack = There is no pack, so nothing is driven.
finding-near = “{ $first }” and “{ $second }” are only { $gap } mm apart: less than a hand can promise. Both cases are computed.
finding-grazing = “{ $first }” and “{ $second }” only just touch ({ $gap } mm): they may come apart. Both cases are computed.
finding-leg-misses = Pointed past the dough: { $leg } is not in any lump.
finding-leg-through = Longer than the dough: of { $leg } only { $inside } mm of { $depth } mm are in dough; the rest comes out again.
finding-leg-shallow = Hardly in: { $leg } is only { $inside } mm deep. It works as computed, but will not hold.
plating-eaten = the { $plating } on { $leg } in about { $minutes } min
finding-plating = The current eats metal: { $eaten }. The verdict is for the first minutes; then the metal beneath takes over.
finding-unknown = Nobody knows the dough “{ $dough }”: its resistivity may be anything from { $low } to { $high } Ω·m. A recipe, or better a measurement, would narrow the verdict.
finding-unmeasured = Nobody measured this batch of “{ $dough }”: its resistivity is computed, { $interval }. A measurement would narrow the verdict.

## Cautions

caution-short = SHORTED PACK: wires and cells heat within seconds. Take a wire off now, and use a pack with a fuse.
caution-lamp-hot = A lamp gets more current than it lasts with; take it out or add dough in its way.
caution-motor = Keep hair, sleeves and fingers away from a motor's shaft and propeller.
caution-lamp-on-pack = Never put a lamp straight on a pack: without dough in the way it burns out and can get hot.
caution-not-food = Dough for sculptures is not food. It holds a great deal of salt: keep it from small children's mouths and from pets, which it can poison.

## How it was computed

how-cells = Computed on { $count } cells of { $pitch } mm.
how-spread = On a shifted grid the currents differ by { $spread } %.
how-ends = Volts and milliamperes: as drawn, and in brackets the ends of what is not known.
how-sources = Sources: { $sources }; the weakest figures in it are { $status }.
how-status = The weakest figures in it are { $status }.

outcome-unseen = “{ $part }” can't be seen to be { $happened }. Choose one of: { $choices }.
