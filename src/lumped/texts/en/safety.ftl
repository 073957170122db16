### Safety and fairness: who may touch a dough, who must not eat it, what to mind. A parent reads them.

safety-no-dough = The dough would weigh { $mass } g. Give the mass of the dough that came out, above 0.
safety-age = Lumped has no figure for an age of { $age } years. Give an age from { $first } to { $last }.
safety-no-need = “{ $need }” is no need that Lumped knows. Choose one of: { $known }.
safety-need-near = “{ $need }” is no need that Lumped knows. Did you mean: { $near }?
safety-no-diet = “{ $diet }” is no diet that Lumped knows. Choose one of: { $known }.
safety-diet-near = “{ $diet }” is no diet that Lumped knows. Did you mean: { $near }?
safety-no-limit = The handbook has no limit for “{ $element }” in toys. Choose one of: { $known }.
safety-no-limit-yet = The handbook has no limit for toys on { $date }. Choose a day from { $start } on.

## Who may sit at the table

safety-need-coeliac = coeliac disease
safety-need-nuts = a nut allergy
safety-need-gluten = a gluten-free diet
safety-need-shellfish = an allergy to shellfish
safety-need-vegan = a vegan diet
safety-need-allergy = an allergy to { $allergen }
safety-table-holds = “{ $dough }” must leave the table: { $ingredient } in it is not for somebody with { $need }.
safety-table-perhaps = Ask before “{ $dough }” comes to the table: { $ingredient } in it may not suit somebody with { $need }. Read its packet.
safety-table-leave = One child’s need holds for the whole table: dough sticks to hands, and hands go from dough to dough. Take the named doughs away, wash table, tools and hands, and start with fresh dough.
safety-table-stay = As far as the ingredients tell, no dough here has to leave the table. Use bowls and rolling pins that are clean of other doughs.
safety-table-coeliac = One child with coeliac disease, or who must leave gluten for another reason, makes the whole table gluten-free. Flour dust hangs in the air and settles on everything: nobody opens wheat flour in the same room. Buy flours and starches that are labelled gluten-free (at most { $limit } mg of gluten in a kilogram); rice or corn flour from an ordinary mill often is not.
safety-table-wheat = A wheat allergy is not coeliac disease: skin and breath can react within minutes, to dust as well, and starch that is sold as gluten-free can still be made from wheat. Ask the family what happens and what to do then.
safety-table-oats = Oats hold a protein much like gluten, and ordinary oats are mixed with wheat. Oats labelled gluten-free (at most { $limit } mg in a kilogram) suit most people with coeliac disease, not all: the family decides.
safety-table-starch = Only wheat starch labelled gluten-free (at most { $limit } mg in a kilogram) is made for people with coeliac disease; it must still name wheat, and ordinary wheat starch is not for them. Read the packet before you send it away.
safety-table-nuts = Nut dust and nut oil travel on hands, cloths and snacks: nobody brings nuts or spreads of them that day, all wash hands before they come to the table, and an adult knows where the child’s medicine is.
safety-table-corn = Maize hides behind other names: starch, glucose, dextrose, syrup, icing sugar, baking powder, citric and ascorbic acid may be made of it, and no law lists it as an allergen in Europe or America. The family knows which ones matter.
safety-table-vegan = Who lives vegan is not made ill by another’s dough; but one dough for all leaves nobody out.
safety-table-ask = Ask every family before the day, and believe them. Their doctor decides, not this program.

## Doses

