# Ingredients.

pantry-negative = { $where }: { $row } is { $value } per cent. A share can't be negative; look at the label again.
pantry-sum = { $where }: what it is made of sums to { $total } per cent instead of 100. Look for a row that is missing or wrong.

## What to mind with an ingredient

dough-caution-oats = Oats grow and are milled beside wheat: only oats sold as gluten-free are for a table without gluten, and a few people with coeliac disease don't bear even those.
dough-caution-foams = Baking soda foams with anything sour and with hot water: mix it in a big bowl, a spoon at a time, and let the gas out before a lid goes on.
dough-caution-name-gluten-none = “Glutinous” rice is sticky and has no gluten; read on the packet what else its mill grinds.
dough-caution-potato-not-starch = Potato flour and potato starch are two things: flour is the whole dried potato, carries far more ions, and drinks far more water. Look which one the packet holds.
dough-caution-buckwheat = Buckwheat is no wheat and has no gluten, but some people are badly allergic to it, above all in Japan, where packets must name it.
dough-caution-nut-dust = Nut dust flies: whoever is allergic to nuts must not be in the room. Leave nuts out wherever children share a table.
dough-caution-lupin = Whoever is allergic to peanuts may be allergic to lupin too; packets must name it in Europe, not in America.
dough-caution-starch-dust = Pour starch slowly and low: its dust hangs in the air, troubles lungs, and can flash near a flame.
dough-caution-pearls-choke = Dry pearls are small and hard: small children put them into noses, ears and mouths.
dough-caution-wheat-starch = Wheat starch is washed out of wheat: some is sold as gluten-free, all of it must name wheat. It is not for a wheat allergy.
dough-caution-gum-slippery = Spilt gum is slippery as soon as it is wet: sweep it up dry.
dough-caution-psyllium-dust = The dust of psyllium can make people allergic, and some already are: open the packet slowly, an adult pours.
dough-caution-swells = It swells to many times its size in water: nobody swallows it dry.
dough-caution-spoils-fast = Dough with it spoils within a day or two in the warm: keep it cold, throw it away in time.
dough-caution-salt-coarse = Coarse grains take long to dissolve and scratch: dissolve them in the warm water before the flour goes in.
dough-caution-not-food-grade = It is not sold as food and may hold other things: keep its packet apart from the kitchen's, and nobody tastes the dough.
dough-caution-potassium = Potassium salt tastes bitter, and much of it is dangerous for people with weak kidneys or heart medicines: nobody eats the dough.
dough-caution-epsom-laxative = Epsom salt is a laxative: nobody eats the dough.
dough-caution-calcium-heats = Calcium chloride gets hot in water and dries skin: an adult dissolves it, with goggles, salt into water.
dough-caution-baking-powder = Baking powder is soda, an acid and starch together: in a dough it foams, leaves other salts than soda does, and may hold wheat or maize starch. Some American brands hold aluminium.
dough-caution-lye = Washing soda burns eyes and skin: not for children and not for dough that hands knead.
dough-caution-borax = Borax is not advised: it can harm fertility and unborn children, is not sold to the public in the European Union, and the limit on boron in toys allows very little. Leave it out.
dough-caution-alum = Alum stings in eyes and on broken skin, and a spoonful eaten makes ill: an adult weighs it.
dough-caution-irritates = The pure powder irritates eyes and lungs: an adult weighs it, and little is enough.
dough-caution-benzoate-vitamin-c = Not together with vitamin C or lemon juice: benzoate and vitamin C can form traces of benzene. It works only in a sour dough.
dough-caution-tartrate-dogs = Cream of tartar and tartaric acid harm the kidneys of dogs: keep the dough out of their reach.
dough-caution-sulphite = Bottled juice is often kept with sulphites: read the label, some people with asthma don't bear them.
dough-caution-lime-skin = Lime juice on skin in sunshine can burn it: wash hands before going out.
dough-caution-honey-infants = Honey can make babies under one year gravely ill: none of it near their hands or mouths.
dough-caution-molasses-conducts = Molasses is full of potassium: it carries current, and spoils an insulating dough.
dough-caution-glycerine-drink = Small children who drink much glycerine get ill: nobody eats the dough.
dough-caution-coconut = Coconut counted as a tree nut in America until 2025, and some packets still say so: ask before sharing.
dough-caution-mineral-oil = Mineral oil is no food, and in lungs it is dangerous: keep the bottle away from small children.
dough-caution-rain-germs = Rain water from a butt holds germs: boil it, or take water from the tap.
dough-caution-colour-powder = Dry dye flies and stains for good: an adult stirs it into a spoon of water first.
dough-caution-spirit-burns = Alcohol burns: no flame near it, and never into a hot pot.
dough-caution-alcohol-children = Spirits are not for children: an adult keeps the bottle, and many schools allow none.

## Remarks where faith may ask; status: from memory, 2026; no verdict

safety-remark-passover-grain = { $ingredient }: made from one of the five grains that Jewish households put away for Passover (wheat, spelt, barley, oats, rye).
safety-remark-passover-leaven = { $ingredient }: makes dough rise; some ask about raising agents at Passover, with or without yeast.
safety-remark-passover-small-grain = { $ingredient }: a rice, maize, millet or pulse product, which some Jewish households eat at Passover and others put away.
safety-remark-gelatine-origin = { $ingredient }: made from skin and bones, most often of pigs or cattle; the packet may say which, and how the animal was killed.
safety-remark-wine-product = { $ingredient }: comes from the crust in wine barrels; some Muslims and some Jews ask about what comes from wine.
safety-remark-vinegar-alcohol = { $ingredient }: made by way of alcohol, of which traces may be left; opinions differ on whether that matters.
safety-remark-alcohol = { $ingredient }: contains alcohol; many Muslims and others keep none in the house, and not for touching either.
safety-remark-corn-ferment = { $ingredient }: today made by moulds or bacteria from sugar of maize, wheat or other plants; some ask about that at Passover.
safety-remark-sugar-char = { $ingredient }: some refineries clean cane sugar over bone char; vegans, Hindus and others may ask; beet sugar never is.
safety-remark-glycerine-origin = { $ingredient }: glycerine comes from plants, animals or petroleum, and not every label says from which.
safety-remark-fat-origin = { $ingredient }: some white fats mix in lard or tallow, and an emulsifier may be of animal fat; look for “vegetable” or a seal.
safety-remark-colour-origin = { $ingredient }: some reds are made of insects (carmine, E120), and some carriers are alcohol or glycerine of unknown origin.

## Regions, prices, shops

pantry-no-region = There is no region “{ $region }”. Did you mean “{ $near }”? Lumped knows: { $known }.
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
