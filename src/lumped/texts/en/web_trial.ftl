### The page of the one-minute trial.

web-way-trial = Is this batch good?
web-way-trial-lure = A lamp, two screws, one minute.
web-trial-go-bright = Go: bright
web-trial-go-dark = Go: dark
web-trial-weak = This trial is weak: do not rely on it.
web-trial-mould = Dough in
web-trial-most = what tells most
web-trial-lamp = The lamp
web-trial-pack = The pack
web-trial-screws = The screws
web-trial-lights = What the lamp says
web-trial-worth = How strongly it tells
web-trial-good-batches = of 100 good batches
web-trial-bad-batches = of 100 with a mistake: { $bad }
web-trial-share-bright = { $count } bright
web-trial-share-faint = { $count } faint
web-trial-share-dark = { $count } dark
web-trial-take-better = Take what tells better
web-trial-numbers = The figures behind it
web-trial-good = Resistivity of good batches
web-trial-bright = Bright ends, faint begins
web-trial-dark = Faint ends, dark begins
web-trial-note = Where current, lamp, cells, resistor and the price at the metal add up; lamps, cells, moulds and eyes are drawn within their kinds.
web-trial-open-mould = the mould: resistance over resistivity
web-trial-open-bright = current from which an eye calls the lamp bright
web-trial-open-barely-lit = current at which it calls it dark
