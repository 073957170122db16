### Sculptures: what can't be read or can't exist.

place-lump-words = “{ $text }” does not say where a lump lies. Write "on the table", "right of A, gap 4 mm" (or left of, in front of, behind; or "pressed 2 mm"), "on top of B", or "between A and B".
place-leg-words = “{ $text }” does not say where a leg goes in. Write "left end of A, 15 mm deep", "top of A, 30 % along, 10 mm deep", "near side of A, 8 mm from the right end, 10 mm deep", or "dangling".
sculpture-name-twice = { $file }: two { $what } are called “{ $name }”. Give each its own name.
sculpture-no-dough = { $file }: lump “{ $lump }” is made of “{ $dough }”, but no such dough is in the file. { $remedy }
sculpture-no-lump = { $file }: { $who } is placed by lump “{ $lump }”, but no such lump is in the file. { $remedy }
sculpture-no-part = { $file }: part “{ $name }” is a “{ $part }”, which the handbook does not have. { $remedy }
sculpture-no-leg = { $file }: part “{ $name }” has no leg “{ $leg }”. A { $kind } has: { $legs }.
sculpture-leg-missing = { $file }: nothing is said about the { $leg } of part “{ $name }”. Write where it goes, or "dangling".
sculpture-no-gauge = { $file }: the leads of part “{ $name }” are “{ $gauge }”, which the handbook does not have. { $remedy }
sculpture-state = { $file }: part “{ $name }” is { $state }, but a { $kind } can't be. { $remedy }
sculpture-joined = { $file }: “{ $leg }” in joined names no leg. Write part and leg with a dot between them, such as "pack.red".
sculpture-no-end = { $file }: { $who } goes into the { $end } end of “{ $lump }”, but only a roll or a path has a first and a last end. Write left, right, near or far.
sculpture-leads = { $file }: it has { $count } leads in dough, more than the { $limit } that Lumped computes. Take some parts out, or check the two halves on their own.
sculpture-path-still = { $file }: the path of lump “{ $lump }” stays on one point. Give it two points that differ.
remedy-near = Did you mean “{ $near }”?
remedy-choices = There are: { $choices }.
sculpture-no-lump-above = { $file }: “{ $name }” is placed by lump “{ $lump }”, but no such lump stands above it in the file. { $remedy }
remedy-first-lump = The first lump lies on the table, or has at_mm.
