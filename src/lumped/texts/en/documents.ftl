### Files that people write.

folder-missing = There is no folder “{ $folder }”, so “{ $file }” can't be written. Make the folder first, or correct its name.
document-missing = There is no file “{ $file }”. Look at its name and folder, or give the whole path.
document-is-folder = “{ $file }” is a folder. Name a file inside it.
document-too-large = “{ $file }” is larger than { $limit }, more than Lumped reads. A recipe or a sculpture is a few kilobytes: is it the right file?
document-not-text = “{ $file }” is no UTF-8 text. If it is the right file, save it as UTF-8: Lumped reads TOML, a plain text format.
document-unreadable = { $file } can't be read: { $problem }. Look at its name and permissions.
document-not-toml = “{ $file }” is not TOML: { $problem }. Look at that line; text needs quotation marks, and each [[table]] its two brackets.
document-number-too-long = a number has too many digits
document-too-deep = “{ $file }” nests more than { $limit } levels deep, more than Lumped reads. Is it the right file?
document-no-kind = “{ $file }” should say at its top what it is: kind = "recipe", "sculpture", "batch" or "ingredient". It says { $found }. Is it the right file?
document-other-kind = “{ $file }” should say kind = "{ $kind }" at its top, but says { $found }. Is it the right file?
document-key = { $file }: { $key } is { $value }. { $remedy }
document-whole = { $file }: { $remedy }
document-part = { $file }, { $key }: { $remedy }
document-value-none = missing
document-remedy-missing = Add the key “{ $key }”.
document-remedy-near = There is no such key; did you mean “{ $near }”?
document-remedy-elsewhere = It does not stand here but under: { $tables }.
document-remedy-top = It does not stand here but at the top of the file, before all tables.
document-remedy-extra = There is no such key here; take it out.
document-remedy-more = It must be more than { $limit }.
document-remedy-least = It must be at least { $limit }.
document-remedy-most = It must be at most { $limit }.
document-remedy-choice = Choose one of: { $choices }.
document-remedy-number = Write a number alone, such as { $example }.
document-remedy-whole-number = Write a whole number, such as { $example }.
document-remedy-unit = Write a number of { $unit } alone, such as { $example }.
document-remedy-unit-or = Write a number of { $unit } alone, as in { $key } = { $example }, or with its unit: { $other } = "{ $example } { $symbol }".
document-remedy-with-unit = Write a number of { $unit }, or text with a unit such as "{ $example }".
document-remedy-text = Write text in quotation marks.
document-remedy-list = Write a list in square brackets.
document-remedy-table = Write a table: its name in brackets, then a line for each key.
document-remedy-truth = Write true or false.
document-unit-g = grams
document-unit-mg = milligrams
document-unit-kJ = kilojoules
document-unit-kcal = kilocalories
document-unit-degC = degrees Celsius
document-unit-mm = millimetres
document-unit-deg = degrees
document-unit-percent = per cent
document-unit-ohm-m = ohm metres (Ω·m)
document-unit-ohm = ohms
document-unit-V = volts
document-remedy-count = At most { $limit } are read.
document-remedy-some = Give at least { $limit }.
document-remedy-long = Write at most { $limit } characters.
document-remedy-short = Write something.
document-remedy-characters = Leave out commas, ~, @, curly quotation marks and characters that can't be printed.
