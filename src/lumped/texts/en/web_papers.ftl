### Papers of a dough to take along from its page.

web-paper-language = Language of card and labels
web-paper-en = English
web-paper-fr = French
web-paper-es = Spanish
web-paper-ja = Japanese
web-paper-working = Being written …
web-take-card = Recipe card (PDF)
web-take-labels = Labels for bags (PDF)
