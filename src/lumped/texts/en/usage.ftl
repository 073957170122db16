### Wrong usage of the command line

usage-unknown = “{ $program }” does not know “{ $words }”. What it takes: “{ $program } --help”.
usage-words = “{ $program }” has no place for “{ $words }”. An option that takes several is said once for each, as in --of flour --of water, and a name with spaces stands in quotes.
usage-missing = “{ $program }” lacks { $words }. What it takes: “{ $program } --help”.
usage-choice = { $option } can’t be “{ $value }”. Choose one of: { $known }.
usage-no-value = { $option } needs a value after it; one that begins with a minus is written with =, such as --hours=-2.
usage-value = { $option } can’t be “{ $value }”: a number is needed.
usage-together = { $option } and { $other } can’t be said together.
usage-other = { $option } { $problem } What it takes: “{ $program } --help”.
