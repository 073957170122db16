### Something else instead: what was asked, what is proposed and why, what stands in the way

## The word that is answered at once, however it is written; commas between, small letters.

swap-read-water = water, h2o, h₂o

## What can't be asked

swap-no-word = “{ $word }” is neither an ingredient nor a class of them that Lumped knows. Did you mean: { $near }?
swap-not-in-recipe = There is no { $word } in “{ $title }”. It is made of: { $there }.
swap-water = Nothing replaces water in a dough: flour and starch swell and hold together only in it, and salt carries current only once it is dissolved. Without water “{ $title }” is a powder. If it is this water that you can’t use, say --without { $named }.
swap-target-without = To leave something out, say --without { $without } instead of aiming at “{ $word }”.
swap-no-target = “{ $word }” is nothing that Lumped can aim at. Did you mean: { $near }?
swap-where = What is cheapest depends on where it is bought. Say where, such as --region europe.
swap-against = “{ $title }” is a { $kind } dough, so “{ $target }” would spoil it. Aim at something else, or start from the other dough.
swap-no-measures = There are no { $measures } measures here. Choose one of: { $known }.
swap-count = { $count } proposals can’t be shown. Ask for 1 to { $most }.
swap-no-such = There is no proposal no. { $number }: { $count ->
    [0] nothing was found.
    [one] only one was found.
   *[other] { $count } were found.
}
swap-take-two = --take needs a number and a file, such as --take 1 new-recipe.toml.
swap-taken = Proposal no. { $number } stands in { $file } as “{ $title }”, without steps in words: write them when you have made it once.
swap-nothing-left = Nothing is left that could be the { $role } of “{ $title }”: everything in the pantry is ruled out. Take back one of the wishes.

## Amounts and changes

swap-by-feel = { $amount }, and { $low } to { $high } g until it feels right

## What another recipe is called

swap-titled-instead = { $title }, with { $new } instead of { $gone }
swap-titled-with = { $title }, with { $new }
swap-titled-without = { $title }, without { $gone }
swap-titled-and = { $first } and { $last }
swap-titled-way = { $title }, { $way }
swap-titled-amounts = { $title }, in other amounts

## Why it moves

swap-liquid-up = Its liquid conducts { $factor } times as well: a litre of it holds { $ions }.
swap-liquid-down = Its liquid conducts { $factor } times worse: a litre of it holds { $ions }.
swap-ion-more = { $change } mol more of { $ion } (by charge)
swap-ion-less = { $change } mol less of { $ion } (by charge)
swap-no-ion = a little { $way ->
    [more] more
   *[less] less
} of many ions
swap-mobility-up = The liquid is thinner, so ions move { $factor } times as easily.
swap-mobility-down = The liquid is thicker, a syrup, so ions move { $factor } times less easily.
swap-obstruction-up = The body lets { $factor } times as much through: liquid fills { $after } % of it instead of { $before } %{ $water }.
swap-obstruction-down = The body lets { $factor } times less through: liquid fills { $after } % of it instead of { $before } %{ $water }.
swap-free-water = , with { $after } g of free water instead of { $before } g
swap-keeping-up = It keeps less long: water activity { $after } instead of { $before }, mostly because of { $solute }.
swap-keeping-down = It keeps longer: water activity { $after } instead of { $before }, mostly because of { $solute }.
swap-solute = { $change } mol { $way ->
    [more] more
   *[less] less
} { $name } in a kilogram of its water
swap-solute-though = { $solute }, though { $against }
swap-ph-up = It is less sour: pH { $after } instead of { $before }.
swap-ph-down = It is more sour: pH { $after } instead of { $before }.

## What to know

swap-note-texture = Nobody has a model of texture: water to flour is kept within what the trade calls right, and nobody published how much more or less than wheat flour another body takes. Make a small batch first, add the last water by the spoon, and give it a score from 1 to 5.
swap-note-no-gluten = Without gluten a dough does not stretch: it is short, and tears where wheat dough bends.
swap-note-starch-cooked = Starch sets to a gel when it is cooked: stir until it turns glassy, and let it cool before you judge it.
swap-note-starch-cold = Starch that is only wetted flows when it is pressed; the binder holds it, more or less. Try a spoonful first.
swap-note-kettle = Made with boiling water from a kettle: less steam leaves than from a pot, and the flour is scalded, not cooked. An adult pours.
swap-note-microwave = Cooked in a microwave oven, in short bursts with stirring between: how much water leaves differs much, so weigh the dough. It is as hot as from a pot.
swap-note-not-cooked = Kneaded cold: the flour stays raw, so nobody tastes the dough, and it takes less water.
swap-note-potassium = { $ingredient }: potassium tastes bitter, and is dangerous for people with weak kidneys or certain medicines. Ask families first, and keep it from small children.
swap-note-acid = { $ingredient }: { $acid } has { $groups ->
    [one] one acid group
   *[other] { $groups } acid groups
} to a molecule; the recipe holds { $moles } mmol of them.
swap-note-water = { $ingredient } brings { $water } g of water, which is counted.
swap-note-shop = { $ingredient }: { $place }.

