# A one-minute test of a batch.

cli-trial = a one-minute go or no-go test of a batch: a mould, two screws, a pack and a lamp, and what should be seen
cli-trial-mould = straw, barrel or ice-cube; without it the one that tells most
cli-trial-lamp = key of the lamp
cli-trial-pack = key of the pack
cli-trial-screws = key of the gauge of the two screws or nails
heading-trial-needs = You need
trial-need-mould = { $mould }, inside { $sizes }: measure yours
trial-need-bore = { $size } mm wide ({ $low } to { $high }, { $status })
trial-need-length = { $size } mm long ({ $low } to { $high }, { $status })
trial-need-width = { $size } mm wide ({ $low } to { $high }, { $status })
trial-need-height = { $size } mm deep ({ $low } to { $high }, { $status })
trial-need-screws = two of the same, longer than { $depth } mm: { $screws }
mould-factor-note = computed from the field between two rods in dough of the mould’s size, whose inner sizes are from memory
heading-trial-steps = In one minute
trial-title = { $title }: a one-minute test
trial-state-bright = bright
trial-state-faint = faint
trial-state-dark = dark
trial-bad-no-salt = the salt forgotten
trial-bad-spoon-of-salt = a teaspoon of salt got in
trial-bad-no-carrier = a dough that carries little, 5 Ω·m

## What should be seen

trial-expect-conducting = Of 100 good batches { $bright ->
    [one] 1 shines
   *[other] { $bright } shine
} brightly, { $faint } faintly, and { $dark ->
    [one] 1 stays
   *[other] { $dark } stay
} dark.
trial-expect-insulating = Of 100 good batches { $dark ->
    [one] 1 stays
   *[other] { $dark } stay
} dark, { $faint ->
    [one] 1 glows
   *[other] { $faint } glow
} faintly, and { $bright ->
    [one] 1 shines
   *[other] { $bright } shine
} brightly.
trial-expect-unfit = Of 100 batches made as the recipe says { $bright ->
    [one] 1 shines
   *[other] { $bright } shine
} brightly, { $faint } faintly, and { $dark ->
    [one] 1 stays
   *[other] { $dark } stay
} dark.
trial-unfit-none = That is no dough, so that there is no good batch to tell from a bad one. Mend the recipe first.
trial-unfit-opposite = Made as the recipe says, it does the opposite of what it is for, so that there is no good batch to tell from a bad one. Mend the recipe first.
trial-bad = Of 100 batches with a mistake ({ $bad }) { $bright ->
    [one] 1 shines
   *[other] { $bright } shine
} brightly, { $faint } faintly, and { $dark ->
    [one] 1 stays
   *[other] { $dark } stay
} dark.
trial-zone-bright = Bright: below { $below } Ω·m. { $what }
trial-zone-faint = Faint: between { $below } and { $above } Ω·m. { $what }
trial-zone-dark = Dark: above { $above } Ω·m. { $what }
trial-zone-never-bright = Bright: most lamps of this kind never are here, whatever the dough: the pack has too few volts for resistor, lamp and metal.
trial-zone-faint-first = Faint: up to { $above } Ω·m. { $what }
trial-zone-always-dark = Most lamps of this kind stay dark here, whatever the dough: the pack has too few volts for resistor, lamp and metal.
trial-spread = These borders hold for the middle of all lamps, cells, moulds and eyes. For others bright ends between { $bright_low } and { $bright_high } Ω·m, and dark begins between { $dark_low } and { $dark_high } Ω·m.
trial-say-go = Go.
trial-say-between-conducting = It carries, but less than most good batches: press the dough round the screws, and look again.
trial-say-between-conducting-bad = Press the dough round the screws, and look again. If it stays faint, no go: a batch looks like this with a mistake ({ $bad }).
trial-say-between-unfit = It carries a little.
trial-say-between-insulating = It lets a little through: for thick walls only.
trial-say-between-insulating-bad = It lets a little through, and a batch looks like this with a mistake ({ $bad }): for thick walls only, or make it anew.
trial-say-no-conducting = No go. Look at the lamp’s long leg, the pack, and how deep the screws are; then ask whether the salt went in and had half an hour to dissolve.
trial-say-no-insulating = No go. Salt got in: clean hands, table and screws, and test a new piece.
trial-tells = The test tells a good batch from one with a mistake ({ $bad }).
trial-tells-not = The test does not tell a good batch from one with a mistake ({ $bad }) surely enough: { $missed } of 100 good batches fail it, { $passed } of 100 bad ones pass.
trial-better = Better: { $mould }, { $lamp }, { $pack }; there { $missed } of 100 good batches fail, { $passed } of 100 bad ones pass.
trial-no-better = No mould, lamp and pack that Lumped knows does better. Measure the resistivity instead.
trial-best = No mould, lamp and pack that Lumped knows tells surely. Best is { $mould }, { $lamp }, { $pack }: there { $missed } of 100 good batches fail, { $passed } of 100 bad ones pass.

## Steps

trial-step-resistor = Twist the black wire to the lamp’s short leg, the lamp’s long leg to one screw, one end of the { $resistor } to the other screw, its other end to the red wire.
trial-step-plain = Twist the black wire to the lamp’s short leg, the lamp’s long leg to one screw, the red wire to the other screw.
trial-step-touch = Let the two screws touch: the lamp is { $state }. If not, turn the lamp round, then try other cells. Now lamp and pack are good.
trial-step-fill-straw = Push the straw into the dough until it is full, and cut off { $length } mm of it.
trial-step-fill-barrel = Fill the barrel ({ $length } mm long, open at both ends) with dough, without holes, and wipe both ends flat.
trial-step-fill-ice-cube = Press dough into a hollow of the tray, without holes, level with the rim.
trial-step-tube = Push one screw into each end, { $depth } mm deep; { $gap } mm of dough stay between them.
trial-step-cube = Stand both screws in the dough, { $depth } mm deep, { $spacing } mm from middle to middle.
trial-step-look = Look at the lamp in the shade for five seconds: bright, faint or dark.
trial-step-apart = Take it apart and wipe the screws dry.

## Cautions

trial-caution-wires = The wires of the pack never touch each other.
trial-caution-wires-lamp = The wires of the pack never touch each other, and the lamp never sits on the pack without its resistor: it burns out.
trial-caution-small = Screws and lamps are small and sharp: not for children under three, and nobody puts them into the mouth.
trial-caution-food = What held dough here never goes back to the kitchen.
trial-caution-cut = An adult cuts the nose off the barrel. Only a new, clean one without a needle.
trial-caution-warm = Let the dough cool first: a warm dough carries more than it will.

## The recipe card

trial-card-do-resistor = One minute: { $mould }, two screws { $depth } mm deep, { $pack }, { $resistor } and { $lamp } in one line.
trial-card-do-plain = One minute: { $mould }, two screws { $depth } mm deep, { $pack } and { $lamp } in one line.
trial-card-conducting = Bright: go. Faint: press it round the screws; if it stays so, or dark: no go.
trial-card-insulating = Dark: go. Faint: for thick walls only. Bright: no go.
trial-card-share = { $good } of 100 good batches pass, and { $passed } of 100 with a mistake ({ $bad }).
trial-card-weak = This trial is weak: it misjudges more than one in ten good batches, or more than one in ten bad ones. Where it matters, measure the resistivity.

mould-rods = A { $rods } is not round. Take one of { $known }.
mould-thick = A { $rods } is too thick for { $mould }, which is { $bore } mm wide. Take thinner ones.
