### What can't exist as a shape.

solid-not-positive = A { $solid } has a length of { $length_mm } mm, but every length of it must be above zero.
path-too-short = A roll along a path needs at least two points. Add one.
piece-conductivity = The lump “{ $piece }” has a conductivity of { $value } S/m, but it must be a number above zero.
no-pieces = There is no lump, so there is nothing to cut into cells. Add a lump.
pitch-not-positive = The grid's pitch is { $pitch_mm } mm, but it must be above zero.
too-many-cells = A pitch of { $pitch_mm } mm would take too many cells for lumps of this size: { $fits_mm } mm fits. Make the sculpture smaller, or its thinnest lump thicker.
