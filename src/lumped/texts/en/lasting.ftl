### How long a dough lasts (dough/lasting)

lasting-not-positive = { $what } is { $figure }, but must be more than nothing.
lasting-word-thickness = The thickness
lasting-word-extent = The size of the face or the length
lasting-word-density = The density
lasting-word-content = The water content
lasting-word-duration = The time
lasting-humidity = A relative humidity of { $humidity } can’t be: it lies between 0 (dry air) and 1 (air that drips).
lasting-no-molar-mass = Lumped can’t tell how much water { $compound } holds: the handbook knows no molar mass of it.

lasting-no-weight = { $mass } g is no weight of a dough. Weigh it again, with the bag both times or without it both times.
lasting-heavier = The dough is { $more } g heavier than the { $before } g that it weighed at first, and dough in a bag gains nothing. Was it the same bag, and were both weighed with it? Or did it stand in damp air?
lasting-lost-all = The dough lost { $lost } g, but held only { $water } g of water. Check both weights, and whether a piece was taken out.
lasting-refresh-nothing = It lost no water: knead it through, and that is all.
lasting-refresh-knead = Knead in { $water } g of water, a spoonful at a time.
lasting-refresh-rest = Let it rest for about { $minutes } minutes in its bag, so that the water reaches the inside of every crumb, and knead it once more.
lasting-refresh-mould = Not if it smells, has spots or turned slimy: water does not mend that. Throw it away.

lasting-heat-part = “{ $part }” is no part of a dough that Lumped knows the warmth of. The parts are: { $parts }.
lasting-heat-nothing = There is no dough to be warm: all its parts are nothing.
lasting-cooling-figure = A size, a time or a property of a cooling dough is { $figure }, but must be more than nothing.
lasting-not-warm = The dough has { $beginning } °C and the room { $room } °C: nothing cools there.

lasting-activity = A water activity of { $activity } can’t be: it lies between 0 and 1.
lasting-growth-grows = Could grow in this dough: { $groups }.
lasting-growth-may-grow = May grow in it, the figures can’t tell: { $groups }.
lasting-growth-slowed = Slowed, not stopped: { $groups }.
lasting-growth-nobody = By the table nobody can grow in it.
lasting-preserved = Its preservative works, because the dough is sour enough.
lasting-cold = In the fridge what grows grows slowly. Keep it in a closed box, marked “not food”.
lasting-ill = Bacteria that make people ill could grow in it: make it on the day, keep it cold until then, and throw it away after the lesson.
lasting-poison = A bacterium from skin and noses could grow in it: wash hands before and after.
lasting-caveat = This is no promise of how long it keeps: hands bring in germs, and a damp spot keeps less well than the rest. Look and smell each time; when in doubt, throw it away.

# How clocks are said
lasting-none = none
lasting-million = more than a million
lasting-at-most = at most { $most }
lasting-more-than = more than { $count }
lasting-long = more than a month
lasting-moment = less than a minute
lasting-moment-most = less than a minute, at best { $high }
lasting-open = more than a month, perhaps only { $low }
lasting-minutes = { $count ->
    [one] { $mean } minute
   *[other] { $mean } minutes
}
lasting-hours = { $count ->
    [one] { $mean } hour
   *[other] { $mean } hours
}
lasting-days = { $count ->
    [one] { $mean } day
   *[other] { $mean } days
}
lasting-span = { $mean } ({ $low } to { $high })

