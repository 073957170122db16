# Looking ingredients up: lumped pantry, and the sources of a dough.

cli-pantry = list the ingredients, or show one with the source of each figure
cli-pantry-name = an ingredient by key, name or another name of it, in any of the four languages
cli-pantry-role = only what does this in a dough: body, ions, acid, binder, …
cli-pantry-region = a region, for prices and shops
cli-pantry-without = a class that must not be in it (gluten, nuts, corn, wheat, acid, salt, …); may be named more than once
cli-pantry-diet = a diet that it must suit (gluten-free, no-nuts, no-corn, vegan), or a child’s need such as coeliac or milk; may be named more than once
cli-dough-sources = list every source that the figures stand on, by their status
larder-title = { $count ->
    [one] One ingredient
   *[other] { $count } ingredients
}
larder-none = Nothing in the pantry is all of that. Leave out one of the words.
larder-column-ingredient = ingredient
larder-column-roles = does
larder-column-allergens = allergens
larder-column-traces = traces of
larder-column-price = price
larder-column-sold = sold
larder-column-row = figure
larder-column-value = in it
larder-column-status = status
larder-column-source = source
larder-column-measure = measure
larder-column-method = filled
larder-column-weighs = weighs
larder-column-region = region
larder-column-packs = packs
larder-column-language = language
larder-column-from = what
larder-no-role = There is no role “{ $role }”. Choose one of: { $known }.
larder-no-class = There is no class “{ $word }”. Choose one of: { $known }.
larder-made-of = Made of: { $parts }.
larder-part = { $name } { $share } %
larder-roles = In a dough: { $roles }.
larder-allergens = Allergens, European list: { $eu }; American list: { $us }; traces possible: { $traces }.
larder-also = Also called: { $also }.
larder-heading-assumed = What its label did not say
larder-worked-out = { $price }, worked out
larder-unknown-price = –
larder-packs-g = { $packs } g
larder-prices-dated = Prices are from memory and dated { $dated }; “worked out” is the European price times the region’s level.
larder-usual = { $method } (usual)
sources-title = { $title }: what its figures stand on
sources-measured = Measured
sources-published = Published
sources-computed = Computed
sources-from-a-label = From the label of a packet
sources-common-practice = Common practice
sources-from-memory = From memory
sources-invented = Invented
sources-figures = { $ingredient }: { $rows }
sources-none = no source
sources-heading-books = In full
sources-left-out = Laws for mixed salts, acids, syrups and thickness stand on further tables of the handbook, which this list does not take apart.
