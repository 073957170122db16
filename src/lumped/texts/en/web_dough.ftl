### The pages of a dough: what it does, at once, and where each number comes from.

web-roll = { $cm }; a roll 10 cm long and 2 cm thick has about { $resistance }.
web-water-inside = { $water } g of water to 100 g of flour, { $helped ->
        [helped] with syrup and fat as much as { $wet } g,{" "}
       *[alone] {""}
    }inside the trade's { $least } to { $most }.
web-water-below = { $water } g of water to 100 g of flour, { $helped ->
        [helped] with syrup and fat as much as { $wet } g,{" "}
       *[alone] {""}
    }below the trade's { $least } to { $most }.
web-water-above = { $water } g of water to 100 g of flour, { $helped ->
        [helped] with syrup and fat as much as { $wet } g,{" "}
       *[alone] {""}
    }above the trade's { $least } to { $most }.
web-cost-unknown = not known
web-cost-missing = No price is known here for: { $names }.
web-cost-batch = This batch of { $mass } g: { $cost }.
web-ph-sour = Sour.
web-ph-neutral = Nearly neutral: neither sour nor soapy.
web-ph-alkaline = Soapy, alkaline.

## Where a number comes from

web-source-heading = Where this number comes from
web-source-close = Put it away
web-source-made-of = What is open in it
web-source-sources = Sources
web-source-none = It has no printed source.
web-source-page = { $source }: { $page }
web-source-chain = Computed from what goes in. All that is open is drawn 4,096 times; the ends hold 95 % of the draws.
web-source-creep = Salt creeps by diffusion through the wall's own liquid, slowed as current is; both doughs are computed, and each draw of them gives a time. How fast it goes in dough is from memory.
web-beside-amount-written = The recipe says { $written }; a scale is off by a gram or a hundredth, cups and spoons by their way of being filled.
web-source-what-if = Both doughs are computed with the same draws, so that only the one change counts.
web-source-narrower = What such a measurement would settle is held at its middle, and the dough computed again. A measured batch teaches what batches share, how dough stands in the way of ions; how one batch differs from the next stays.
web-source-paid = What was paid for a packet, as its label in the notebook says; in another region it may cost something else.
web-source-cost = Small packs, prices of { $dated }; look at the shelf.
web-source-feel = Nobody has a model of texture: the trade's window of water to flour, and a fit that grows from scored batches.
web-status-measured = Measured: somebody read it off an instrument.
web-status-published = Published: it stands in a source that is named here.
web-status-computed = Computed from figures that are named here.
web-status-from-a-label = From a label: it was typed off a packet.
web-status-common-practice = Common practice: what people who make dough say; nobody printed a measurement.
web-status-from-memory = From memory: the weakest figure in it has no printed source, so its interval is wide. A measurement would beat it.
web-status-invented = Invented, for the story.
web-open-mass = { $name }: how exactly it is measured
web-open-needed = { $name }: added by feel
web-open-moisture = { $name }: its water
web-open-minerals = { $name }: how much of its minerals, against the table
web-open-water-lost = share of the water that leaves as steam
web-open-weighed-after = weight of the finished dough
web-open-brine-error = how far the tables of brine may be off (half-widths)
web-open-bound-water = water that a gram of flour holds
web-open-archie-exponent = how flour grains obstruct (exponent)
web-open-walden-exponent = how a syrup slows ions (exponent)
web-open-air = share of air
web-open-percolation = least share of liquid that finds a way
web-open-mobile-single = free share of flour's potassium and sodium
web-open-mobile-double = free share of flour's magnesium and calcium
web-open-dry-conductivity = conductivity of dry flour and fat
web-open-flour-ph = flour's own pH
web-open-flour-binding = acid that flour's protein takes up for each unit of pH
web-open-picture = from a pack of grains (0) to a gel (1)
web-open-activity-error = error of water activity
web-open-scatter = one batch against another
web-open-least = the trade's window begins (water to flour)
web-open-most = the trade's window ends
web-open-hydration = water to flour of this dough
web-reading-feel = Feel

## What it does, and what goes in

web-reading-resistivity = Resistivity
web-reading-water-activity = Keeping, by water activity
web-reading-cost = Cost of a kilogram
web-reading-ph = Acidity (pH)
web-ends-resistivity-low = carries
web-ends-resistivity-high = blocks
web-ends-water-activity-low = dry: little grows
web-ends-water-activity-high = wet: much grows
web-ends-feel-low = crumbles
web-ends-feel-high = sticks
web-ends-cost-low = cheap
web-ends-cost-high = dear
web-ends-ph-low = sour
web-ends-ph-high = soapy
web-gist-resistivity = { $figure }
web-gist-water-activity = wetness { $figure }
web-gist-feel = feel { $figure } of 5
web-gist-cost = { $figure }
web-gist-ph = pH { $figure }
web-before = before: { $figure }
web-drag = { $name }, in grams
web-narrower = { $share } % of what is open; a factor of { $factor } would be left
web-temperature = All of this at { $degrees } °C.
web-region = Bought in
web-more-in = Something more
web-more-choose = choose what else goes in
web-first-amount = 10 g
web-changed = Changed from what is written.
web-put-back = Put it back as it was
web-what-if = One thing different
web-what-if-lure = Its resistivity then, against now.
web-what-if-more = More of these

## Ways on

