### From a recipe to a dough (dough)

recipe-amount = “{ $text }” is no amount that Lumped can read. Write a number and one of { $units }, such as "1 1/2 cups" or "250 g".
recipe-portion = { $file }: { $key }: { $problem }
recipe-two-amounts = Give amount_g or amount, not both; take one out.
recipe-no-amount = Say how much goes in: “125 g”, or “1 cup”. In a file: amount_g = 125, or amount = "1 cup", or as_needed_g = [0, 60].
recipe-feel-words = “{ $words }” does not say what is added by feel. Write the most of it in grams, such as “40”, or least and most, “10 to 40”; nothing at all if none is.
recipe-feel-nothing = as_needed_g = [0, 0] adds nothing; take it out, or give the most that is added.
recipe-feel-order = as_needed_g gives the least amount first, then the most: as_needed_g = [{ $least }, { $most }].
recipe-feel-two = as_needed_g gives two amounts in grams, least and most: as_needed_g = [0, 60].
batch-day = Write the day alone, as in 2026-05-08.
batch-one-end = Give low_ohm_m and high_ohm_m, or neither.
recipe-measure-system = “{ $text }”: there is no such measure among { $system } measures. { $elsewhere }
amount-elsewhere = It is one of the { $name } measures and holds { $volume } mL. Name those (measures = "{ $key }" in a recipe, --in { $key } for a command), or give the amount in mL or grams.
amount-nowhere = Give the amount in grams.
recipe-no-weight = “{ $text }”: the handbook does not know what that measure of { $ingredient } weighs. Give the amount in grams.
recipe-no-ingredient = { $where }: Lumped knows no ingredient “{ $word }”. { $near }
recipe-too-heavy = { $file }: method › weighed_after_g is { $after }, but at most { $most } g went in. Weigh without the bowl, or look for an ingredient that is missing.
recipe-too-light = { $file }: method › weighed_after_g is { $after }, less than the { $dry } g of dry things that went in. Weigh the whole dough, or correct the amounts.

dough-calibration-far = { $measured } was measured, but this recipe yields { $expected }. Was it this recipe, weighed like this, and measured with four needles or with alternating current? Measure again before anything is learnt from it.
dough-batch-far = Batch “{ $batch }”: { $problem }
dough-ohmmeter = { $resistivity } Ω·m from an ohmmeter with two probes is no resistivity of a dough: at its small direct current it reads the volts lost where metal meets dough, often a thousand times too much. Measure with four needles or with alternating current, or choose a recipe, or say that the dough is unknown.
batch-ohmmeter = { $resistivity } Ω·m from an ohmmeter with two probes is no resistivity of a dough: at its small direct current it reads the volts lost where metal meets dough, often a thousand times too much. Measure with four needles or with alternating current, or leave the reading out: the rest of the batch still teaches.
dough-no-way = “{ $how }” is no way of measuring that Lumped knows. Choose one of: { $ways }.
dough-measured-order = A measured resistivity of { $resistivity } Ω·m between { $low } and { $high } can't be. Give positive figures, low below and high above the reading.
dough-measured-name = measured dough

dough-note-measured = Measured: { $way }.
dough-note-unknown = Nobody knows this dough; the interval spans { $span } (from memory).
dough-note-unmeasured = Nobody measured this batch: the recipe alone leaves a factor of { $factor } between the ends of the interval.
dough-note-calibrated = Measured batches narrow the interval; a factor of { $factor } is left between its ends.
dough-note-solid-salt = Up to { $solid } g of salt may stay solid: ions reach about { $reached } g of the water, and it holds no more. More salt would make it conduct worse, not better.
blocking-ratio = It carries { $ratio } times less than a usual salt dough. { $trade }
blocking-holds = “Many thousands of times less”, as the trade says (common practice), holds.
blocking-maybe = The trade says “many thousands of times” (common practice): in the middle of what is believed that holds, at its low end it does not.
blocking-less = The trade says “many thousands of times” (common practice): of this dough the physics says less.
blocking-raise = What would make it block better: { $changes }.
blocking-ruin = What would ruin it: { $changes }.
blocking-better = { $words } ({ $factor } times better)
blocking-worse = { $words } ({ $factor } times worse)
dough-note-no-way = It has hardly enough liquid to form a way through: whether it does decides a factor of thousands. A little more water makes it sure.
dough-note-salted = An insulating dough with { $share } % salt: with a little water it carries current. This is no dough for walls.
dough-note-salty = An insulating dough with { $share } % salt: even a pinch more than doubles what it lets through. Use clean hands and tools of its own.
dough-note-poor = For a conducting dough this is a poor one: add salt, or more water.
dough-note-dry = All its water is held by flour and starch, none is free to carry salt: add water.
dough-note-as-needed = How much was added until it felt right is not known, and is part of the interval. Weigh it, or weigh the finished dough.
dough-note-warm = At { $temperature } °C it conducts far better than on the table; above 35 °C the figure is extrapolated. Let it cool first.
dough-note-invented = This recipe is invented.

