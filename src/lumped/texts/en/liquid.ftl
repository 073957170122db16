# How long the grains of a salt take to dissolve.

dough-note-grains = Grains of { $salt } (about { $size } mm) take { $low } to { $high } to dissolve in a dough that lies still, and until then it conducts worse than told here. Dissolve them in warm water first, with a spoon: that takes minutes.
dough-note-grains-stay = The small grains of { $salt } (about { $size } mm) take { $low } to dissolve in a dough that lies still, the large ones more than half a day. Dissolve them in warm water first, with a spoon: that takes minutes.
dough-note-grains-never = Grains of { $salt } (about { $size } mm) don’t dissolve within half a day in a dough that lies still. Dissolve them in warm water first, with a spoon, and use finer salt or less of it.
