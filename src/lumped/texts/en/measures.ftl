### Kitchen measures: how they are read, written, and refused.

## How people write measures and ways of filling them; commas between, small letters.

measure-read-cup = cup, cups
measure-read-tbsp = tbsp, tbsps, tablespoon, tablespoons
measure-read-tsp = tsp, tsps, teaspoon, teaspoons
measure-read-fl_oz = fl oz, fluid ounce, fluid ounces
measure-read-dessertspoon = dessertspoon, dessertspoons, dsp
measure-read-go = gō, go
measure-read-dash = dash, dashes, pinch, pinches
measure-read-g = g, gram, grams, gramme, grammes
measure-read-mg = mg
measure-read-kg = kg, kilo, kilos, kilogram, kilograms
measure-read-oz = oz, ounce, ounces
measure-read-lb = lb, lbs, pound, pounds
measure-read-mL = ml, cc, cm³, cm3, millilitre, millilitres, milliliter, milliliters
measure-read-L = l, litre, litres, liter, liters
filling-read-spooned = spooned
filling-read-scooped = scooped, dipped
filling-read-sifted = sifted
filling-read-packed = packed
filling-read-levelled = levelled, leveled, level
filling-read-poured = poured
filling-read-heaped = heaped, heaping
amount-read-one = a, an, one
amount-read-half = half a, half an, half
amount-read-quarter = a quarter, quarter
amount-read-range = -, –, —, to
amount-read-up-to = up to, at most
amount-read-as-needed = as needed, to feel, by feel

## How a measure is written; $count is what the noun agrees with.

measure-cup = { $count ->
    [one] { $amount } cup
   *[other] { $amount } cups
}
measure-tbsp = { $amount } tbsp
measure-tsp = { $amount } tsp
measure-fl_oz = { $amount } fl oz
measure-dessertspoon = { $count ->
    [one] { $amount } dessertspoon
   *[other] { $amount } dessertspoons
}
measure-go = { $amount } gō
measure-dash = { $count ->
    [one] { $amount } pinch
   *[other] { $amount } pinches
}
measure-grams = { $amount } g
measure-sum = { $left } + { $right }

## Amounts that can't be used

amount-no-unit = “{ $text }” has no unit. Say what is counted, such as “{ $text } g”.
amount-wrong-kind = “{ $text }” is given in { $unit }, which no kitchen scale, cup or spoon shows. Write one of { $units }.
amount-near-unit = “{ $text }”: “{ $word }” is no unit that Lumped knows. Did you mean { $near }?
amount-zero = “{ $text }” is nothing at all. Leave the ingredient out, or write how much goes in.
amount-negative = “{ $text }” is less than nothing. Write an amount above zero.
amount-too-much = “{ $text }” is { $mass } kg, more than any bowl holds; at most { $most } kg can be read here. Look for a slip in the number or the unit.
amount-range-added = “{ $text }” adds a range to another amount. Write the range by itself, such as “1 cup” and, as needed, 0 to 40 g.
amount-backwards = “{ $text }” runs from more to less. Write the smaller amount first.
amount-how-much = “{ $text }” does not say how much it may be. Write the least and the most, such as “0–60 g as needed”.
amount-two-fillings = “{ $text }” is to be filled in two ways, { $one } and { $other }. Choose one.
filling-unknown = { $method } is no way of filling a measure that Lumped knows. Choose one of: { $known }.
filling-weighed = “{ $text }” is a weight, so it does not matter whether it is { $method }. Leave that word out.
filling-liquid = “{ $text }”: { $ingredient } is a liquid and can't be { $method }. Leave that word out.
kitchen-unknown = There are no { $system } measures here. Choose one of: { $known }.
measures-nothing = { $mass } g of { $ingredient } can't be measured out. Give a mass above zero.
