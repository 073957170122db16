### The liquid inside a dough (chemistry)

brine-temperature = Lumped knows liquids from 0 to 100 °C, not at { $temperature } °C. Give the temperature at which the dough is used.
brine-salt = Brine with { $salt } % salt can't exist at this temperature: at most { $limit } % dissolves, the rest stays solid. Give the salt that is dissolved.
liquid-reach-cold = At { $temperature } °C the conductivity is extrapolated: the tables begin at { $limit } °C. The interval is wider.
liquid-reach-hot = At { $temperature } °C the conductivity is extrapolated: the tables end at { $limit } °C. The interval is wider.
liquid-reach-potash = Potassium chloride this strong is extrapolated: beyond 1 mol in a kilogram of water its figures are from memory. It carries { $share } % of the current; the interval is wider.
liquid-reach-strong = The liquid is stronger than tables go for salts that carry { $share } % of its current: there the conductivity is extrapolated, and the interval wider.
liquid-reach-guessed = No table says how the ions that carry { $share } % of the current slow each other: that is extrapolated from salts like theirs, and the interval wider.