# Drying
lasting-dry-lesson = In a lesson of 45 minutes
lasting-dry-night = Overnight (16 hours)
lasting-dry-days = After three days
lasting-dry-keeps = { $when } it keeps its water.
lasting-dry-level = { $when } it stays about as it is: of the water that it held it may lose up to { $lost } %, or take up { $gained } % more from the air.
lasting-dry-either = { $when } it may dry or get wet, nobody can tell: of the water that it held it may lose up to { $lost } %, or take up { $gained } % more from the air.
lasting-dry-gains = { $when } it draws water out of the air, { $gained } % of what it held: it turns softer and stickier, and { $carries }.
lasting-dry-loses = { $when } it has lost { $lost } % of its water, { $skin } and { $carries }.
lasting-dry-soft = is still soft all over
lasting-dry-skin = has a leathery skin of { $depth } mm
lasting-dry-stiff = is as stiff all through as at first
lasting-dry-through = is leathery or hard all through
lasting-dry-same = carries current as it did when fresh
lasting-dry-blocks = blocks current as it did when fresh
lasting-dry-better = lets current through { $times } times more easily
lasting-dry-worse = lets current through { $times } times less easily
lasting-dry-lost = hardly lets any current through
lasting-rest-border = It neither dries nor gets wet in air of { $mean } % humidity ({ $low } to { $high }).
lasting-rest-dries = The room has { $room } %, so it dries, more and more slowly, until { $lost } % of its water is gone, and stops there.
lasting-rest-wets = The room has { $room } %, so it draws water out of the air for as long as it lies there: it turns wet and sticky, and runs. Close the box, or find a drier room.
lasting-rest-level = The room has { $room } %, so it stays about as it is.
lasting-rest-cover = Under its cover that takes far longer; in the end it is the same.
lasting-room = A room of { $room } °C can’t be reckoned with. Give one from 0 to 50 °C, such as “21 °C”.
lasting-humidity-percent = A humidity of { $humidity } % can’t be: it lies between 0 (dry air) and 100 (air that drips). Write it such as “45 %”.
lasting-cover = “{ $cover }” is no cover that Lumped knows. The covers are: { $covers }.
lasting-draught = “{ $draught }” is no draught. Say { $draughts }, or a speed in metres a second from 0 to 20.
lasting-no-dough = This mix has { $water } g of water to 100 g of all the rest. Lumped follows the drying of doughs, from 1 to 2000 g. Add water, or something that holds it.
lasting-too-open = Nobody can tell how much water this mix has: from { $least } to { $most } g to 100 g of all the rest. Its amounts are so small that a kitchen scale hardly tells them, or it is written too loosely. Make more of it, or weigh the finished dough.
lasting-duration = { $hours } hours can’t be followed. Give more than nothing and at most { $most } hours.
lasting-shape = “{ $shape }” is no shape of a piece. The shapes are: { $shapes }.
lasting-size = A piece { $size } mm in size can’t be. Give a thickness from 0.5 mm to 20 cm, and a length and width up to 10 m.
lasting-unsteady = A piece of { $thickness } mm is dry so soon that Lumped can’t follow it for { $hours } hours. Ask for fewer hours, or for a thicker piece.

# Cooling
lasting-hot-mass = A hot dough of { $mass } kg can’t be reckoned with. Give more than nothing and at most { $most } kg.
lasting-hot-size = A hot dough { $size } mm in size can’t be reckoned with. Give more than nothing and at most { $most } m, such as “2 cm”.
lasting-form = “{ $form }” is no way to lay a hot dough down. The ways are: { $forms }.
lasting-no-size = How much is it? Give its thickness, such as --thick "2 cm" (for a pot or a ball its weight does too: --mass "900 g").
lasting-room-warm = A room of { $room } °C is too warm to cool a dough for hands, which bear about { $hands } °C, or too cold to be one.
cool-never-hot = It is kneaded cold: hands may take it at once.
cool-pot = In its pot, { $mass } g and { $thick } mm high, it is too hot for hands for { $middle }.
cool-slab = Pressed to a slab of { $thick } mm it is too hot for hands for { $middle }.
cool-ball = As a ball of { $thick } mm ({ $mass } g) it is too hot for hands for { $middle }.
cool-face = Its face feels cool after { $face }, while the inside is still hot: break a piece open and feel there.
cool-reckoned = Reckoned from { $beginning } °C in a room of { $room } °C to { $safe } °C in the middle, under a cloth or film, on a board that takes no heat. Lying open it cools sooner, but its face dries.
cool-adult = An adult tests it with the inside of the wrist before children touch it. Young skin bears less; local rules come first.
cool-making = Of the { $within } minutes, { $making } go by with weighing, cooking and laying out.
cool-making-longer = Weighing, cooking and laying out alone take { $making }, longer than the { $within } minutes.
cool-within-slab = Pressed to { $sure } mm or thinner it is cool in time (an even chance at { $likely } mm). The whole recipe then covers { $area } cm², such as { $side } by { $side } cm.
cool-within-ball = Rolled to balls of { $sure } mm or smaller, { $mass } g each, it is cool in time (an even chance at { $likely } mm).
cool-within-pot = In its pot a layer of { $sure } mm, { $mass } g, is cool in time (an even chance at { $likely } mm).
cool-within-no = No: to be surely cool in time it may be { $sure } mm thick (an even chance at { $likely } mm), and nobody makes a hot dough thinner than { $thinnest } mm. Cook it the day before, or take a recipe that is kneaded cold.
cool-within-never = No: not even { $least } mm thick is it surely cool in time, and nobody makes a hot dough thinner than { $thinnest } mm. Cook it the day before, or take a recipe that is kneaded cold.
cool-no-time = A time of { $within } minutes can’t be. Give more than nothing and less than a day, such as “40 min”.

