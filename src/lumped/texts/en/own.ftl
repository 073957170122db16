# What is a person's own: batches that teach, ingredients from a packet.

own-table-many = { $file } is a table of ingredients, and each has a title of its own. Save it without --new, --as and --derived-from.
own-files-many = --new, --as and --derived-from are for one document, and here are { $count } files. Save that one by itself.
own-table-saved =
    { $count ->
        [one] One ingredient is saved in { $place }
       *[other] { $count } ingredients are saved in { $place }
    }
own-table-heading = Ingredients
own-table-line = “{ $title }”, revision { $number }
heading-batches = What its batches taught
heading-left-out = Ingredients of the notebook that can’t be read and are left out
cli-dough-recipe = a recipe file (TOML), or the title of a recipe in the notebook: then it learns from the batches that are kept there
cli-dough-batch = a batch to learn from: a file, or a title in the notebook; name several in the order in which they were made
kept-is-batch = “{ $title }” in the notebook is a batch, and here a recipe is meant. Name the recipe that it was made of: “{ $recipe }”.
kept-other-kind = “{ $title }” in the notebook is no recipe, but of the kind “{ $found }”. Name a recipe; lumped notebook list --kind recipe shows them.
own-hint-notebook = The notebook has a packet “{ $title }”, but a file takes it only by --label: lumped notebook show { $quoted } > packet.toml, then add --label packet.toml. Or keep the recipe in the notebook too (lumped notebook save), and name it by its title.
own-hint-label = If it is a packet of your own, write down its label as an ingredient file and add --label FILE.
own-sources-file = The sources of “{ $title }” are listed for a recipe file: lumped notebook show { $quoted } > recipe.toml, then lumped dough recipe.toml --sources
own-narrowed =
    { $count ->
        [one] Its resistivity is narrowed by one batch that was measured: { $names }.
       *[other] Its resistivity is narrowed by { $count } batches that were measured: { $names }.
    }
own-felt =
    { $count ->
        [one] How it feels is learnt from one batch: { $names }.
       *[other] How it feels is learnt from { $count } batches: { $names }.
    }
own-passed-over = These batches teach nothing here, because nothing was measured or felt, or it is another kind of dough: { $names }.