dough-step-went-in = What went in
dough-step-water-lost = Water that left as steam
dough-step-mass = Dough that is left
dough-step-bound-water = Water that starch and protein hold
dough-step-free-water = Free water
dough-step-liquid-water = Water that ions reach, held or free
dough-step-salt-dissolved = Salt that dissolves
dough-step-salt-solid = Salt that stays solid
dough-step-sugar-dissolved = Sugar that dissolves
dough-step-sugar-solid = Sugar that stays solid
dough-step-salt-in-liquid = Salt in the brine
dough-step-salt-in-liquid-plain = Salt in the liquid
dough-step-liquid-conductivity = Conductivity of the brine
dough-step-liquid-conductivity-plain = Conductivity of the liquid
dough-step-liquid-conductivity-thin = Conductivity of the liquid, were it as thin as water
dough-step-mobility-left = Mobility that the syrup leaves to ions
dough-step-mobility-left-plain = Mobility that what thickens the liquid leaves to ions
dough-step-syrup-conductivity = Conductivity of the liquid
dough-step-liquid-share = Liquid's share of the volume
dough-step-obstruction = Share of it that flour, fat and air let through
dough-step-best-possible = Best that any dough of this liquid could do
dough-step-resistivity = Resistivity of the dough
dough-step-hydration = Water to flour (bakers' percentage)
dough-step-water-activity = Water activity
dough-step-ph = pH of its liquid
dough-step-density = Density

dough-measure-resistivity = measure the resistivity of a batch, with four needles or alternating current, and keep it: of the batches after it
dough-measure-scale = weigh every ingredient on a scale, the last handful too
dough-measure-finished = weigh the finished dough
dough-measure-oven = dry a spoonful of the flour or starch in the oven and weigh it before and after
dough-measure-conductivity-meter = put a conductivity meter into the water and into the liquid that can be pressed out
dough-measure-syrup = measure how well salt water conducts with what thickens this dough’s liquid in it: its sugar, syrup, glycerine or alcohol

feel-batches = { $count ->
    [0] nobody has scored a batch yet: the trade's window, by common practice
    [one] one scored batch
   *[other] { $count } scored batches
}
feel-inside = { $water } g of water to 100 g of flour lie in the trade's window of { $least } to { $most }: expected { $feel } ({ $low } to { $high } of 5, 3 is right).
feel-below = { $water } g of water to 100 g of flour are less than the { $least } to { $most } of the trade's window: expected { $feel } ({ $low } to { $high } of 5, 3 is right). Add water by the spoon.
feel-above = { $water } g of water to 100 g of flour are more than the { $least } to { $most } of the trade's window: expected { $feel } ({ $low } to { $high } of 5, 3 is right). Add flour by the spoon, or cook it longer.
feel-helped-inside = { $water } g of water as such to 100 g of flour, and { $by ->
        [syrup] syrup
        [fat] fat
       *[both] syrup and fat
    } to stand in for more: as much as { $wet } g, in the trade's window of { $least } to { $most } (by volume, a rule from memory). Expected { $feel } ({ $low } to { $high } of 5, 3 is right).
feel-helped-below = { $water } g of water as such to 100 g of flour, and { $by ->
        [syrup] syrup
        [fat] fat
       *[both] syrup and fat
    } to stand in for more: as much as { $wet } g, less than the { $least } to { $most } of the trade's window (by volume, a rule from memory). Expected { $feel } ({ $low } to { $high } of 5, 3 is right). { $kind ->
        [insulating] Add syrup, fat or water by the spoon; water lets most current through.
       *[other] Add water by the spoon.
    }
feel-helped-above = { $water } g of water as such to 100 g of flour, and { $by ->
        [syrup] syrup
        [fat] fat
       *[both] syrup and fat
    } to stand in for more: as much as { $wet } g, more than the { $least } to { $most } of the trade's window (by volume, a rule from memory). Expected { $feel } ({ $low } to { $high } of 5, 3 is right). Add flour by the spoon.
