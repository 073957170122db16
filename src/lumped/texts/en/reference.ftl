### The handbook (reference)

handbook-no-table = The handbook has no table “{ $table }”. { $near }
handbook-no-entry = The handbook's table “{ $table }” has no “{ $key }”. { $near }
handbook-no-row = The handbook says nothing about “{ $quantity }” of “{ $key }” in its table “{ $table }”. { $near }
handbook-no-curve = The handbook has no curve “{ $key }”. { $near }
handbook-near = Did you mean: { $words }?
handbook-all = It has: { $words }.
handbook-unreadable = The handbook's file { $file } can't be read: { $why }.
handbook-unsound = The handbook's file { $file }, entry “{ $entry }”, row “{ $row }” is unsound: { $why }. Mend the row before anything relies on it.
