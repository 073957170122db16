### The command line.

cli-lumped = Dough that carries current, dough that blocks it: from a recipe and a sculpture to what each part will do, and why.
cli-epilog = Begin with: lumped check demo/harbour-light.toml
cli-verbs = verbs
cli-check = say what each part of a sculpture will do, and why
cli-dough = work out a recipe: water, salt, resistivity, and the reasons between
cli-ports = give the conductances between all leads of a sculpture
cli-parts = list the parts and leads that a sculpture file may name
cli-schema = print the JSON Schema of a sculpture, recipe, batch or ingredient file, or of a notebook in one bundle
cli-serve = open the app on this computer
cli-sculpture = a sculpture file (TOML)
cli-recipe = a recipe file (TOML), or the title of a recipe in the notebook
cli-json = print JSON, in SI units
cli-pdf = write the printed sheet
cli-picture = write a picture (.svg or .png)
cli-paper = size of the sheet
cli-effort = how finely to compute
cli-port = port on this computer
cli-computing = Computing
cli-written = Written: { $file }
cli-serving = Lumped is at { $address } – Ctrl-C stops it.

invented-mark = { "  " }(invented)
column-part = part
column-does = what it does
column-volts = volts
column-milliamperes = milliamperes
column-step = step
column-figure = figure
column-key = key
column-name = name
column-legs = legs, plus first
column-port-mS = mS
heading-why = Why
heading-volts = Where the volts go
heading-findings = Worth knowing
heading-cautions = Be careful
heading-computed = How it was computed
budget = Of the { $given } V that the pack gives, the parts keep { $parts } V; passing from metal to dough and back takes { $metal } V, the dough close round the legs { $dough_leads } V, the way through the dough { $dough_path } V, the pack itself { $pack } V.
ports-computed = { $unknowns } cells of { $pitch } mm; error of the solution { $error }.
ports-spread = On a shifted grid the conductances differ by at most { $spread } %.

## lumped notebook

