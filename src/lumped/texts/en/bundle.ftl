### A whole notebook as files: one JSON file, or a folder of plain files, or that folder in one archive.

## Lines of text

line-too-long = “{ $text }” is { $length } characters long; here it may have { $limit }. Shorten it.
line-character = “{ $text }” holds a character that can't stand in a line (no. { $place }, { $code }). Take it out.

## The JSON file

bundle-other-kind = { $file } is no notebook: it should say kind = "notebook", but says { $found }. Is it the right file?
bundle-newer = { $file } was written by a newer Lumped (form { $form }; this one reads form { $known }). Open it with the newer Lumped.
bundle-json = This is not JSON as a notebook writes it: { $problem }. Was the file changed, or cut off on its way?
bundle-breaks-off = it breaks off
bundle-near = line { $line } goes on with “{ $text }” where that can't stand
bundle-not-utf8 = it is not text in UTF-8
bundle-constant = { $text } is no number. Where there is none, write null, and say why in the remark.
bundle-key-twice = The key “{ $key }” is there twice in one table, so it can't be told which is meant. Take one out.
bundle-key = { $where }: { $key }: { $problem }
bundle-table = { $where } should hold { $keys }, and nothing else. Was the file changed?
bundle-column = The column “{ $column }” should be a list of numbers as they come out of a notebook: no text, no lists in it, none too large. Was the file changed?
bundle-remark = { $where }: a remark belongs to “{ $key }”, which is no number of a reading. Was the file changed?
bundle-too-deep = It is nested deeper than { $limit } levels, more than a notebook writes. Nothing was read. Was it changed?
bundle-too-large = It would take more than { $limit } of memory, as files do that are made to harm. If you know where it comes from, lumped.notebook.files.read_contents(…, memory=…) in Python takes more.
bundle-piece-too-large = { $where } is larger than a revision can be ({ $limit } of text). Nothing was read.
bundle-incomplete = { $file } is not whole: a document or a series is missing, or one is of another day than the rest. Copy it again from where it was written.

## Plain files

plain-about = A whole notebook of Lumped in plain files. Under “documents” each document has its history and one file for each revision; under “readings” each series has its values as a table. Lumped reads it back as it was; it notices when something was changed.
plain-exists = { $file } is there already, and nothing is overwritten. Choose another name.
plain-unwritable = { $file } can't be written: { $problem }. No half file is left. Look at the folder and the room on the disk.
plain-unreadable = { $file } can't be read: { $problem }. Look at its permissions and at the disk.
plain-special = { $file } is no plain file. Links, pipes and devices are never followed. Put the file itself there.
plain-stranger = “{ $file }” does not belong to a notebook's plain files. Take it out, or choose the right folder; nothing was read.
plain-twice = “{ $file }” is there twice. Nothing was read. Take one out, or pack the folder anew.
plain-missing = “{ $file }” is missing. Copy the whole folder or archive again from where it was written.
plain-many = There are more than { $limit } files, more than Lumped reads at once. Nothing was read. Is it the right folder? A bundle (.json) has no such limit.
plain-too-large = At “{ $file }” more than { $limit } came out, more than Lumped reads at once. If you know where it comes from, lumped.notebook.files.read_contents(…, memory=…) in Python takes more.
plain-bomb = At “{ $file }” more than { $ratio } times the size of the archive came out, as from archives made to harm. Nothing was kept.
plain-archive = This is no archive that Lumped can open: { $problem }. Was it cut off on its way?
plain-archive-packing = “{ $file }” is packed in a way that Lumped does not open (method { $method }). Pack it anew in the usual way.
plain-archive-locked = “{ $file }” is encrypted. Unpack the archive with its password, and give Lumped the folder.
plain-archive-head = its table of contents is larger than { $limit }
plain-archive-no-end = its end is missing
plain-toml = “{ $file }” is not TOML as a notebook writes it: { $problem }. Was it changed?
plain-toml-heavy = “{ $file }” is larger or more entangled than a notebook writes. Nothing was read. Was it changed?
plain-body-marks = “{ $file }” should begin with kind = "{ $kind }" and schema = { $schema }, as its history says. Was it changed?
plain-csv = “{ $file }”, line { $line }: { $problem }. Was the table changed?
plain-csv-columns = it should have the columns { $columns }
plain-csv-long = the line is longer than a reading can be
plain-csv-number = number, moment or value is not written as a notebook writes it
plain-csv-formula = the remark could be taken for a formula; in front of it there must be an apostrophe
plain-csv-quotes = a quotation mark is open

## Proof that nothing was changed

proof-no-id = “{ $id }” is no id of a { $what }. Was the file changed?
proof-id-twice = The id { $id } is there twice. Was the file changed?
proof-empty = The document { $document } has no revision. Was the file changed?
proof-gap = At { $where } the number is { $found }: one is missing or out of order. Was the file changed?
proof-stray = At { $where } stands a revision that belongs elsewhere (kind “{ $found }”). Was the file changed?
proof-hash = At { $where } the body is not what was saved: its hash is another. Was the file changed?
proof-seal = At { $where } something is not what was saved: the seal is broken. Was the file changed?
proof-body-missing = At { $where } the body is missing. Was the file changed?
proof-body-in-removal = { $where } removes the document, and yet has a body. Was the file changed?
proof-restored = { $where } brings back revision { $found }, which is none before it. Was the file changed?
proof-moment = At { $where } stands a moment outside the years 1 to 9999. Was the file changed?
proof-not-finite = In { $where } a value is infinite. Leave the value out, and say why in the remark.
proof-unsaid = In { $where } reading { $number } has no value, and no remark says why. Was the file changed?
proof-columns = In { $where } the columns differ in length. Was the file changed?
proof-remark-stray = In { $where } a remark belongs to reading { $found }, which is not there. Was the file changed?
proof-stretches = In { $where } the stretches don't cover the readings: at reading { $expected } comes { $first }. Was the file changed?
