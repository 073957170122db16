### How long a dough lasts (dough/lasting)

lasting-not-positive = { $what } is { $figure }, but must be more than nothing.
lasting-word-thickness = The thickness
lasting-word-extent = The size of the face or the length
lasting-word-density = The density
lasting-word-content = The water content
lasting-word-duration = The time
lasting-humidity = A relative humidity of { $humidity } can’t be: it lies between 0 (dry air) and 1 (air that drips).
lasting-no-molar-mass = Lumped can’t tell how much water { $compound } holds: the handbook knows no molar mass of it.
