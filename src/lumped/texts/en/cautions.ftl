### All cautions, each once: `safety-caution-…` in full, `safety-brief-…` for a sheet or a list. A parent reads them.

## On a dough

safety-caution-eaten = This dough is { $share } per cent salt and not food. { $pinch } But { $child } g of it hold the salt at which published lethal doses begin for a child of { $age } ({ $child_mass } kg), and a dog of { $dog_mass } kg falls ill from { $dog } g. Keep it from small children and animals. If somebody ate a piece, call a doctor, a poison centre or a vet at once; don’t make anybody vomit, and never give salt water.
safety-caution-alum = Alum binds and bites: it can burn a mouth and a stomach, and it stings in eyes and on broken skin, and its dust irritates lungs. An adult weighs it and keeps the packet locked away. If somebody ate a piece of the dough, ask a poison centre. No dose for children is known to Lumped.
safety-caution-burnt-alum = Burnt alum is alum without its water: a gram of it brings as much aluminium as nearly two grams of crystals. A recipe that says alum, in crystals, needs little more than half as much of it; weigh it.
safety-caution-borax = Borax is not for children’s dough: it can harm unborn children and fertility, it passes through broken skin, and eaten it poisons. It is not sold to the public in the European Union, and the limit on boron in toys allows very little. Leave it out.
safety-caution-allergens = Contains allergens: { $allergens }. Ask every family first; hands and dust carry it to the whole table.
safety-caution-may-contain = May bring traces of allergens: { $allergens }. Read the packets.
safety-caution-no-allergens = None of the ingredients is a listed allergen. Read the packets for traces; wheat flour on the same table is enough to spoil it.
safety-caution-flour-raw = Raw flour, of wheat or anything else, can carry germs that make children gravely ill, and this dough is not cooked through. Nobody tastes it, all wash their hands, and children who still put things into their mouths get cooked dough instead. Heating flour at home in an oven or microwave is not a sure remedy.
safety-caution-flour-cooked = Raw flour can carry germs. Cook the dough until all of it is thick and steaming, and wash what touched the raw flour. Flour added afterwards is raw again. Lumped can’t promise that a kitchen killed every germ: nobody eats the dough.
safety-caution-hot = An adult cooks. Dough from the pot sticks and burns, and stays hot inside for an hour: hand it out when its middle is cool.
safety-caution-acid-eyes = Acids, even kitchen ones, sting in eyes: an adult pours. If some got in, rinse with much clean water for a quarter of an hour and ask a doctor.
safety-caution-salt-skin = Salt stings: not on cuts, broken skin or eczema, not near eyes. Rinse hands after and use a cream; whoever must stay away from it can be the one who builds and decides.
safety-caution-dust = Pour flour, starch and icing sugar low and slowly: their dust hangs in the air, troubles people with asthma or a flour allergy, and can flash near a flame.
safety-caution-slippery = Oil and glycerine on the floor are slippery: wipe them up at once.
safety-caution-spirit = Spirit burns: no flame near it, and none of it in a hot pot.
safety-caution-small-parts = Not for children under three: what fits into a tube { $diameter } mm wide can choke them. Lamps, coin cells and small balls of dough do.
safety-caution-pack-wires = Keep the pack's bare wires apart: touching, they heat within seconds. A resettable fuse prevents it. Take the pack off when you stop.
safety-caution-cells = Use alkaline or nickel cells only. No lithium packs, and no button cells or small parts near small children.
safety-caution-mains = Never connect anything to the mains.
safety-caution-colour-stains = Food colour stains hands, cloth and wood: cover the table and wear old clothes. A few people are allergic to some dyes: read the packet.
safety-caution-sugar-ants = Sugar dough draws ants and wasps, and moulds within days: keep it cold, throw it away in time.
safety-caution-pan = Salt and acid eat bare aluminium: cook in steel or enamel, and keep the dough in plastic or glass.
safety-caution-metal = Current carries metal into the dough. Cut out bits that are stained green, black or rusty after each use and throw them away; take leads out when you stop, and use iron or tinned ones, none with lead or cadmium.
safety-caution-mould = Throw dough away when it smells, has spots or turns slimy. Give each group fresh dough while a stomach bug or a rash goes round.
safety-caution-disposal-salt = Put old dough into the bin. Not down the drain in lumps, where it sets; not onto compost or beds, where salt kills plants; never out for birds or other animals.
safety-caution-disposal = Put old dough into the bin. Not down the drain in lumps, where it sets, and never out for birds or other animals once metal was in it.
safety-caution-rules = Local rules and qualified people first: what your school, your doctor or your poison centre says counts more than this page.

## On an ingredient by itself

