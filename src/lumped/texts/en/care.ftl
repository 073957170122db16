# What to mind with doughs and for the children at the table.

cli-care = say who may touch doughs, who must not eat them, and what to mind
cli-care-about = Say who may touch the doughs of a table, who must not eat them, and what to mind: allergens, diets, doses, limits, cautions. With --child, which doughs may stay for the sake of the children there.
cli-care-recipes = recipe files, or titles of recipes in the notebook, one for each dough on the table
cli-care-child = what a child at the table can't bear, such as coeliac, "peanut allergy", dairy, corn, vegan; repeat it for more
cli-care-age = age of the youngest child at the table, in years
cli-care-dog = weight of the house's dog, in kilograms
cli-care-on = for which day's rules, such as 2026-05-08; today if left out

care-dog = Lumped has no dog of { $mass } kg. Give a weight from 0.5 to 120 kg.

column-care = asked
column-care-found = found
care-eu = allergens, EU list
care-us = allergens, US list
care-traces = may contain traces of

## The table

heading-care-table = At a table with { $needs }
column-care-dough = dough
column-care-stands = at the table
column-care-because = because of
care-leaves = leaves
care-asks = ask first
care-stays = may stay, as far as the ingredients tell
care-because = { $ingredient } ({ $needs })
care-because-perhaps = perhaps { $ingredient } ({ $needs })
heading-care-whole-table = For the whole table
heading-care-mend = What would mend it
care-mend = “{ $dough }”: { $command }
care-mend-look = Look at what a swap proposes with the same needs before you cook it.
care-mend-packet = “{ $dough }”: read the packet of { $ingredients }, or take one whose packet says that it is free of what somebody here can’t bear.

## Doses

heading-care-doses = Doses, for a child aged { $age } ({ $child } kg) and a dog of { $dog } kg
column-care-dose = substance
column-care-amount = amount
column-care-held = held by, or is
column-care-source = figure from
care-grams = { $grams } g
care-grams-of-dough = { $grams } g of dough
care-helping-pinch = salt in a pinch
care-helping-lump = salt in a lump
care-helping-source = { $day }; { $child }; dog: from memory
care-helping-held = { $day } % of a child’s day, { $lethal } % of where lethal doses begin, { $dog } % of what makes the dog ill
care-dose-salt-child-lethal_per_kg = salt, child: published lethal doses begin
care-dose-salt-child-smallest_case = salt, infant: smallest published case
care-dose-sodium-child-in_two_deaths = sodium, child: two died of less
care-dose-salt-dog-signs_per_kg = salt, dog: falls ill
care-dose-salt-dog-lethal_per_kg = salt, dog: lethal
care-dose-tartrate-dog-kidneys_failed_per_kg = cream of tartar, dog: kidneys failed in single dogs
care-dose-epsom-child-laxative_age_6 = Epsom salt, child from 6 years on: a laxative dose
care-dose-potassium-child-care_per_kg = potassium as its chloride, child: ask a poison centre
care-dose-potassium-child-infant_death_per_kg = potassium as its chloride, infant: a published death
care-dose-glycerol-child-unwell_per_kg = glycerine, child: unwell
care-dose-boron-child-lethal = borax as boric acid, child: deaths in old reports
care-dose-aluminium-child-day_per_kg = aluminium, child: tolerable each day for a lifetime

## Metals

care-element-Al = aluminium
care-element-B = boron
heading-care-metals = If all of it migrated: limits of toys on { $date }
column-care-metal = element
column-care-in-dough = in the dough
column-care-dry = once dry
column-care-pliable = pliable toy
column-care-sticky = sticky toy
column-care-valid = limits valid
care-mg-per-kg = { $figure } mg/kg
care-from-to = { $start } to { $end }
care-from = from { $start }

heading-care-of = Be careful with { $dough }
heading-remarks = To ask those whom it concerns

## The page

web-care-needs = Somebody at the table can’t bear
web-care-more-needs = more needs
web-care-seldom = Rarer, or on one list only
web-care-gluten = gluten
web-care-gluten-limit = how much gluten what is sold as gluten-free may hold
web-care-others = Also on the table
web-care-table = At this table
web-care-mend = Something else instead of { $dough }
