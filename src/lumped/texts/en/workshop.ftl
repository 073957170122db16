### People, batches, hands, shopping (workshop)

## Who comes; the words that are understood, each list parted by ", "

people-read-numbers = one, two, three, four, five, six, seven, eight, nine, ten, eleven, twelve, thirteen, fourteen, fifteen, sixteen, seventeen, eighteen, nineteen, twenty
people-read-people = children, child, kids, kid, pupils, pupil, students, student, people, persons, person, boys, girls
people-read-adults = adults, adult, grown-ups, grown-up, teachers, teacher, parents, parent
people-read-of = of, aged, of age, at
people-read-years = years old, year old, years, year
people-read-groups = in groups of, groups of, by
people-read-one = each on their own, on their own, alone, each
people-read-two = in pairs, in twos, two by two
people-read-three = in threes
people-read-four = in fours

people-party = { $size ->
    [one] { $count } of age { $age }, each on their own
   *[other] { $count } of age { $age }, in groups of { $size }
}
people-unreadable = “{ $text }” does not say who comes. Write how many of what age, such as “28 of 9 in pairs”, or “2 adults”.
people-nobody = “{ $text }” is nobody. Leave it out, or write how many come, such as “28 of 9”.
people-age = “{ $text }”: an age of { $age } can’t be planned for. Give one from { $first } to { $last } years.
people-too-many = { $count } people are more than Lumped plans for at once ({ $most }). Plan one hall or one day after the other.
people-group-size = “{ $text }”: that many don’t fit round one sculpture. Say groups of 1 to { $most }.

## How much, in what

making-mass = { $mass } kg of dough can’t be planned here. Give a mass from { $least } g to { $most } kg.
making-pot = A pot of { $pot } L is none that Lumped knows. Give one from { $least } to { $most } L, such as “3 L”.
making-time = { $minutes } min is no time that Lumped can plan with. Give more than nothing and less than a week, such as “40 min”.
making-people-or-mass = Say for whom (--people) or how much (--mass), not both: the one follows from the other.
making-masses = There are { $recipes } recipes and { $masses } masses. Give one mass for each recipe, in their order, or one for all.
making-no-shop = A shopping list needs a region, since packets and shops differ. Give --region, one of: { $known }.
making-have = “{ $text }” does not say what is there already. Write an ingredient, a colon and an amount, such as “table-salt: 500 g”.

work-setting-out = setting out
work-weighing = weighing and mixing
work-cooking = stove, kettle or oven, stirring
work-kneading = kneading
work-washing = washing the pot in between
work-sharing = sharing out

making-way-pot = cooked in a pot
making-way-kettle = boiling water from the kettle
making-way-microwave = cooked in a microwave oven
making-way-not-cooked = kneaded cold
making-way-place = { $way }, { $place }
making-place-pot = left in its pot
making-place-slab = pressed into slabs of 2 cm
making-place-thin = rolled out to 1 cm
making-place-bath = in a tight flat bag in cold water
making-share = { $name }: { $share } %
making-other-water = { $shares } of what the recipe takes, and of all else as much as it says. Less leaves as steam this way; with all of the water the dough would be too wet for hands.
making-resistivity = The dough then has about { $after } Ω·m instead of { $before }.

minutes = { $count } minutes
hours = { $count } hours

making-caution-inside = A batch of { $mass } kg left in its pot stays too hot inside for about { $hours }, while its face feels cool: cut it open, feel the middle with an adult's hand, then hand it out.
making-caution-pressing = An adult presses hot dough flat, between two sheets of baking paper and with a board or pin, never by hand. A bag that goes into cold water must be one for hot food, and tight: salt water stings.
making-caution-kettle = Boiling water scalds: an adult pours it, with the children away from the table.
making-caution-heavy = A full hot pot of { $litres } L is no load for one person: take smaller batches, leave the pot where it stands, or carry it cold. Local rules for lifting come first.
making-caution-mouth = Small children, up to { $age } years and beyond, put dough and lamps into their mouths: salty dough makes them ill, small parts and button cells can kill. Not for them without an adult for each child.

shopping-hint-swap = { $name }: { $place }. Something else instead: lumped swap { $file } --without { $key } --region { $region }
shopping-one-oil = { $names }: one oil would do for all these doughs: { $name } in all of them ({ $need }) saves about { $mean } { $money } ({ $low } to { $high }).
shopping-hint-unknown = { $name }: nobody told Lumped its packets and price. Get { $need } g at least; it is not in the sum.

## On the command line

cli-make = dough for so many people, or of so much weight: batches, times, cost
cli-make-about = Dough for so many people, or of so much weight: one batch in grams and measures, how many of them, how long hands and cooling take, what it costs, and what can be had in a given time.
cli-make-people = who comes, such as “28 of 9 in pairs” or “2 adults”; may be said again
cli-make-mass = how much dough there should be, such as “1.7 kg”
cli-make-pot = volume of the pot or bowl, such as “3 L”; a large household pot if left out
cli-make-region = where it is bought, such as europe: its prices, cups and spoons
cli-make-measures = whose cups and spoons, such as metric; the region's if left out
cli-make-within = what can I have in this time, such as “40 min”?
cli-shop = a shopping list for recipes together: whole packets, cost, what is left over
cli-shop-mass = how much dough there should be of each, such as “1.7 kg”; said once for all recipes, or once for each
cli-shop-have = what is there already, such as “table-salt: 500 g”; may be said again
cli-shop-least = --little-over chooses the packets that leave least over.
cli-shop-little-over = choose the packets that leave least over, instead of the cheapest