cli-notebook = keep what you write and measure: save, look back, compare, restore, back up
cli-notebook-about = The notebook keeps every state of every sculpture and recipe, what really happened, and every reading. A save adds; nothing is overwritten.
cli-notebook-begin = Begin with: lumped notebook save demo/harbour-light.toml
cli-notebook-json = print JSON: ids and hashes in full, moments in UTC
cli-notebook-place = another notebook: a file, a folder, or an address that begins with postgresql:// (else LUMPED_NOTEBOOK, else the usual file)
cli-notebook-who = who saves (else LUMPED_WHO, else the name of this computer's user)
cli-notebook-where = say where the notebook lies and what is in it
cli-notebook-list = list what is in it, the newest first
cli-notebook-show = print a document as the file that it could have been
cli-notebook-history = list all revisions of a document
cli-notebook-compare = tell how two revisions differ
cli-notebook-save = save a sculpture, recipe, batch or ingredient file, or a table of ingredients (CSV); it goes on with the one document of that title
cli-notebook-restore = bring back a revision: it is saved again as the newest
cli-notebook-remove = remove a document; its revisions stay, and each can be restored
cli-notebook-readings = print the readings of a series
cli-notebook-backup = copy the notebook, also while others write in it
cli-notebook-verify = hold everything in it against its hashes; ends with 1 if something is wrong
cli-notebook-export = write everything out to plain files
cli-notebook-import = take in what was exported; what is here stays as it is
cli-notebook-words = only documents with all of these words
cli-notebook-kind = only this kind: sculpture, recipe, outcome, …
cli-notebook-series = series of readings instead of documents
cli-notebook-removed = those that were removed
cli-notebook-name = a title, an id, or the beginning of one
cli-notebook-name-at = a title or id, then @ and a number for another revision than the newest
cli-notebook-other = compared with this; the revision before if left out
cli-notebook-file = a sculpture, recipe, batch or ingredient file (TOML), or a table of ingredients (CSV); several are saved one after the other, what others name first
cli-notebook-new = begin a new document, even if there is one of that title
cli-notebook-as = go on with this document, even if the title in the file is another
cli-notebook-derived = what it was made from
cli-notebook-number = number of the revision
cli-notebook-note = why
cli-notebook-series-name = what is measured, an id, or the beginning of one
cli-notebook-most = give no more than this many, chosen so that no extreme is lost ({ $rows } in a table, all in JSON)
cli-notebook-from = only from this moment on, such as 2026-05-09T14:30; local time unless it tells its zone
cli-notebook-until = only before this moment
cli-notebook-backup-file = a file that is not there yet (else in the folder “backups” beside the notebook)
cli-notebook-export-to = something that is not there yet: a folder, or a name that ends in .zip or .json
cli-notebook-import-from = a folder, a .zip or a .json that was exported, or the file of another notebook

column-title = title
column-kind = kind
column-revision = revision
column-saved = saved
column-by = by
column-what = what
column-id = id
column-measured = measured
column-unit = unit
column-instrument = instrument
column-begun = begun
column-number = no.
column-when = when
column-value = value
column-remark = remark

day-said = “{ $text }” is no day that Lumped can read. Write year, month and day, as in 2026-05-09, or leave --on out for today.
moment-said = “{ $text }” is no moment. Write it like 2026-05-09 or 2026-05-09T14:30
moment-far = { $count } µs since 1970
notebook-was-older = The notebook was written by an older Lumped. It was backed up to { $backup }, then brought up to date.
notebook-how-to-begin = Save a file: lumped notebook save demo/harbour-light.toml
notebook-list-empty = Nothing is in the notebook yet. Save a file: lumped notebook save demo/harbour-light.toml
notebook-list-none-found = Nothing in the notebook has all of that. Try fewer words, or look through all: lumped notebook list
notebook-list-none-removed = Nothing was removed from the notebook.
notebook-document = { $title } ({ $kind }, { $id })
notebook-compared = { $before }, revision { $number } → { $after }, revision { $other }
notebook-compared-revisions = { $title }, revision { $number } → { $other }
notebook-compared-same = { $heading }: they say the same.
notebook-compare-first = “{ $title }” is at its first revision, and there is none before it. Name two documents, or compare after the next save.
notebook-what-removed = removed
notebook-what-restored = revision { $number } brought back
notebook-what-renamed = was called “{ $title }”
notebook-what-derived = made from { $id }
notebook-saved = Saved: “{ $title }”, revision { $number }, in { $place }
notebook-saved-new = Saved: “{ $title }”, a new document, in { $place }
notebook-heading-links = It was saved with
notebook-link = { $name }: “{ $title }”, revision { $number }
notebook-restored = Restored: revision { $old } of “{ $title }” is now also revision { $number }, the newest.
notebook-removed = Removed: “{ $title }”. It can be brought back: lumped notebook restore { $id } { $number }
notebook-remove-one = Revision { $number } of “{ $title }” can't be removed alone: what was written stays. Name the document without @ to remove it as a whole.
notebook-most = “{ $text }” is no count. Write a whole number from 4 on
notebook-no-series = There are no series of readings here. One is begun from Python; docs/notebook.md shows how.
notebook-no-readings = There are no readings in this time.
notebook-series = { $title } ({ $instrument }; { $method })
notebook-thinned = { $shown } of { $of } readings, chosen so that no extreme is lost. More: --most { $of }; all: --json
notebook-series-unknown = There is no series “{ $name }” in this notebook. “lumped notebook list --series” shows what there is.
notebook-series-ambiguous = “{ $name }” could be { $count } series: { $ids }. Name one by the beginning of its id.
notebook-yes = yes
notebook-no = no
notebook-size = { $kilobytes } kB
notebook-where-place = notebook
notebook-where-folder = folder
notebook-where-there = is there
notebook-where-size_bytes = size
notebook-where-read_only = write-protected
notebook-where-documents = documents
notebook-where-removed = removed
notebook-where-revisions = revisions
notebook-where-series = series
notebook-where-layout = layout
notebook-backed-up = Backed up: { $file }
notebook-sound = Sound: everything in { $place } is as it was written.
notebook-unsound = Not sound: something in { $place } is not as it was written. Keep the file as it is, and look for a backup that is sound.
notebook-verified = Looked at { $documents ->
    [one] 1 document
   *[other] { $documents } documents
}, { $revisions ->
    [one] 1 revision
   *[other] { $revisions } revisions
}, { $series } series, { $readings ->
    [one] 1 reading
   *[other] { $readings } readings
}.
notebook-heading-problems = What is wrong
notebook-taken = Taken in: { $documents ->
    [one] 1 document
   *[other] { $documents } documents
}, { $revisions ->
    [one] 1 revision
   *[other] { $revisions } revisions
}, { $series } series, { $readings ->
    [one] 1 reading
   *[other] { $readings } readings
}. Here before: { $already ->
    [one] 1 revision
   *[other] { $already } revisions
}.
