### The pages.

web-title = Lumped
web-page-title = { $title } – Lumped
web-maker = Lumped
web-greeting = What shall be on the table?
web-greeting-lure = Dough that carries current, and dough that blocks it; lamps and motors pushed in. Read what each will do, and why, before anything is cooked.
web-things = Things to begin with
web-things-lure = Take one of these, pull it about, and read what each part will do.
web-story = From an invented harbour
web-story-lure = A Saturday in an old ropewalk, on no map. Some of these work. Most have something to tell.
web-bring = Something of your own
web-bring-lure = Bring a sculpture file, and along with it the recipes it names; or a recipe file alone. It stays on this computer. Ingredient files, tables of ingredients (CSV) and batches, with their recipe, go into the notebook at once.
web-bring-here = Choose files, or drop them here
web-back = Back to the table
web-no-page = There is nothing at this address.
web-no-brought = What you brought is no longer here: Lumped keeps it only until it is stopped, unless you write it into the notebook. Bring it again.
web-no-sculpture = Among these files is no sculpture. Choose one that says kind = "sculpture" at its top, or a recipe alone.
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
web-slider-unit = { $value } { $unit }
web-slider-mm = { $value } mm
web-slider-pressed = pressed in { $value } mm

## The notebook

web-moment = { DATETIME($moment, dateStyle: "medium", timeStyle: "short") }
web-notebook = The notebook
web-notebook-lure = What you wrote down last. Nothing in it is ever overwritten.
web-notebook-all = All that is in the notebook, and where it lies
web-notebook-none = The notebook is still empty: it begins with the first thing you write down, in { $place }.
web-notebook-where = It lies in { $place }.
web-notebook-folder = Folder: { $folder }
web-notebook-who = { $who } writes in it.
web-notebook-read-only = It can be read, not written: its disk or folder is write-protected.
web-no-kept = The notebook has nothing under this address. Go back to the table.
web-leaf = revision { $number }, { $moment }, { $who }
web-more = { $count } more
web-search = Look for a word
web-found =
    { $count ->
        [0] Nothing in the notebook holds that.
        [one] One thing holds that.
       *[other] { $count } things hold that.
    }
web-kinds = Show
web-kinds-all = everything
web-kinds-sculpture = sculptures
web-kinds-recipe = recipes
web-kinds-batch = batches
web-kinds-ingredient = ingredients
web-kinds-outcome = what happened
web-kind-sculpture = sculpture
web-kind-recipe = recipe
web-kind-batch = batch
web-kind-ingredient = ingredient
web-kind-outcome = what happened
web-taken-out =
    { $count ->
        [one] One thing was taken out
       *[other] { $count } things were taken out
    }

web-keep-heading = Into the notebook
web-kept-is = In the notebook, revision { $number }
web-keep-name = Name
web-keep-why = Why, if you like to say
web-keep = Write it down
web-keep-next = Write down what has changed
web-keep-anew = Write it down as a new one
web-keep-copy = { $title }, another way
web-kept-now = Written down as revision { $number } of “{ $title }”, in { $place }.
web-kept-already = Nothing has changed: it is there already, as revision { $number } of “{ $title }”, in { $place }.
web-keep-look = Look at revision { $number }
web-keep-anyway = Write mine down after it
web-pulled = “{ $shape }”, pulled about: { $address }
web-kept-line = From the notebook: revision { $number }, { $moment }, { $who }.

web-past = How it came to be
web-past-older =
    { $count ->
        [one] One older revision
       *[other] { $count } older revisions
    }
web-revision = Revision { $number }
web-revision-here = you are looking at it
web-revision-removed = Taken out of the notebook.
web-revision-restored = Brought back from revision { $number }.
web-by = { $moment }, { $who }
web-bring-back = Bring it back
web-remove = Take it out of the notebook
web-remove-comfort = Nothing is lost by that: it can be brought back.
web-removed = It was taken out of the notebook. Nothing is lost: all its revisions are still here.
web-old = This is an old one: revision { $number } of { $newest }. It has gone on since.
web-old-newest = Go to the newest
web-changes = What changed
web-changes-from = from
web-changes-to = to
web-changes-none = Both say the same.
web-made-from = Made from
web-made-into = Made into
web-uses = Its recipes
web-of = What it is of
web-used-by = Used by
web-kin = { $title } ({ $kind }, revision { $number })

web-seen = And on your table?
web-seen-of = What “{ $part }” does on your table
web-seen-next = And on the next table?
web-seen-back = Take it back
web-seen-as-said = Noted: { $what }. As it was said.
web-seen-otherwise = Noted: { $what }. It was said: { $said }.
web-seen-written = The sculpture was written down with it, as revision { $number }.
web-seen-taken-back = Taken back.
web-seen-tables =
    { $count ->
        [one] { $true ->
            [0] One table so far: not as it was said.
           *[other] One table so far: as it was said.
        }
       *[other] { $true } of { $count } tables so far: as it was said.
    }

web-recipe-invented = This recipe is invented.
web-dough-carries = It carries current
web-dough-open = It may carry current or block it
web-dough-blocks = It blocks current
web-dough-none = This is no dough
web-dough-carries-against = It carries current, and is meant to block it
web-dough-blocks-against = It blocks current, and is meant to carry it
web-dough-not = No dough comes of this
web-dough-not-now = What it does stands here again as soon as the amounts can be read.
web-dough-steps = From the scale to the figure
web-how-made = How it is made
web-how-warm = How warm it is when it is used
web-feels = What is added by feel
web-feels-hint = The most of each in grams, such as 40, or least and most: 10 to 40. Leave empty what is only weighed.
web-taking = To take along
web-goes-in = What goes in
web-by-feel = and { $least } to { $most } g by feel
web-cooked-pot = Cooked in a pot on the stove.
web-cooked-kettle = Boiling water from the kettle is poured on.
web-cooked-microwave = Cooked in a microwave oven.
web-cooked-not-cooked = Not cooked.

port-taken = Port { $port } is in use by another program. Choose another: lumped serve --port { $other }
