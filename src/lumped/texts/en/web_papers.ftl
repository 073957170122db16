### Papers of a dough to take along from its page.

web-paper-language = Language of card and labels
web-paper-en = English
web-paper-fr = French
web-paper-es = Spanish
web-paper-ja = Japanese
web-paper-size = Paper
web-paper-a4 = A4
web-paper-us-letter = US Letter
web-paper-people = Card for how many; as the recipe says if empty
web-paper-people-as-written = 28 of 9 in pairs
web-paper-working = Being written …
web-take-card = Recipe card (PDF)
web-take-labels = Labels for bags (PDF)
