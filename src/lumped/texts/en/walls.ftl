# Walls of insulating dough.

wall-yes = Insulating enough: { $leak } mA leak through the wall, and the { $lamp } gets { $current } of the { $alone } mA that it would get beside a perfect wall.
wall-no = Not insulating enough: { $leak } mA leak through the wall, and the { $lamp } gets { $current } mA instead of { $alone }. Make the wall thicker, touch it on less area, or make a better dough.
wall-perhaps = Perhaps insulating enough: beside a wall at the middle of what is believed the { $lamp } gets { $current } of { $alone } mA, but this dough may be better or worse than that. Make the wall thicker, or measure the dough.
what-if-hot = still hot, at 60 °C
what-if-more-water = a fifth more water
what-if-less-water = a fifth less water
what-if-pinch = one pinch of salt (0.4 g) gets in
what-if-gram = one gram of salt gets in
what-if-distilled = distilled water instead of tap water
what-if-tap = tap water instead of distilled water
what-if-half-salt = half the salt
what-if-double-salt = twice the salt
what-if-no-sugar = without the sugar
what-if-double-sugar = twice the sugar
what-if-double-oil = twice the oil
what-if-starch = cornstarch instead of the flour
what-if-no-acid = without the cream of tartar
