### The recipe card and the labels of bags and trays. French, Spanish and Japanese have the same keys and slots.

card-carries = Carries current
card-blocks = Blocks current
card-open-carries = Meant to carry current; whether it does can’t be told from its recipe. Try it first.
card-open-blocks = Meant to block current; whether it does can’t be told from its recipe. Try it first.
card-mark-none = It bears no mark: nobody can tell yet whether it carries or blocks.
card-mark-carries = The mark of this dough: threads run through a round, hollow lump.
card-mark-blocks = The mark of this dough: threads turn back before a square, dark lump.
card-looks-carries = It looks pale and dull unless it is coloured; a white bloom of salt may come as it dries.
card-looks-blocks = It looks pale and a little shiny unless it is coloured.
card-looks-coloured = It is coloured with { $ingredients }.
card-looks-alike = Doughs that carry and doughs that block can look just alike: trust the mark, not the eye.
card-looks-alike-open = Doughs that carry and doughs that block can look just alike: try it, and do not trust the eye.
card-invented = Invented: the recipe and its people are made up.
card-heading-ingredients = What goes in
card-heading-steps = What to do
card-heading-does = What it will do
card-heading-trial = The one-minute trial
card-heading-careful = Be careful
card-heading-allergens = Allergens
card-for-people = For { $people ->
    [one] one person
   *[other] { $people } people
}: make it { $batches ->
    [one] once
   *[other] { $batches } times
}, about { $grams } g of dough each time. These are the amounts for one time.
card-column-ingredient = ingredient
card-column-grams = weighed
card-column-measures = measured ({ $kitchen })
card-by-feel = by feel, { $low } to { $high } g
card-and-by-feel = + { $low } to { $high } g by feel
card-grams = { $amount } g
card-rounded = Cups and spoons are rounded for this dough: its resistivity moves by { $shift } %.
card-rounded-little = Cups and spoons are rounded so that this dough stays the same.
card-scale = A scale is surer than cups and spoons.

card-kitchen-us = US cups
card-kitchen-us-label = US cups, 240 mL
card-kitchen-metric = cups of 250 mL
card-kitchen-australian = Australian cups
card-kitchen-imperial = imperial cups
card-kitchen-japanese = Japanese cups, 200 mL
card-kitchen-scale = scale

card-steps-own = The steps are in the maker’s own words and language.
card-steps-usual = The recipe gives no steps: this is the usual way.
card-step-pot-1 = { $felt ->
    [yes] Mix everything but what is added by feel in a cold pot, until no lumps are left.
   *[no] Mix everything in a cold pot, until no lumps are left.
}
card-step-pot-2 = An adult cooks it, stirring all the time, until it is thick, steams, and leaves the side of the pot.
card-step-kettle-1 = { $felt ->
    [yes] Mix the dry things in a bowl, except what is added by feel.
   *[no] Mix the dry things in a bowl.
}
card-step-kettle-2 = An adult pours in the boiling water with the other wet things and stirs until it is one lump.
card-step-microwave-1 = { $felt ->
    [yes] Mix everything but what is added by feel in a large bowl.
   *[no] Mix everything in a large bowl.
}
card-step-microwave-2 = An adult heats it in short bursts and stirs after each, until it is thick and steams.
card-step-not-cooked-1 = Mix the dry things. Add the wet things little by little.
card-step-not-cooked-2 = Knead until it is smooth.
card-step-cool = Let it cool until its middle, too, is no longer hot.
card-step-feel = Knead in { $ingredients } by feel, little by little, until it no longer sticks. Weigh what you took.
card-step-keep = Write what it is on the bag before you put it away.