web-ways = Ask more of this dough
web-way-swap = Something else instead
web-way-swap-lure = An ingredient is missing, or somebody can't bear it.
web-way-salt = How much salt?
web-way-salt-lure = More of it, or less: current, keeping, sodium, cost.
web-way-mix = Three ingredients, all mixes
web-way-mix-lure = A map that can be touched.
web-way-care = Who may touch it?
web-way-care-lure = Allergens, diets, doses, what to mind.
web-way-wall = Insulating enough?
web-way-wall-lure = A wall of it beside a lamp.
web-way-beside = Side by side
web-way-beside-lure = Against another dough, or against what it was.
web-beside-others = Beside it
web-beside-written = as it is written
web-beside-changed = { $title }, changed
web-beside-begin = Choose one dough at least to put beside it, and { $most } at most.
web-beside-out = What comes out
web-beside-in = What goes in

## The pages of questions

web-no-dough = There is no dough at this address. Go back to the table, and begin with one that lies there.
web-back-to-dough = Back to { $title }
web-swap-without = What is missing, or must not be in it
web-swap-allergens = An allergen that must stay out
web-swap-allergens-legend = Nothing with it is proposed, and what may bring traces of it comes last
web-swap-diet = Who is at the table
web-swap-target = What it should do better
web-swap-begin = Choose something above: recipes come at once that do without it and keep what matters.
web-swap-feel = feel
web-target-none = nothing in particular
web-target-cheapest = cost least
web-target-saltless = less sodium
web-target-keeps-longer = keep longer
web-target-carries-better = carry better
web-target-blocks-better = block better
web-class-acid = anything sour
web-class-gluten = anything with gluten
web-class-wheat = wheat
web-class-alum = alum
web-class-sugar = all sugars
web-class-fat = all fats
web-class-salt = all salts
web-class-corn = corn
web-class-nuts = nuts
web-class-glycerine = glycerine
web-class-stove = the stove
web-proposal = No. { $number }, { $way }
web-proposal-figures = What its dough does
web-instead-of = instead of { $before }
web-left-out = left out
web-new = new
web-to-know = What to know
web-take-this = Take this one
web-source-swap-amount = This amount was searched for: it keeps what matters, and is rounded to what a kitchen measures.
web-source-swap = Computed anew for the rounded amounts; what nobody measured of both doughs is drawn alike.
web-touch-hint = Touch the picture, or use the arrow keys: what the dough does there stands beside it.
web-touched = Where you touch
web-take-mix = Take this mix
web-vary = What is varied
web-vary-salt = its main salt
web-corner-first = First ingredient
web-corner-second = Second ingredient
web-corner-third = Third ingredient
web-show = What the map shows
web-care-age = Age of the youngest child, in years
web-care-dog = Weight of the dog, in kilograms, if there is one
web-care-on = Day whose law counts
web-amiss-amount = { $name }: { $problem }
web-amiss-cooked = How it is made: “{ $value }” is no way to make it. { $remedy }
web-amiss-nothing = say how much goes in, “125 g” or “1 cup”; 0 leaves it out.
web-amiss-degrees = How warm it is when it is used: “{ $value }” can’t be. { $remedy }
web-amiss-feel = { $name }, what is added by feel: { $problem }
web-amiss-grams = { $value } g can’t be. { $remedy }
web-care-no-need = “{ $need }” is no need that Lumped knows: what stands here does not count it. Choose below what comes nearest, or ask those whom it concerns.
web-care-near = Did you mean: { $near }?
web-care-no-day = “{ $text }” is no day that Lumped can read. Write year, month and day, as in 2026-05-09; with none it is today.
web-care-allergens = Allergens
web-care-diets = Diets
web-care-none = none of the list
web-more-cautions = { $count ->
    [one] One more to mind
   *[other] { $count } more to mind
}
web-caution-source = What to mind
web-source-ask = where from
web-wall-hardly = less than { $least } mA
web-wall-thick = Thickness of the wall
web-wall-touch = Where the lumps touch it
web-wall-lamp = The lamp beside it
web-wall-beyond = { $what }: “{ $text }” is not between { $least } and { $most } { $unit }, which is as far as this page goes. It shows { $shown } { $unit }.
web-wall-no-lamp = There is no lamp “{ $text }”. This page shows the { $shown }.
web-wall-leak = leaks through the wall
web-wall-current = is left for the lamp
web-wall-without = beside a perfect wall
web-wall-yes = Fresh: insulating enough
web-wall-no = Fresh: not insulating enough
web-wall-perhaps = Fresh: perhaps insulating enough
web-wall-night-working = After a night: …
web-wall-night-yes = After a night: still insulating enough
web-wall-night-perhaps = After a night: perhaps no longer
web-wall-night-no = After a night: no longer
web-wall-night-worse = After a night: still less
web-wall-scene = Beside it: four fresh cells, two lumps with thin pins, and the lamp across the wall (from memory). A sculpture's own page computes yours.
web-wall-state = The lamp is { $poor }, wherever in its interval the dough is.
web-wall-states = The lamp is { $poor } if the dough is at the poor end of its interval, { $good } at the good end.

## The doughs on the table

web-doughs = Doughs on the table
web-doughs-lure = One carries current, the other blocks it. Change what goes in, and see what that does.
web-dough-look = Change what goes in
web-dough-own = Begin your own from it
web-own-title = A dough of our own