# Refreshing and keeping
refresh-water-share = That is { $share } % of the water that it held.
refresh-now-same = As it is now it lets current through as it did when fresh.
refresh-now-about = As it is now it lets current through about as it did when fresh, at worst { $most } times less easily.
refresh-hard = It lost { $water } g of water, so much that it is leathery or hard all through: make a new batch. Or crumble a small piece and try with that first, { $each } g of water to 100 g of it.
refresh-no-dough = It lost { $water } g of water. Kneaded in again, they would bring back what it was, and that was no dough: mend the recipe, and make it anew.
refresh-now = As it is now it lets current through { $times } times less easily than fresh.
keep-headline = Its water activity is { $activity }, its pH { $ph }.
keep-habit-room = The trade keeps such a dough { $time } at room temperature, in a closed bag or box ({ $low } to { $high }; common practice, nobody’s measurement).
keep-habit-fridge = The trade keeps such a dough { $time } in the fridge, in a closed bag or box ({ $low } to { $high }; common practice, nobody’s measurement).
lasting-state-grows = could grow
lasting-state-may-grow = may grow
lasting-state-slowed = slowed
lasting-state-stopped = stopped
lasting-by-none = –
lasting-by-dryness = too little free water
lasting-by-acid = acid
lasting-by-preservative = preservative
lasting-by-cold = cold

# On the command line
cli-dry = tell how a piece of this dough dries, hour by hour, and where it stops
cli-dry-shape = roll, slab (on a table), rack (a slab that air meets on both sides) or ball
cli-dry-thick = how thick it is, or its diameter, such as "12 mm"
cli-dry-long = how long a roll or slab is, such as "10 cm"
cli-dry-wide = how wide a slab is, such as "10 cm"
cli-dry-room = temperature of the room, such as "21 °C"
cli-dry-humidity = relative humidity of the room in per cent
cli-dry-draught = still, quiet, airy or fan, or a speed in metres a second
cli-dry-cover = what lies round it: open, bag or box
cli-dry-hours = how many hours the table and the picture show
cli-cool = tell how long a cooked dough stays too hot for hands, or how it is laid out to be cool in time
cli-cool-as = how it lies there: pot, slab or ball
cli-cool-thick = how thick it lies, or the ball's diameter, such as "2 cm"
cli-cool-mass = how much it is, such as "900 g"; the whole recipe if left out
cli-cool-across = how wide the pot is, such as "18 cm"
cli-cool-from = how hot it is at first, such as "85 °C"; by its way of cooking if left out
cli-cool-within = how long until it is wanted, such as "40 min", weighing and cooking included
cli-refresh = tell what to knead into a dough that dried, from its weight then and now
cli-refresh-weighed = its weight when fresh, such as "512 g"
cli-refresh-now = its weight now, with the bag both times or without it both times
cli-keep = tell what can grow in this dough, and how long it is kept by habit
cli-keep-fridge = it lies in the fridge
column-time = after
column-weight = weight, g
column-lost = water lost, %
column-skin = skin, mm
column-resistivity = resistivity, Ω·m
column-group = who
column-needs = needs a water activity of
column-state = here
column-why = because of
heading-rest = Where it stops

# The drying picture
drying-picture-title = { $title }: { $piece }
drying-of = { $piece }:
drying-piece = { $piece }, { $cover }, in a room of { $room } °C and { $humidity } % humidity
drying-picture-roll = a roll { $thick } mm thick and { $long } cm long
drying-picture-slab = a slab { $thick } mm thick, { $area } cm² large
drying-picture-slab-both-sides = a slab { $thick } mm thick, { $area } cm² large, on a rack
drying-picture-ball = a ball { $thick } mm thick
drying-open = lying open
drying-bag = in a bag
drying-box = in a box
drying-strip-mass = Weight, { $unit }
drying-strip-skin = Leathery skin, { $unit }
drying-strip-resistivity = Resistivity, { $unit }
drying-minute = { $count } min
drying-hour = { $count } h
drying-day = { $count } d
drying-fresh = fresh
drying-mark-lesson = a lesson
drying-mark-night = next morning
drying-mark-days = three days