card-interval = { $mean } ({ $low } to { $high })
card-resistivity = Resistivity { $value } Ω·m: 95 of 100 batches should lie between these ends.
card-unmeasured = Computed from the recipe; nobody measured a batch.
card-learnt = Computed from the recipe and from { $batches }.
card-batches = { $count ->
    [one] 1 measured batch
   *[other] { $count } measured batches
}
card-roll-thick = A red lamp, fed through 10 cm of a roll 2 cm thick: { $state }.
card-roll-thin = The same lamp, fed through 30 cm of a roll 8 mm thick: { $state }.
card-wall = A wall 3 mm thick between two lumps (4 cm² touch): a red lamp across it stays { $state }.
card-wall-breaks = A wall 3 mm thick between two lumps (4 cm² touch): a red lamp across it is only { $state }. Make it thicker.
card-wall-lasts = Salt creeps into such a wall: renew it after { $low } to { $high } hours.
card-wall-lasts-long = Salt creeps into such a wall: it lasts { $low } hours or longer.
card-pack = Reckoned for a pack of four AA cells.
card-state-dark = dark
card-state-barely-lit = barely lit
card-state-dim = dim
card-state-bright = bright
card-state-span = { $worst } to { $best }
card-feel = Feel: { $feel }, as far as the recipe tells.
card-feel-open = Feel: anything from { $low } to { $high }; the recipe alone does not tell more.
card-feel-crumbles = crumbly
card-feel-stiff = stiff
card-feel-right = just right
card-feel-soft = soft
card-feel-sticks = sticky
card-keeps = Keeps in a closed box { $low } to { $high } days in the room, { $cold_low } to { $cold_high } days in the fridge (common practice; nobody measured it).

card-contains = Contains: { $allergens }.
card-may-contain = May contain: { $allergens }.
card-contains-none = None of the ingredients is a listed allergen. Read the packets.
card-list = { $left }, { $right }
card-not-food = Not food

card-careful-eaten = { $share } % of it is salt. { $child } g may kill a child of { $child_mass } kg, { $dog } g make a dog of { $dog_mass } kg ill. If a piece was eaten, call a doctor, poison centre or vet at once; no vomiting, no salt water.
card-careful-tartrate-dog = Cream of tartar and tartaric acid can destroy a dog’s kidneys. If a dog ate any, call a vet at once.
card-careful-epsom-child = Epsom salt is a laxative. If a child ate any, ask a poison centre.
card-careful-potassium-child = Potassium salt can stop a heart. If a child ate any, ask a poison centre at once.
card-careful-glycerol-child = Glycerine can make a small child very ill. If a child ate any, ask a poison centre.
card-careful-boron-child = Borax poisons. If anybody ate any, call a poison centre at once.
card-careful-alum = Alum burns mouth and stomach. Keep the packet locked away.
card-careful-burnt-alum = Burnt alum is nearly twice as strong as alum in crystals: weigh it.
card-careful-borax = Borax is not for children’s dough. Leave it out.
card-careful-flour-raw = Raw flour can carry germs, and this dough is not cooked through: nobody tastes it, all wash their hands.
card-careful-flour-cooked = Raw flour can carry germs. Cook until all of it steams; flour added later is raw again. Wash hands.
card-careful-hot = Hot stove, hot dough: an adult cooks, and hands it out when its middle is cool.
card-careful-acid-eyes = Acids sting in eyes: an adult pours. Rinse for a quarter of an hour and ask a doctor.
card-careful-salt-skin = Salt stings: not on cuts, broken skin or eczema, not near eyes.
card-careful-dust = Pour flour low and slowly: its dust troubles people with asthma, and burns near a flame.
card-careful-slippery = Oil and glycerine on the floor are slippery: wipe them up at once.
card-careful-spirit = Spirit burns: no flame near it, none of it in a hot pot.
card-careful-small-parts = Not for children under three: lamps, cells and small balls can choke them.
card-careful-pack-wires = The two wires of a pack never touch: they get hot.
card-careful-cells = No coin cells near small children: swallowed, they burn holes within hours.
card-careful-mains = Never connect dough to the mains.
card-careful-colour-stains = Food colour stains hands and cloth.
card-careful-sugar-ants = Sugar draws ants and wasps, and moulds: keep it cold.
card-careful-pan = Salt and acid eat bare aluminium: cook in steel or enamel.
card-careful-metal = Cut out bits stained green, black or rusty, and take leads out when you stop.
card-careful-mould = Throw it away when it smells, has spots or turns slimy.
card-careful-disposal-salt = Into the bin when old: not down the drain, not on beds, never out for animals.
card-careful-disposal = Into the bin when old: not down the drain, never out for animals.
card-careful-migration = It holds a metal that toy law limits. This card is no certificate.
card-careful-packet = Read and heed the packet of { $ingredients }.
card-careful-rules = Local rules and qualified people come first.