feel-fat-bound = There is hardly any water: fat holds this together, { $fat } mL to 100 g of flour, as in shortbread before it is baked. It can be pressed into shape and breaks when it is bent; expected { $feel } ({ $low } to { $high } of 5, 3 is right). { $kind ->
        [insulating] Add no water, which would let current through; if it crumbles, add fat by the spoon.
       *[other] To carry current it needs salt and water, not fat.
    } All of that is from memory.
feel-powder = This is no dough: { $water } g of water to 100 g of flour{ $by ->
        [nothing] {" "}are far less than the { $least } to { $most } of the trade's window, and it stays crumbs.
       *[other] , with syrup and fat as much as { $wet } g, are far less than the { $least } to { $most } of the trade's window, and it stays crumbs.
    } { $kind ->
        [insulating] Add syrup or fat, or water, which lets more current through; or look for a slip in an amount.
       *[other] Add water, or look for a slip in an amount.
    }
feel-pours = This is no dough: { $water } g of water to 100 g of flour{ $by ->
        [nothing] {" "}are far more than the { $least } to { $most } of the trade's window, and it pours.
       *[other] , with syrup and fat as much as { $wet } g, are far more than the { $least } to { $most } of the trade's window, and it pours.
    } Add flour, or look for a slip in an amount.
feel-no-body = This is no dough: { $share } % of it is flour or starch, and nothing holds together with less than { $least } %. Add flour, or look for a slip in an amount.
feel-unbound = This is no dough: kneaded cold, starch without gluten is bound by nothing, and no binder stands in for the gluten. Cook it, or put psyllium or xanthan in.
feel-figure = { $word }: { $score } of 5 ({ $low } to { $high })
feel-anything = anything from { $low } to { $high }
feel-crumbles = crumbly
feel-stiff = stiff
feel-right = right
feel-soft = soft
feel-sticks = sticky

origin-laws = Made by { $laws }.
origin-drying = Made by water that creeps to the face by diffusion, what flour (Guggenheim, Anderson, de Boer) and brine (Pitzer, Norrish, Ross) hold of it, and air that carries the rest away.
origin-dried = { $laws } The resistivity follows from what is left, as in a fresh dough.
origin-weighing = what was weighed or measured out
origin-contents = what is in the ingredients
origin-steam = water lost as steam
origin-binding = water that flour holds
origin-dissolving = how much dissolves
origin-volume = room that the liquid and the rest take
origin-acidity = weak acids in balance with flour, after Davies
origin-brine = ions that carry current, by tables of salts
origin-thickening = syrup that slows them, after Walden
origin-bound = the most that any body lets through, after Hashin and Shtrikman
origin-obstruction = flour in the way, between Archie and Mackie and Meares
origin-activity = water left free, after Pitzer (salts), Norrish (sugar, glycerine), Ross (both) and Oswin (flour)

cli-label = an ingredient file (TOML or CSV), for what the handbook does not have
dough-carries = Carries current: { $resistivity }, or { $cm }.
dough-open = May carry current or block it: { $resistivity }, or { $cm }. Nobody can tell from the recipe.
dough-blocks = Blocks current: { $resistivity }, or { $cm }.
dough-unfit-conducting = Meant to carry current; computed: it blocks, { $resistivity }. Look for a slip in an amount, or whether salt is missing.
dough-unfit-insulating = Meant to block current; computed: it carries, { $resistivity }. Look for salt in it, or say dough = "conducting".
unfit-of = { $title }: { $words }
dough-facts = Water activity { $activity }, pH { $ph }, { $density }.
heading-narrower = What would narrow this
dough-influence-none = Only measuring a specimen would: how well flour and fat without free water conduct, nobody knows within a factor of hundreds.
dough-influence = { $share } % of what is open: { $words }; a factor of { $factor } would be left.

### Many recipes at once

many-shape = A table of masses has a row for each ingredient, each of them once: { $rows } are named, but the table is { $shape }.
many-mass = Recipe no. { $number } holds { $mass } g of { $ingredient }. Write 0 or more, or leave it empty.
many-words = Recipe no. { $number } holds “{ $said }” of { $ingredient }, which is no number. Write grams as a number alone.
many-choice = { $name } is “{ $said }”. It is one of: { $choices }.
many-draws = { $draws } draws can’t be. Give 0 for the middle of what is believed alone, or some, such as 256.
many-empty = Recipe no. { $number } holds nothing. Take it out, or write how much goes in.
many-none = There is no recipe in the table. Give a row for each.
