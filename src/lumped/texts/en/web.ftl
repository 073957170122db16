### The pages.

web-title = Lumped
web-page-title = { $title } – Lumped
web-maker = Lumped
web-greeting = What shall be on the table?
web-greeting-lure = Dough that carries current, lamps and motors pushed in. Take one of these, pull it about, and read what each part will do, and why.
web-things = Things to begin with
web-story = From an invented harbour
web-story-lure = A Saturday in an old ropewalk, on no map. Some of these work. Most have something to tell.
web-bring = A sculpture of your own
web-bring-lure = Bring a sculpture file, and along with it the recipes it names. It stays on this computer.
web-bring-here = Choose files, or drop them here
web-back = Back to the table
web-no-page = There is nothing at this address. Go back to the table.
web-no-brought = This sculpture is no longer here: Lumped keeps what is brought only until it is stopped. Bring it again.
web-no-sculpture = Among these files is no sculpture. Choose one that says kind = "sculpture" at its top.
web-two-sculptures = These are { $count } sculptures. Bring one at a time, with its recipes.
web-elsewhere = This request comes from another page. Bring files from Lumped's own page.

web-invented = Harbour and people are invented.
web-look = Look at it
web-look-dough = as dough
web-look-potential = level lines
web-look-turn = turn it
web-level-hint = Along each line the dough is at the same volts. Where lines crowd, the volts are lost.
web-turn-hint = Drag, or use the arrow keys.
web-no-turning = This browser can't draw it in space. The view from above is still right.
web-drawing = { $title }, seen from above. { $words }
web-turning = { $title }, to turn. Use the arrow keys.
web-knead = Pull it about
web-working = Working it out
web-says = What it does

web-figures = { $volts } V, { $current } mA
web-speed = { $speed } turns a minute
web-numbers = The numbers
web-number-volts = volts across it
web-number-current = milliamperes through it
web-number-speed = turns a minute
web-number-as-drawn = { $mean }, between { $low } and { $high }
web-number-hangs = hangs on
web-hangs-touching = { $state } if { $what } touch
web-hangs-apart = { $state } if { $what } come apart
web-volts = Where the volts go
web-volts-given = the pack gives
web-volts-parts = the parts keep
web-volts-metal = from metal to dough and back
web-volts-dough_leads = close round the legs
web-volts-dough_path = on the way through the dough
web-volts-pack = inside the pack
web-findings = Worth knowing
web-careful = Be careful
web-computed = How it was computed
web-status = { $part }: { $state }.

web-take-sheet = Sheet to print
web-take-file = File to keep
web-take-recipe = Recipe { $file }
web-unknown-instead = Take “I don't know mine” for the missing recipes
web-slider-mm = { $value } mm
web-slider-pressed = pressed in { $value } mm

port-taken = Port { $port } is in use by another program. Choose another: lumped serve --port { $other }
