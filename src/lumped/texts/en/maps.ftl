### More salt or less, and three ingredients in all proportions

property-resistivity = resistivity
property-water-activity = water activity
property-hydration = water to flour
property-ph = pH
property-sodium = sodium in a lump of 60 g
property-cost = cost of a kilogram
property-salt-solid = salt that stays solid
property-free-water = free water
property-liquid-share = liquid's share of the volume
property-density = density

map-property = “{ $word }” is nothing that Lumped can map. Choose one of: { $known }.
map-property-near = “{ $word }” is nothing that Lumped can map. Did you mean: { $near }?
map-no-prices = Not all of these ingredients have a price here, so there is no cost to show. Say where they are bought, or show something else.
map-three = A map needs three different ingredients, and { $count } came. In the recipe are: { $there }; any other of the pantry may be one of the three, too.
map-nothing = The recipe has none of { $names } yet, so there is nothing to share out. Give one of them an amount.
map-not-in-recipe = “{ $word }” is not in this recipe. Did you mean: { $near }?
map-no-body = no dough: less than { $body } % flour or starch
map-no-free-water = no free water: flour holds it all
map-does-not-conduct = hardly conducts: above { $limit } Ω·m
map-conducts = carries current: below { $limit } Ω·m
map-too-stiff = too stiff: less than { $least } % water to flour
map-too-wet = too wet: more than { $most } % water to flour
map-salt-stays-solid = salt stays solid: over { $solid } % of the dough
map-sugar-stays-solid = sugar stays solid: over { $solid } % of the dough

beside-two = Side by side needs two recipes at least, and { $count } came.
salting-no-salt = There is no salt in “{ $title }”, so there is none to vary. Add one, such as table-salt, with the amount that you think of.

salt-picture-title = { $title }: how much { $name }?
salt-strip-resistivity = Resistivity, { $unit } (lower carries more current)
salt-strip-water-activity = Keeping: what grows, by water activity
salt-strip-sodium = Sodium, { $unit } in a lump of 60 g
salt-strip-cost = Cost, in { $unit }
salt-amount = { $grams }{"\u00A0"}g
salt-own-amount = recipe:{"\u00A0"}{ $grams }{"\u00A0"}g
salt-recipe = this recipe: { $resistivity }
salt-solid-here = some stays solid
salt-best-here = conducts best
salt-best = It conducts best with { $best }{"\u00A0"}g of { $name } ({ $low } to { $high }{"\u00A0"}g).
salt-best-end = As far as { $most }{"\u00A0"}g, more { $name } makes it conduct better.
salt-enough = Anything from { $low } to { $high }{"\u00A0"}g comes within a tenth of that.
salt-solid-from = From { $start }{"\u00A0"}g on ({ $low } to { $high }{"\u00A0"}g) some of it stays solid and stands in the way.
salt-never-solid = Up to { $most }{"\u00A0"}g all of it dissolves.
growth-bacteria = most bacteria
growth-salmonella = salmonella
growth-yeasts = yeasts
growth-moulds = most moulds
growth-salt-lovers = salt lovers
growth-sugar-yeasts = yeasts of honey

map-title = { $title }: { $shown }
map-title-unit = { $title }: { $shown },{"\u00A0"}{ $unit }
map-corner = { $grams } g { $name }
map-side = { $name }, g
map-recipe = this recipe: { $value }
map-spoken = { $title }: { $shown } for all mixes of { $names } round the recipe, which has { $value }. Nothing stands against { $share } % of the mixes shown.
map-row-recipe = this recipe
map-row-least = lowest good mix
map-row-most = highest good mix
map-against = { $reason }: { $share } % of the map
map-feasible = nothing stands against { $share } % of the map
map-middle = The map is drawn at the middle of all that nobody measured; “lumped dough” gives the recipe's interval. Water to flour is common practice, not a law.
map-prices = Prices, in { $money }, are from memory, for small packs; look at the shelf.
heading-against = What stands against a mix
column-share = of the dough

salt-keeping = The limits for bacteria, yeasts and moulds are rounded and were found in food. They promise nothing: throw away what smells, or shows spots.

cli-salt = more salt, or less: resistivity, keeping, sodium and cost for all amounts
cli-salt-of = another ingredient instead of the main salt
cli-mix = any three ingredients in a recipe, in all proportions, as a map
cli-mix-of = one of the three ingredients, in the recipe or another of the pantry; say it three times, or not at all for flour, liquid and salt (or sugar)
cli-mix-show = what the map shows: resistivity (if left out), water-activity, hydration, ph, sodium, cost, salt-solid, free-water, liquid-share, density
cli-mix-whole = show the whole triangle, also where there is no dough
cli-region = where it is bought, such as europe; without it there is no cost
cli-theme = colours of the picture
cli-beside = recipes, or revisions of one, side by side
cli-beside-about = Recipes, or revisions of one, side by side: what goes in, what comes out, how surely the one conducts better, and allergens.
cli-beside-recipe = a recipe file (TOML), or a title or id in the notebook, with @ and a number for another revision than the newest

beside-title = Side by side
beside-revision = { $title }, revision { $number }
beside-ratio = resistivity against the first
beside-allergens = allergens
beside-none = –
beside-itself = the first
beside-shared = What Lumped does not know exactly is off in the same way for all of these doughs, so most of it cancels in the ratio: how much better one conducts than another is surer than any resistivity by itself.
column-goes-in = what goes in
column-comes-out = what comes out
