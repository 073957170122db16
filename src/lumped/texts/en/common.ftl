### Words shared by all rooms.

count-parts = { $count ->
    [one] 1 part
   *[other] { $count } parts
}

## Units and amounts that could not be read (quantities)

number-unreadable = “{ $text }” is no number. Write one such as 4 or 4.5.
number-either = “{ $text }” can be read in two ways. Write { $point } or { $none }, whichever is meant.
quantity-unreadable = “{ $text }” is not an amount that Lumped can read here. Write a number with a unit, such as “{ $example }”.
quantity-wrong-unit = “{ $text }” is given in { $unit }, but a { $kind } is wanted here. Write it in one of: { $units }.

interval = { $mean } ({ $low } to { $high })
