### Sculptures: what can't be read or can't exist.

place-lump-words = “{ $text }” does not say where a lump lies. Write "on the table", "right of A, gap 4 mm" (or left of, in front of, behind; or "pressed 2 mm"), "on top of B", or "between A and B".
place-leg-words = “{ $text }” does not say where a leg goes in. Write "left end of A, 15 mm deep", "top of A, 30 % along, 10 mm deep", "near side of A, 8 mm from the right end, 10 mm deep", or "dangling".
place-depth = “{ $text }”: a leg goes in by more than nothing. Write how deep, such as "12 mm deep", or "dangling".
place-share = “{ $text }”: along a lump there are 0 to 100 %. Write a share between, or a distance from an end.
place-negative = “{ $text }”: write a gap, or how far it is pressed in, as a positive length.
sculpture-dough-ways = A dough has exactly one of: recipe, resistivity_ohm_m (with measured_by), unknown.
sculpture-measured-by = Say how the resistivity was measured: add measured_by.
sculpture-two-places = A lump has either a place in words or at_mm, not both; take one out.
sculpture-no-direction = A direction needs a number other than zero; straight down is [0, 0, -1].
sculpture-beyond = { $file }: { $who } is placed { $distance } mm from an end of “{ $lump }”, which is only { $length } mm long. Write a shorter distance.
sculpture-far-off = { $file }: “{ $name }” can't come to lie { $gap } mm from “{ $lump }” on that side: shifted so far, it slides past. Use a smaller shift, or at_mm.
sculpture-recipe = { $file }: dough “{ $dough }” names the recipe “{ $recipe }”, but there is no such file in { $folder }, nor beside the sculpture. Look at its name, copy it there, or say unknown = "conducting".
sculpture-joined-self = { $file }: “{ $leg }” is joined to itself. Name two legs.
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
