# Ingredients.

pantry-taken = “{ $word }” is taken as { $name }.
pantry-near = Did you mean: { $near }?
pantry-none-near = No name here looks like it: all of them stand in the pantry.
pantry-negative = { $where }: { $row } is { $value } per cent. A share can't be negative; look at the label again.
pantry-sum = { $where }: what it is made of sums to { $total } per cent instead of 100. Look for a row that is missing or wrong.

## Remarks where faith may ask; status: from memory, 2026; no verdict

safety-remark-passover-grain = { $ingredient }: made from one of the five grains that Jewish households put away for Passover (wheat, spelt, barley, oats, rye).
safety-remark-passover-leaven = { $ingredient }: makes dough rise; some ask about raising agents at Passover, with or without yeast.
safety-remark-passover-small-grain = { $ingredient }: a rice, maize, millet or pulse product, which some Jewish households eat at Passover and others put away.
safety-remark-gelatine-origin = { $ingredient }: made from skin and bones, most often of pigs or cattle; the packet may say which, and how the animal was killed.
safety-remark-wine-product = { $ingredient }: comes from the crust in wine barrels; some Muslims and some Jews ask about what comes from wine.
safety-remark-vinegar-alcohol = { $ingredient }: made by way of alcohol, of which traces may be left; opinions differ on whether that matters.
safety-remark-alcohol = { $ingredient }: contains alcohol; many Muslims and others keep none in the house, and not for touching either.
safety-remark-corn-ferment = { $ingredient }: today made by moulds or bacteria from sugar of maize, wheat or other plants; some ask about that at Passover.
safety-remark-corn-perhaps = { $ingredient }: may hold starch or sugar of maize; whoever does not bear maize reads the packet.
safety-remark-sugar-char = { $ingredient }: some refineries clean cane sugar over bone char; vegans, Hindus and others may ask; beet sugar never is.
safety-remark-glycerine-origin = { $ingredient }: glycerine comes from plants, animals or petroleum, and not every label says from which.
safety-remark-fat-origin = { $ingredient }: some white fats mix in lard or tallow, and an emulsifier may be of animal fat; look for “vegetable” or a seal.
safety-remark-colour-origin = { $ingredient }: some reds are made of insects (carmine, E120), and some carriers are alcohol or glycerine of unknown origin.

## Regions, prices, shops

pantry-region-near = Did you mean “{ $near }”?
pantry-no-region = There is no region “{ $region }”. { $hint }Lumped knows: { $known }.
pantry-place-tap = from the tap
pantry-place-supermarket = in any supermarket
pantry-place-baking-shelf = on the baking shelf of larger supermarkets
pantry-place-health-food-shop = in health-food shops and organic shops
pantry-place-pharmacy = in pharmacies
pantry-place-asian-grocer = at an Asian grocer’s
pantry-place-hardware-shop = in hardware shops
pantry-place-online = by order, on the internet
pantry-place-unusual = hard to find there
pantry-place-unknown = nobody told Lumped where

## From a packet's label

label-negative = { $where }: { $row } is { $value }. A label prints no such figure; write a number from zero up.
label-empty = The label of “{ $where }” gives no figure of what is in it. Give at least one of fat, carbohydrate, protein and salt.
label-too-little = { $where }: the label tells what { $known } g of 100 g are, and nothing of { $missing }. That is too little to know what it is. Give { $missing } too (0 where the packet prints 0), or name what in the pantry it is most like.
label-sum = { $where }: what the label prints sums to { $total } g in 100 g. Look whether the table is for 100 g, 100 mL or a serving, and whether g and mg were mixed up.
label-part = { $where }: more { $part } than { $whole }, of which they are a part. Look at the label again.
label-salt-sodium = { $where }: salt { $salt } g in 100 g, but the sodium stands for { $wanted } g: labels count salt as two and a half times sodium. Give one of the two.
label-energy = { $where }: { $kJ } kJ are { $wanted } kcal, not { $kcal }. Look at the label again, or give one of the two.
label-price = { $where }: a price needs all three: what the packet holds (pack_g), what it cost (pack_price), and where it was bought (bought_in), whose money it is in.
label-serving = { $where }: the table is for a serving, but nobody says what a serving weighs. Give serving_g.
label-serving-measure = { $where }: the serving “{ $text }” can't be read. Give serving_g and a measure such as “1/4 cup”, “2 tbsp” or “1 tsp”.
label-no-allergen = { $where }: “{ $word }” is no allergen of the European or the American list. Write one of: { $known }.
label-allergen = { $where }: “{ $word }” is no allergen of the European or the American list. Did you mean: { $near }?
label-taken = { $where }: Lumped already has an ingredient of that name ({ $key }). Give yours another title, such as “our { $where }”.
label-twice = { $file }: two ingredients are called “{ $name }”. Give each a title of its own.
label-text = “{ $text }” can't stand here. Begin with a letter or a digit, and use letters, digits, spaces and . , ' % ( ) / & - only: a spreadsheet could take the rest for a formula.
label-role = There is no role “{ $role }”. Choose from: { $known }.
label-csv-encoding = { $file }: this is no UTF-8 text. Save it as “CSV UTF-8”.
label-csv-column-twice = { $file }: there are two columns “{ $column }”. Take one out.
label-csv-broken = { $file }: this is no table that Lumped can read: { $problem }. Save it as CSV with one line of headings.
label-csv-headings = { $file }: the headings lack “title”. The first line names the columns, such as: title, per, fat_g, carbohydrate_g, protein_g, salt_g.
label-csv-column = { $file }: there is no column “{ $column }”. { $hint }
label-csv-near = Did you mean “{ $near }”?
label-csv-columns = The columns are: { $known }.
label-csv-signs = it holds characters that are no text
label-csv-cell = a cell has more than { $limit } characters; perhaps a quotation mark is open
label-csv-quotes = at line { $line } a quotation mark is left open, or stands inside a text without being doubled
label-csv-long = { $file }: more than { $limit } ingredients. Split the file.
label-csv-none = { $file }: no ingredient under the headings.
label-csv-width = { $file }, line { $line }: { $found } cells, but there are { $wanted } headings. Look for a comma too many, or put text with commas into quotation marks.

