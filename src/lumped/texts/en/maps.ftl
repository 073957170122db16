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

map-property = “{ $word }” is nothing that Lumped can map. Did you mean: { $near }?
map-no-prices = Not all of these ingredients have a price here, so there is no cost to show. Choose another region, or show something else.
map-three = A map needs three different ingredients of the recipe, and { $count } came. Choose from: { $there }.
map-nothing = The recipe has none of { $names } yet, so there is nothing to share out. Give one of them an amount.
map-not-in-recipe = “{ $word }” is not in this recipe. Did you mean: { $near }?
map-no-free-water = no free water: flour holds it all
map-does-not-conduct = hardly conducts: above { $limit } Ω·m
map-conducts = carries current: below { $limit } Ω·m
map-too-stiff = too stiff: less than { $least } % water to flour
map-too-wet = too wet: more than { $most } % water to flour
map-salt-stays-solid = more salt than dissolves

salting-no-salt = There is no salt in “{ $title }”, so there is none to vary. Add one, such as table-salt, with the amount that you think of.