safety-helping-pinch = A pinch of it ({ $dough } g) holds { $salt } g of salt, { $share } per cent of the most that a child of { $age } should eat in a day ({ $day } g): a lick is no emergency.
safety-helping-lump = A lump of { $dough } g holds { $salt } g of salt, { $share } per cent of the most that a child of { $age } should eat in a day ({ $day } g).
safety-dose-salt-dog-lethal_per_kg = For a dog of { $mass } kg, { $dough } g of it ({ $lumps } lumps) hold the { $amount } g of salt that vets call lethal.
safety-dose-salt-dog-signs_per_kg = For a dog of { $mass } kg, { $dough } g of it ({ $lumps } lumps) hold the { $amount } g of salt from which dogs fall ill.
safety-dose-salt-child-lethal_per_kg = For a child of { $age } ({ $mass } kg), { $dough } g of it ({ $lumps } lumps) hold { $amount } g of salt, where published lethal doses begin.
safety-dose-salt-child-smallest_case = { $dough } g of it ({ $lumps } lumps) hold { $amount } g of salt, as much as the smallest case of an infant that was published.
safety-dose-sodium-child-in_two_deaths = { $dough } g of it ({ $lumps } lumps) hold { $amount } g of sodium; two children died of less.
safety-dose-tartrate-dog-kidneys_failed_per_kg = Cream of tartar and tartaric acid can destroy a dog’s kidneys. { $dough } g of this dough ({ $lumps } lumps) hold { $amount } g, for a dog of { $mass } kg what made two single dogs gravely ill, one of them from homemade dough. Nobody knows how much less still harms: if a dog ate any, call a vet at once, before it looks ill.
safety-dose-epsom-child-laxative_age_6 = Epsom salt is a laxative. { $dough } g of this dough ({ $lumps } lumps) hold { $amount } g, a dose for a child from 6 years on; it is not meant for younger ones, nor for anybody with weak kidneys.
safety-dose-potassium-child-care_per_kg = Potassium salt can stop a heart, sooner where kidneys are weak. { $dough } g of this dough ({ $lumps } lumps) hold { $amount } g, for a child of { $age } ({ $mass } kg) enough to ask a poison centre at once (figure from memory).
safety-dose-potassium-child-infant_death_per_kg = { $dough } g of it hold { $amount } g of potassium chloride, for a child of { $mass } kg as much for each kilogram as an infant died of.
safety-dose-glycerol-child-unwell_per_kg = Glycerine that a small child eats within an hour can make it sick and sleepy, with too little sugar in its blood. { $dough } g of this dough ({ $lumps } lumps) hold { $amount } g, for a child of { $age } ({ $mass } kg) where that may begin (figure from memory).
safety-dose-boron-child-lethal = Borax poisons. { $dough } g of this dough ({ $lumps } lumps) hold { $amount } g, reckoned as boric acid; small children died of such amounts in old reports (figure from memory).
safety-dose-aluminium-child-day_per_kg = { $dough } g of it hold { $milligrams } mg of aluminium, what a child of { $mass } kg may eat each day for a lifetime; one lick is no emergency.

## Metals and the law

safety-migration-held = A kilogram of this dough holds up to { $share } mg of { $element } (from { $ingredients }, as much and as dry as it may be), up to { $dry } mg once the dough is dry. Since { $start } European law lets { $pliable } mg migrate from a kilogram of a pliable toy, { $sticky } mg from a sticky one.
safety-migration-none = Even if all of it migrated, both limits would hold while the dough is fresh.
safety-migration-sticky = If all of it migrated, the limit for sticky toys would be passed; only a laboratory can tell how much does.
safety-migration-both = If all of it migrated, both limits would be passed; only a laboratory can tell how much does. Use less, or none.
safety-migration-dry = Once it is dry, all of it would pass the limit for { $kind } toys too.
safety-migration-unseen = Nobody has looked these limits up in the new regulation: they are taken as unchanged.
safety-no-certificate = This is no certificate: who sells dough or gives it away as a toy needs a laboratory and the law’s own text.

safety-allergens-of = { $ingredient } ({ $allergens })

## Diets

safety-diet-wrong = Does not suit “{ $diet }”, because of { $ingredients }.
safety-diet-doubtful = Suits “{ $diet }” as far as the ingredients tell; read the packet of { $ingredients }.
safety-diet-suits = Suits “{ $diet }” as far as the ingredients tell.
safety-remark-other = Some people of faith ask where { $ingredient } comes from. Show them the packet.
safety-remark-written = (From memory, written { $date }; no verdict.)