making-title = { $title } for { $for }
making-for-one = { $count ->
    [one] one person
   *[other] { $count } people
}
making-first = { $count ->
    [one] One batch of about { $mass } of dough, { $way }, in a pot or bowl of { $pot }{" "}L, which it fills to { $full }{" "}% at most.
   *[other] { $count } batches of about { $mass } of dough each, { $way }, in a pot or bowl of { $pot }{" "}L, which each fills to { $full }{" "}% at most.
}
making-wants = Hands want about { $wants }{" "}kg of it ({ $low } to { $high }); with { $reserve }{" "}% in reserve { $made }{" "}kg are made.
making-yields = That makes { $made }{" "}kg of dough ({ $low } to { $high }), by how much steam leaves.
column-batch = one batch
column-grams = grams
column-measures = measures: { $name }
column-all-batches = all batches
column-work = work
making-column-time = it takes
column-way = way
column-all-ready = all of it ready after
column-in-time = in { $minutes } min
making-by-feel = + 0 to { $most } g by feel
making-by-feel-from = + { $least } to { $most } g by feel
making-nothing-firm = –
making-busy = one person is busy for
making-shift = Rounded to these measures, resistivity moves by { $resistivity }{" "}%, water to flour by { $hydration }{" "}%, the mass by { $mass }{" "}%. Of all ways to round, this one moves the dough least; a scale is better still.
making-ready-at-once = It is never hot: about { $time } from the first weighing to the last handing out.
making-ready-pot = Left in its pot, the last batch can be handed out after { $time }, counted from the first weighing.
making-minutes-between = { $mean } min ({ $low } to { $high })
making-hours-between = { $mean } h ({ $low } to { $high })
making-all = all of it
making-some = with luck { $most }
making-some-surely = { $surely }, with luck { $most }
making-kilograms = { $mass } kg
making-none = none
making-day-before = The day before: any amount. It cools overnight in flat pieces, then lies in a closed bag; knead it through before use.
making-best-time = In { $minutes } min: { $words } gives { $amount }.
making-best-worse = In { $minutes } min: { $words } gives { $amount }, but that dough { $worse } than the recipe as it stands.
making-worse-conducting = conducts { $factor } times worse
making-worse-insulating = blocks current { $factor } times worse
making-as-good = As good as the recipe as it stands: { $words } gives { $amount }.
making-sooner = Sooner, after { $time }: { $words }, but that dough { $worse } than the recipe as it stands.
making-blocks-work = Made as the recipe says, not all of it is surely ready by then. Hands and stove block: they alone take { $active }, and the longest is { $step }, { $longest }. Less dough or a second cook would shorten that.
making-blocks-cooling = Made as the recipe says, not all of it is surely ready by then. Cooling blocks: hands and stove take { $active }, but then a batch cools { $wait } even at the soonest, { $place }.
making-best-none = Nothing is ready in { $minutes } min. Make it the day before.
making-cost = Ingredients: { $whole } altogether, { $batch } a batch{ $person }, as far as they are used up. Prices, in { $money }, are from memory ({ $dated }), for small packets; look at the shelf.
making-cost-person = , { $person } a person
making-cost-unpriced = Nobody told Lumped the price of { $names }: it is not in the sum.
making-cost-none = No region was given, so there is no cost. Say --region, such as --region europe.
making-memory = Lump sizes and all times are from memory: time one batch with a clock, and trust the clock.
heading-in-time = What can I have in { $minutes } minutes?
heading-cost = Cost

shopping-title = Shopping for { $titles }
shopping-for = Dough: { $amounts }.
shopping-amount = { $mass } kg of { $title }
column-need = need
column-buy = buy
column-over = left over
shopping-shelf-flour = beside the flour
shopping-shelf-salt = beside the salt
shopping-shelf-sugar = beside the sugar
shopping-shelf-sour = sour things
shopping-shelf-oil = beside the oil
shopping-shelf-baking = baking odds and ends
shopping-shelf-water = liquids
shopping-packet = { $count } × { $size }
shopping-packet-sum = { $left } + { $right }
shopping-have = all there
shopping-total = Altogether about { $total } { $money } ({ $low } to { $high }).
shopping-used = Packets and prices are from memory ({ $dated }), in { $money }; a larger packet is taken to be cheaper by weight. Look at the shelf. What is added by feel is bought at its most.
shopping-cheapest = The packets are the cheapest that hold enough.
shopping-least = The packets are those that leave least over.
heading-hints = Not easily had there
column-cooling = it cools
column-safe = safe for hands after
making-note = { $way }: { $note }
shopping-tap = From the tap: { $what }.
making-on-scale = kitchen scale
making-many = So many batches take long: a larger pot makes fewer, a second cook with a second stove makes them sooner.
shopping-place = { $place }:
