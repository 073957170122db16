### The liquid inside a dough (chemistry)

brine-temperature = Lumped knows salt water from 0 to 100 °C, not at { $temperature } °C. Give the temperature at which the dough is used.
brine-salt = Brine with { $salt } % salt can't exist at this temperature: at most { $limit } % dissolves, the rest stays solid. Give the salt that is dissolved.