safety-caution-raw-flour = Raw flour can carry germs: nobody eats raw dough, and all wash their hands.
safety-caution-oats = Oats grow and are milled beside wheat: only oats sold as gluten-free are for a table without gluten, and a few people with coeliac disease don't bear even those.
safety-caution-foams = Baking soda foams with anything sour and with hot water: mix it in a big bowl, a spoon at a time, and let the gas out before a lid goes on.
safety-caution-name-gluten-none = “Glutinous” rice is sticky and has no gluten; read on the packet what else its mill grinds.
safety-caution-potato-not-starch = Potato flour and potato starch are two things: flour is the whole dried potato, carries far more ions, and drinks far more water. Look which one the packet holds.
safety-caution-buckwheat = Buckwheat is no wheat and has no gluten, but some people are badly allergic to it, above all in Japan, where packets must name it.
safety-caution-nut-dust = Nut dust flies: whoever is allergic to nuts must not be in the room. Leave nuts out wherever children share a table.
safety-caution-lupin = Whoever is allergic to peanuts may be allergic to lupin too; packets must name it in Europe, not in America.
safety-caution-pearls-choke = Dry pearls are small and hard: small children put them into noses, ears and mouths.
safety-caution-wheat-starch = Wheat starch is washed out of wheat: some is sold as gluten-free, all of it must name wheat. It is not for a wheat allergy.
safety-caution-gum-slippery = Spilt gum is slippery as soon as it is wet: sweep it up dry.
safety-caution-psyllium-dust = The dust of psyllium can make people allergic, and some already are: open the packet slowly, an adult pours.
safety-caution-swells = It swells to many times its size in water: nobody swallows it dry.
safety-caution-spoils-fast = Dough with it spoils within a day or two in the warm: keep it cold, throw it away in time.
safety-caution-salt-coarse = Coarse grains take long to dissolve and scratch: dissolve them in the warm water before the flour goes in.
safety-caution-not-food-grade = It is not sold as food and may hold other things: keep its packet apart from the kitchen's, and nobody tastes the dough.
safety-caution-potassium = Potassium salt tastes bitter, and much of it is dangerous for people with weak kidneys or heart medicines: nobody eats the dough.
safety-caution-epsom-laxative = Epsom salt is a laxative: nobody eats the dough.
safety-caution-calcium-heats = Calcium chloride gets hot in water and dries skin: an adult dissolves it, with goggles, salt into water.
safety-caution-baking-powder = Baking powder is soda, an acid and starch together: in a dough it foams, leaves other salts than soda does, and may hold wheat or maize starch. Some American brands hold aluminium.
safety-caution-lye = Washing soda burns eyes and skin: not for children and not for dough that hands knead.
safety-caution-irritates = The pure powder irritates eyes and lungs: an adult weighs it, and little is enough.
safety-caution-benzoate-vitamin-c = Not together with vitamin C or lemon juice: benzoate and vitamin C can form traces of benzene. It works only in a sour dough.
safety-caution-tartrate-dogs = Cream of tartar and tartaric acid harm the kidneys of dogs: keep the dough out of their reach.
safety-caution-sulphite = Bottled juice is often kept with sulphites: read the label, some people with asthma don't bear them.
safety-caution-lime-skin = Lime juice on skin in sunshine can burn it: wash hands before going out.
safety-caution-honey-infants = Honey can make babies under one year gravely ill: none of it near their hands or mouths.
safety-caution-molasses-conducts = Molasses is full of potassium: it carries current, and spoils an insulating dough.
safety-caution-glycerine-drink = Small children who drink much glycerine get ill: nobody eats the dough.
safety-caution-coconut = Coconut counted as a tree nut in America until 2025, and some packets still say so: ask before sharing.
safety-caution-mineral-oil = Mineral oil is no food, and in lungs it is dangerous: keep the bottle away from small children.
safety-caution-rain-germs = Rain water from a butt holds germs: boil it, or take water from the tap.
safety-caution-colour-powder = Dry dye flies and stains for good: an adult stirs it into a spoon of water first.
safety-caution-alcohol-children = Spirits are not for children: an adult keeps the bottle, and many schools allow none.
safety-caution-packet = Read and heed what the packet of { $names } warns of.

## Said shortly

safety-brief-eaten = “{ $dough }” is { $share } % salt and not food: published lethal doses begin at about { $child } g of it for a child of { $child_mass } kg, and lie near { $dog_lethal } g for a dog of { $dog_mass } kg. Keep it from small children and pets; if some was eaten, ask a poison centre, a doctor or a vet at once.
safety-brief-allergens = “{ $dough }” contains { $allergens }. Ask before sharing: hands and dust carry it to the whole table.
safety-brief-no-allergens = None of the ingredients of “{ $dough }” is a listed allergen. Look for traces on each packet; one table with wheat flour is enough.
safety-brief-label-traces = May contain, by the label of the packet: { $allergens }.
safety-brief-may-contain = Traces are possible: { $traces }. Read the packets.
safety-brief-hot = An adult cooks, and hands dough out only when it is cool: hot dough sticks and burns.
safety-brief-salt-skin = Salt stings: not on broken skin or eczema, not near eyes. Wash hands after.
safety-brief-slippery = Oil on the floor is slippery: wipe it up.
safety-brief-acid-eyes = Acids, even kitchen ones, sting in eyes: rinse with much water.
safety-brief-sugar-ants = Sugar dough draws ants and wasps, and moulds within days: keep it cold, throw it away in time.
safety-brief-colour-stains = Food colour stains hands and cloth.
safety-brief-dust = Dust of flour, starch and icing sugar troubles lungs and can flash near a flame: pour low.
safety-brief-burnt-alum = Burnt alum is nearly twice as strong as crystals: little more than half as much.
safety-brief-borax = Borax is not advised: it can harm fertility and unborn children, is not sold to the public in the European Union, and the limit on boron in toys allows very little. Leave it out.
safety-brief-alum = Alum stings in eyes and on broken skin, and a spoonful eaten makes ill: an adult weighs it.
safety-brief-spirit = Alcohol burns: no flame near it, and never into a hot pot.
safety-brief-rules = Local rules and a qualified person decide what is allowed where you are.
