### The pantry, one's own packets and batches on the pages.

cli-pantry-free-of = an allergen of the European or American list that it must not contain, as packets name it; may be named more than once
cli-pantry-words = only what has all of these words in a name, in any of the four languages
larder-free-of = Free of
larder-composed = Worked out from what its table prints, so that all compounds sum to a hundred.
larder-composed-own = Worked out from what its packet prints and what was assumed, so that all compounds sum to a hundred.
larder-weighs = a { $measure }, { $method }
larder-name-note = Names in other languages wait to be read by native speakers.
larder-allergens-note = What such packets usually hold. The law says which allergens a packet must name; what is in yours, only its own label tells.

## The pantry

web-pantry = The pantry
web-pantry-lure = What may go into a dough: what is in it, what a cup weighs, who must not touch it, where it is sold.
web-pantry-search = Find by name, in English, French, Spanish or Japanese
web-pantry-role = What it does
web-pantry-free = Free of
web-pantry-region = Price and shop in
web-pantry-diet = Suits
web-pantry-narrow = Narrow it down
web-pantry-any = anything
web-pantry-anywhere = not asked
web-pantry-nothing = nothing that is known
web-role-body = What gives it body
web-role-ions = What brings ions
web-role-acid = Sour
web-role-moisture-keeper = What keeps it moist
web-role-softener = What makes it soft
web-role-preservative = What keeps it from spoiling
web-role-liquid = Liquids
web-role-sweetener = Sweet
web-role-colour = Colours
web-role-binder = What binds
web-role-raising = What raises it
web-pantry-own = your own
web-pantry-count = { $count ->
    [one] One ingredient.
   *[other] { $count } ingredients.
}
web-pantry-holds = contains { $names }
web-pantry-traces = traces possible: { $names }
web-pantry-sold = { $price }; { $sold }
web-about = About { $name }
web-back-to-pantry = Back to the pantry
web-ingredient-made-of = Made of
web-ingredient-does = What it does in a dough
web-ingredient-weights = What a measure weighs
web-ingredient-weigh-it = Nobody knows what a cup of it weighs: weigh it.
web-ingredient-offers = Price, packs, where it is sold
web-ingredient-elsewhere = Elsewhere
web-ingredient-names = Names
web-ingredient-printed = What its table prints
web-ingredient-kept = Its page in the notebook