label-note-packet = its packet
label-note-silent = not on its packet
label-note-like = not on its packet: as in { $like }
label-note-left = what is left to a hundred
label-note-serving = worked out from the serving on its packet
label-assumed-density = Its density is not on the label: { $density } g/mL worked out from what is in it, give or take 5 %.
label-assumed-density-like = Its density is not on the label: { $density } g/mL, as { $like }.
label-assumed-fibre-within = Its fibre is counted as a part of the carbohydrate, as on American labels.
label-assumed-fibre-beside = Its fibre is counted beside the carbohydrate, as on European labels.
label-assumed-sugars = What sugars they are is not on the label: { $kinds } taken.
label-and = { $first } and { $last }
label-name-fat = fat
label-name-carbohydrate = carbohydrate
label-name-sugars = sugars
label-name-fibre = fibre
label-name-protein = protein
label-part-like = { $name } { $share } % ({ $low } to { $high } %)
label-part-none = { $name } ({ $low } to { $high } %)
label-assumed-like-parts = Not on the label, so taken as in { $like }: { $parts }.
label-assumed-no-parts = Not on the label, so none taken, or the least that there can be: { $parts }. Where the packet prints 0, write 0.
label-assumed-no-sugars = Sugars are not on the label: none taken, all { $share } % of carbohydrate as starch. Sugars melt and do not thicken, and may be anything from 0 to { $share } %: the dough’s interval knows nothing of that. Write them down, or name a similar ingredient.
label-assumed-salt = Salt is not on the label, where European and American ones must tell it: { $share } % taken ({ $low } to { $high } %). Look for it: a gram in a hundred makes an insulating dough leak several times as much.
label-assumed-salt-like = Salt is not on the label: { $share } % taken as in { $like } ({ $low } to { $high } %).
label-assumed-sodium = Its sodium, { $share } %, is taken for { $kinds }; the label does not say.
label-assumed-ash-like = Minerals are not on the label: { $share } % taken as in { $like } ({ $low } to { $high } %).
label-assumed-acids-like = Acids and what does not dissolve are not on the label: { $share } % taken as in { $like }; the dough’s interval knows no other.
label-assumed-ash = Minerals are not on the label: { $share } % ash taken ({ $low } to { $high } %). Name a similar ingredient to make it surer.
label-assumed-water = Water is not on the label: { $share } % is left to a hundred ({ $low } to { $high } %).
label-assumed-water-like = Water is not on the label, and too much else is left out for it to be what is left: { $share } % taken as in { $like } ({ $low } to { $high } %).
label-assumed-role = What it does in a dough was not said: { $role }, by what there is most of in it.
label-assumed-weight = What a cup of it weighs is not on the label: as { $like }, ten per cent wider.
label-assumed-no-weight = What a cup of it weighs is not on the label: weigh it.
label-assumed-allergens = Allergens were not given: those of { $like } taken. Read the packet.
label-assumed-no-allergens = Allergens were not given, so nobody knows of any. Read the packet.
label-doubt-water = That much water is unlike { $like }, which has about { $usual } %: look at the label again.
label-doubt-energy = Its energy, { $printed } kJ in 100 g, doesn't fit what is in it, which gives { $reckoned } kJ: look at the label again.
