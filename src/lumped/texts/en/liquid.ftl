# How long the grains of a salt take to dissolve.

dough-note-grains = Grains of { $salt } (about { $size } mm) take { $low } to { $high } to dissolve in a dough that lies still, and until then it conducts worse than told here. Dissolve them in warm water first, with a spoon: that takes minutes.
dough-note-grains-stay = The small grains of { $salt } (about { $size } mm) take { $low } to dissolve in a dough that lies still, the large ones more than half a day, and until then it conducts worse than told here. Dissolve them in warm water first, with a spoon: that takes minutes.
dough-note-grains-never = Grains of { $salt } (about { $size } mm) don’t dissolve within half a day in a dough that lies still, and until then it conducts worse than told here. Dissolve them in warm water first, with a spoon, and use finer salt or less of it.
dough-note-grains-full = Grains of { $salt } (about { $size } mm) can’t all dissolve: the water is full of salt. What stays takes room, and the last of what does dissolve takes more than half a day in a dough that lies still; until then it conducts worse than told here. Less salt does as well.
dough-note-stays = { $low } to { $high } g of { $name } stay solid at { $temperature } °C: the water holds no more of it. It takes room, and carries nothing.
