### Starting shapes, their sliders and choices.

starting-harbour-mouth = A light at the harbour mouth
starting-harbour-mouth-lure = Two quays, water between, one lamp that bridges it. Push them together and see.
starting-channel-buoys = Buoys along the channel
starting-channel-buoys-lure = Lamps side by side over one channel. How many can one pack feed?
starting-chain-ferry = The chain ferry
starting-chain-ferry-lure = A real motor on thin pins hums at best. What must change until it turns?
starting-breakwater = The breakwater
starting-breakwater-lure = These quays have to meet. A wall of sugar dough decides whether the lamp survives it.
starting-signal-masts = Signal masts
starting-signal-masts-lure = Two masts that stand, a lamp between their tops. Tall and thin, or short and stout?
starting-ropewalk = The long rope
starting-ropewalk-lure = One rope of dough, laid in bends. How far does it carry the light?

slider-gap = Gap between the lumps
slider-length = Length of a lump
slider-thickness = Thickness
slider-lamp_depth = How deep the lamp's legs go
slider-wire_depth = How deep the pack's wires go
slider-pin_depth = How deep the metal goes
slider-from_end = Metal's distance from the hull's end
slider-buoys = Number of buoys
slider-wall_thickness = Thickness of the wall
slider-height = Height of the masts
slider-bends = Bends in the rope
slider-width = Width of a bend

choice-dough = Dough
choice-dough-salt = Salt dough of the ropewalk
choice-dough-unknown = I don't know mine
choice-dough-sugar = Sugar dough of the ropewalk
choice-pack = Pack
choice-pack-pack-4aa-alkaline = Four AA cells
choice-pack-pack-3aa-alkaline = Three AA cells
choice-pack-pack-2aa-alkaline = Two AA cells
choice-pack-pack-4aa-nimh = Four rechargeable AA cells
choice-colour = Lamp
choice-colour-lamp-red = red
choice-colour-lamp-yellow = yellow
choice-colour-lamp-green = green
choice-colour-lamp-blue = blue
choice-colour-lamp-white = white
choice-way = The long leg
choice-way-right = on the side of the red wire
choice-way-wrong = on the side of the black wire
choice-leads = Metal pushed in
choice-leads-pin-motor = thin pins
choice-leads-nail-iron-3mm = iron nails
choice-leads-strip-steel-10mm = steel strips
choice-wall = Wall of sugar dough
choice-wall-yes = between the quays
choice-wall-no = left out

starting-none = There is no starting shape “{ $key }”. There are: { $known }.
starting-no-control = This starting shape has no slider or choice “{ $name }”. It has: { $known }.
starting-slider = “{ $slider }” can't be { $value }. Choose a number from { $low } to { $high }.
starting-choice = “{ $choice }” can't be “{ $value }”. Choose one of: { $known }.
