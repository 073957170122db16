### The page of a dough for a class: how much, in how many pots, how long, what it costs, what to buy.

web-way-make = For a class
web-way-make-lure = How much, in how many pots, how long, what to buy.

## What is asked

web-make-by = How much
web-make-by-people = for people
web-make-by-mass = by weight
web-make-by-recipe = the recipe as it is
web-make-people = How many people
web-make-age = Of what age, in years
web-make-group = Who shares a sculpture
web-make-group-one = each builds alone
web-make-group-two = pairs
web-make-group-three = threes
web-make-group-four = fours
web-make-mass = Dough altogether, in kilograms
web-make-pot = Pot or bowl, in litres
web-make-minutes = Minutes there are
web-make-no-minutes = any
web-make-no-age = adults
web-make-packets = Packets
web-make-packets-cheap = the cheapest
web-make-packets-little = least left over
web-make-begin-people = Say how many people come, and how old they are: then it says how much dough that takes.
web-make-begin-mass = Say how much dough there should be, such as 1.7.

## What is answered

web-make-state = { $mass } kg of dough, { $count ->
    [one] in one batch
   *[other] in { $count } batches
}
web-make-wants = hands want
web-make-made = is made
web-make-each = one batch
web-make-active = one person is busy for
web-make-ready = in hand after
web-make-ready-pot = in hand after, left in its pot
web-make-person = what is used, for each person
web-make-whole = what is used, altogether
web-make-till = at the till, in whole packets
web-make-weigh = What to weigh out
web-make-clock = The clock
web-make-shop = What to buy
web-make-column-what = what
web-make-far = { $name }: { $place }.
web-make-more = Pot, time, shops
web-make-card = A card to cook it from
web-make-print = Print it
web-make-nothing-bought = Nothing has to be bought for it.

## Where its numbers come from

web-make-lump = a lump in a hand of { $age } years
web-make-lumps = lumps that a group shares
web-make-price = price in small packets
web-make-cheaper = how much cheaper each doubling of a packet is
web-make-source-wants = Lumps for each group, times the weight of a lump in a hand of that age; the groups of one class are taken to be alike, so their interval does not shrink.
web-make-source-made = The recipe, scaled as a whole until its finished dough weighs that; what steam takes away is the interval.
web-make-source-each = All of it, shared out evenly to as many pots as pot and arms ask for.
web-make-source-time = A minute for each ingredient, stove by heat and steam, hands by weight, and cooling computed through the dough; the ends hold 95 % of the draws. Time one batch with a clock, and trust the clock.
web-make-source-by-people = The amount of the recipe, scaled to what hands want.
web-make-source-by-mass = The amount of the recipe, scaled to the dough that there should be.
web-make-source-by-recipe = The amount that the recipe says.
web-make-source-all = The amount of one batch, { $count } times.
web-make-source-need = What the recipe takes for all of it, and the most of what is added by feel.
web-make-source-cups = What these measures hold, as people fill them. Of all ways to round, the one that moves the dough least.
web-make-source-packets = Usual sizes of packets, prices of { $dated }; look at the shelf.
