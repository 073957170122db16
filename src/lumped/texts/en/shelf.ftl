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

## An ingredient from its packet

web-packet = From a packet
web-packet-lure = Copy the label of what you bought, and recipes can use it. What the label does not say is assumed, and said.
web-packet-begin = An ingredient of your own, from its packet
web-packet-unnamed = this packet
web-packet-taken = What Lumped takes from it
web-packet-see-fields = Something does not go together yet: look at the sentences beside the fields.
web-packet-title = What it is called
web-packet-like = Most like
web-packet-like-none = nothing in the pantry
web-packet-role-none = as what it is most like, or by what is in it
web-packet-table = The table on the label
web-packet-table-hint = Copy what is printed; leave empty what is not. Where it says “less than”, write half of that.
web-packet-per = The figures are for
web-packet-per-100-g = 100 g
web-packet-per-100-mL = 100 mL
web-packet-per-serving = a serving
web-packet-energy-kJ = Energy, kJ
web-packet-energy-kcal = Energy, kcal
web-packet-fat-g = Fat, g
web-packet-carbohydrate-g = Carbohydrate, g
web-packet-sugars-g = of which sugars, g
web-packet-fibre-g = Fibre, g
web-packet-protein-g = Protein, g
web-packet-salt-g = Salt, g
web-packet-sodium-mg = or sodium, mg
web-packet-polyols-g = Polyols, g
web-packet-water-g = Water, g
web-packet-ash-g = Ash, g
web-packet-alcohol-g = Alcohol, g
web-packet-density-g-per-mL = Density, g/mL
web-packet-rare = What few labels print
web-packet-unsaid = not said
web-packet-fibre = Its carbohydrate counts fibre
web-packet-fibre-unsaid = not said: within it where only sodium is printed
web-packet-fibre-yes = within it, as in America
web-packet-fibre-no = beside it, as in Europe
web-packet-sodium-from = Its sodium is part of
web-packet-serving = A serving, if one is printed
web-packet-serving-g = weighs, g
web-packet-serving-measure = fills (1/4 cup)
web-packet-filled = That measure was filled
web-packet-allergens = Contains, as the packet names it
web-packet-none-hint = Parted by commas: wheat, milk. Write “none” if the packet says that there are none; left empty, nobody has looked.
web-packet-traces = May contain
web-packet-contains = What diets ask for besides
web-own-label = What was copied from its packet
web-own-change = Change it
web-bring-apart = A batch and a sculpture came together, and they go to different places. Bring the sculpture alone, and the batch with its recipe.
