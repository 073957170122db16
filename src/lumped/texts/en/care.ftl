# What to mind with a dough, on the command line.

cli-care = say who may touch a dough, who must not eat it, and what to mind
cli-care-age = age of the youngest child at the table, in years
cli-care-dog = weight of the house's dog, in kilograms
cli-care-on = for which day's rules, such as 2026-05-08; today if left out
column-care = asked
column-care-found = found
care-eu = allergens, EU list
care-us = allergens, US list
care-traces = may contain traces of
care-fits = fits
heading-remarks = To ask those whom it concerns
