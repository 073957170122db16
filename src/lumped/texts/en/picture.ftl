### Words in pictures.

picture-or = or
picture-title = { $title }, seen from above
picture-lump = { $name }: { $dough } dough
picture-part = { $name } ({ $title })
picture-part-does = { $name } ({ $title }): { $does }
picture-dangles = in the air
picture-gap = { $gap } mm apart
picture-pressed = pressed { $gap } mm
picture-depth = { $leg }, { $depth } mm
picture-volts = { $volts } V