## What stands in the way

swap-blocks-region = If it may be bought elsewhere than in { $what }, it can be done with { $instead }.
swap-blocks-diet = Without the diet “{ $what }” it can be done with { $instead }.
swap-blocks-class = If { $what } may be in it, it can be done with { $instead }.
swap-blocks-ingredient = If { $what } may stay, it can be done with { $instead }.
swap-blocks-stove = With a stove it can be done with { $instead }.
swap-nothing-new = nothing new
swap-blocks-texture = If the texture may leave what is usual ({ $texture }), it can be done with { $instead }.
swap-texture-wet = { $water } g of water to 100 g of flour, which sticks
swap-texture-dry = { $water } g of water to 100 g of flour, which crumbles
swap-texture-body = flour { $after } % of it instead of { $before } %
swap-texture-softener = { $after } g of fat and glycerine to 100 g of flour instead of { $before } g
swap-texture-sugar = { $after } g of sugar to 100 g of flour instead of { $before } g
swap-texture-salt = { $after } g of salt to 100 g of flour instead of { $before } g
swap-texture-binder = { $after } g of binder to 100 g of flour instead of { $before } g
swap-blocks-current = If the resistivity may be { $resistivity } Ω·m instead of { $before } Ω·m, it can be done with { $instead }.
swap-blocks-acidity = If the pH may be { $ph } instead of { $ph_before }, it can be done with { $instead }.
swap-blocks-keeping = If it may keep less long (water activity { $activity } instead of { $activity_before }), it can be done with { $instead }.
swap-blocks-cost = If it may cost { $cost } times as much, it can be done with { $instead }.
swap-blocks-limits = If limits and doses are set aside ({ $too_much }), it could be done with { $instead }. That is not advised.
swap-too-much-share = { $name } { $share } % of the dough, where { $most } % is the most
swap-too-much-dose = { $name } { $share } times what a helping may hold
swap-too-much-ph = a pH of { $ph }, which hands do not bear
swap-element-Na = sodium
swap-element-K = potassium
swap-element-Al = aluminium
swap-element-B = boron
swap-caution = Be careful: { $caution }
swap-dosed-tartrate-dog = cream of tartar
swap-dosed-epsom-child = Epsom salt
swap-dosed-glycerol-child = glycerine
swap-blocks-recipe-none = The recipe as it stands is no dough, and what was looked for next to it is none either. Mend the recipe first, then ask again.
swap-blocks-recipe-opposite = The recipe as it stands does the opposite of what it is for, and so does what was looked for next to it. Mend the recipe first, then ask again, or aim at carries-better or blocks-better.
swap-no-blocker = No single requirement stands in the way: two at least would have to give. Take back one of the wishes.
swap-none = Nothing in the pantry does it.
swap-as-it-is = The recipe is already as it is wanted: nothing has to change.

## On the command line

cli-swap = something else instead of an ingredient, keeping what matters
cli-swap-about = Something else instead of an ingredient: a few recipes that keep, in this order, the texture's window, carrying or blocking current, acidity, keeping, cost and limits, and change as little as possible; or what stands in the way.
cli-swap-without = an ingredient, one of acid, gluten, wheat, alum, sugar, fat, salt, corn, nuts, glycerine, stove, or an allergen such as soy or milk; may be said again
cli-swap-diet = gluten-free, vegan, no-nuts or no-corn, or a child’s need such as coeliac or milk; may be said again
cli-swap-region = where it is bought, such as europe: only what is sold there, with its cost
cli-swap-target = what it should do better: cheapest, saltless, keeps-longer, carries-better, blocks-better
cli-swap-measures = whose cups and spoons: us, us-label, metric, australian, imperial, japanese, or scale for grams; the recipe's own if left out
cli-swap-take = write a proposal as a recipe file: its number and the file, such as 1 new-recipe.toml
cli-swap-count = how many proposals, 1 to 8; 3 if left out
swap-title = { $title }: something else instead
swap-now = now
swap-number = no. { $number }
swap-way = how it is made
swap-way-pot = in a pot
swap-way-kettle = with boiling water
swap-way-microwave = in a microwave oven
swap-way-not-cooked = kneaded cold
swap-ratio = resistivity against now
swap-feel = feel, 1 crumbles to 5 sticks
swap-hardly-moves = Nothing moves enough to be felt.
swap-traces = May contain { $allergen } as traces: { $ingredients }. Only the packet can tell: buy one that names none, or ask for a recipe without that ingredient too.
swap-allergens-new = New allergens: { $allergens }. Ask every family first.
swap-allergens-gone = No longer in it: { $allergens }. Read the packets for traces.
swap-kept = Each is rounded to kitchen measures and was checked again after it. Of equals, the one comes first that changes less.
swap-kept-aim = Each is rounded to kitchen measures and was checked again after it; as it is measured then, the best at what you aim at comes first.
swap-steps = Feel is a guess from common practice until batches are scored: there is no model of texture.
heading-proposal = Why no. { $number } moves ({ $way })
heading-blockers = What stands in the way