card-qr = The same recipe as a file for Lumped.
card-qr-no-story = This recipe as a file for Lumped, without its story.
card-qr-no-steps = This recipe as a file for Lumped, without story and steps.
card-qr-none = The recipe is too long for a code that a telephone can read: keep its file.
card-qr-as-written = Its amounts are those of the recipe as it was written.
card-qr-alt = A square code with the recipe’s text
card-foot-computed = Computed by Lumped { $version } on { $date }.
card-foot-sources = Sources: { $sources }; common practice and memory beside them.
card-foot-batch = Batch: { $batch }, { $date }.
card-foot-batch-undated = Batch: { $batch }.

card-date = { $day } { $month } { $year }
card-month-1 = January
card-month-2 = February
card-month-3 = March
card-month-4 = April
card-month-5 = May
card-month-6 = June
card-month-7 = July
card-month-8 = August
card-month-9 = September
card-month-10 = October
card-month-11 = November
card-month-12 = December

card-allergen-celery = celery
card-allergen-cereals-containing-gluten = cereals containing gluten
card-allergen-gluten = gluten
card-allergen-crustaceans = crustaceans
card-allergen-crustacean-shellfish = crustacean shellfish
card-allergen-eggs = eggs
card-allergen-fish = fish
card-allergen-lupin = lupin
card-allergen-milk = milk
card-allergen-molluscs = molluscs
card-allergen-mustard = mustard
card-allergen-peanuts = peanuts
card-allergen-sesame = sesame
card-allergen-soybeans = soybeans
card-allergen-sulphur-dioxide-and-sulphites = sulphur dioxide and sulphites
card-allergen-tree-nuts = tree nuts
card-allergen-wheat = wheat

tags-made = made on
tags-tare = empty
tags-gross = with dough
tags-hash = recipe { $hash }
tags-fold = fold here
tags-qr-alt = A square code that tells what is in it
tags-foot = Cut along the dashed lines; fold large labels in the middle and stand them up.

card-trial-mould-straw = a drinking straw full of dough
card-trial-mould-barrel = a syringe barrel full of dough
card-trial-mould-ice-cube = a hollow of an ice tray full of dough
card-trial-lamp = a red lamp
card-trial-pack = a pack of four AA cells
card-trial-resistor = a resistor of { $ohms } Ω

cli-card = a recipe card to cook from: amounts, steps, what the dough will do, what to mind, and the recipe as a code
cli-card-people = for whom the amounts are, such as “28 of 9 in pairs”; may be said again; as the recipe says if left out
cli-card-picture = write the card’s first page as a picture (.png)
cli-card-language = language of the card: en, fr, es or ja
cli-card-measures = whose cups and spoons: us, us-label, metric, australian, imperial, japanese, a region, or scale; if left out those of the language, in English the recipe’s own
cli-card-on = the day that stands on it, as 2026-05-08; today if left out
cli-card-pdf = write the card as PDF
card-no-dough = “{ $title }” gets no card and no labels. { $why }
card-conducting-blocks = “{ $title }” is to carry current, but blocks it: { $resistivity }. Its card and labels would bear a false mark. Look for a slip in an amount, or whether salt or water is missing.
card-insulating-carries = “{ $title }” is to block current, but carries it: { $resistivity }. Its card and labels would bear a false mark. Look for salt in it, or say dough = "conducting".
card-language = There are no cards in the language “{ $language }”. Choose one of: { $known }.
cli-tags = labels for bags and for trays: which dough, made when, allergens, weights, and a code
cli-tags-pdf = write the labels as PDF
cli-tags-count = how many small labels, for bags
cli-tags-trays = how many large labels, which stand on a tray when they are folded
cli-tags-tare = what the empty bag weighs, such as "6 g"; a line to write on if left out
cli-tags-on = the day on which it was made; that of the batch that is named, or a line to write on, if left out
tags-count = { $bags } small and { $trays } large labels can't be printed. Ask for 0 to { $most } of each, and at least one.
tags-tare-odd = An empty bag of “{ $tare }” can't be. Give a weight above 0 and below 10 kg.
