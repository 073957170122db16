### The notebook: what was written and measured.

body-holds = A document can't hold { $value } ({ $where }). It holds tables, lists, text, true, false and numbers: no dates (write them as text), no empty values (leave the key out), whole numbers up to 9007199254740991.
body-too-large = A document may be { $limit } long; this one is longer. Split it.
body-too-deep = A document may be nested { $limit } deep; this one is deeper.
reference-unreadable = “{ $text }” is no reference. One has the form id@hash, as “lumped notebook history” prints it.
moment-unreadable = “{ $text }” is no moment. Write it like 2026-05-09T14:30:00Z.
notebook-address = A notebook can't lie at { $address }. Give a file, a folder, or an address that begins with postgresql://.
notebook-newer-schema = This { $kind } was written by a newer Lumped (form { $schema }; this one reads up to form { $known }). It is kept untouched. Open it with the newer Lumped.
