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
lasting-poison = A bacterium from skin and noses could grow in it: wash hands before and after.
lasting-caveat = This is no promise of how long it keeps: hands bring in germs, and a damp spot keeps less well than the rest. Look and smell each time; when in doubt, throw it away.
