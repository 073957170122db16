### The notebook: what was written and measured.

body-holds = A document can't hold { $value } ({ $where }). It holds tables, lists, text, true, false and numbers: no dates (write them as text), no empty values (leave the key out), whole numbers up to 9007199254740991.
document-form = The form of a document is a whole number from 1 on, not { $form }.
body-reserved = A body can't hold “{ $key }” at its top: that is told beside it. Take it out.
body-too-large = A document may be { $limit } long; this one is longer. Split it.
body-too-deep = A document may be nested { $limit } deep; this one is deeper. Put less inside one another.
reference-unreadable = “{ $text }” is no reference. One has the form id@hash, as “lumped notebook history --json” tells it.
moment-unreadable = “{ $text }” is no moment. Write it like 2026-05-09T14:30:00Z.
notebook-address = A notebook can't lie at { $address }. Give a file, a folder, or an address that begins with postgresql://.
notebook-newer-schema = This { $kind } was written by a newer Lumped (form { $schema }; this one reads up to form { $known }). It is kept untouched. Open it with the newer Lumped.

notebook-not-there = There is no notebook at { $place } yet. It begins with the first thing you save.
notebook-busy = Another program is writing in the notebook { $place } and does not let go. Nothing was written. Wait a moment and try again.
notebook-read-only = The notebook { $place } can be read, not written: its disk or folder is write-protected. Nothing was written. Allow writing there, or take a copy to another folder.
notebook-read-only-old = The notebook { $place } was written by an older Lumped and has to be brought up to date, but its disk or folder is write-protected. Copy it to a folder where you may write, and open it there.
notebook-full = The disk that holds the notebook { $place } is full. What was acknowledged is safe; this was not written. Make room and try again.
notebook-gone = The notebook is no longer at { $place }: the file or its folder was removed, renamed, replaced or unplugged. Nothing more is written. Bring it back, or open another.
notebook-forked = The notebook { $place } was in use when this program was forked from another, so it can't be used here without harm. Open it in the new program only, or fork before anything is written.
notebook-closed = The notebook { $place } can't be read: its file or folder does not let you. Look at its permissions.
notebook-disk = The disk that holds the notebook { $place } failed ({ $problem }). Nothing is acknowledged that is not on it. Look at the disk, then try again.
notebook-damaged = The notebook { $place } is damaged. Keep the file as it is, and go back to the newest one in the folder “backups”; “lumped notebook verify” tells what is wrong.
notebook-not-one = { $place } is no notebook of Lumped. It is left untouched; choose another place.
notebook-newer = The notebook { $place } was written by a newer Lumped (layout { $layout }; this one knows up to { $known }). It is left untouched. Open it with the newer Lumped.
notebook-unreachable = The server of the notebook { $place } does not answer. Is it running, and is the address right?
notebook-no-entry = The server of the notebook { $place } does not let you in. Check name and password.
notebook-no-rights = The server of the notebook { $place } does not give you the right to write there. Nothing was written. Ask whoever keeps it.
notebook-no-database = The server of the notebook { $place } has no such database. Ask whoever keeps it to make one.
notebook-trouble = The notebook { $place } can't be used: { $problem }

document-kindless = A document must say what kind it is, such as “recipe” or “note”.
document-changes-kind = “{ $title }” is a { $found } in this notebook, and can't become a { $kind }. Save it as a document of its own.
link-dead = “{ $name }” refers to { $reference }, which is not in this notebook. Save that first.
series-unknown = There is no series { $series } in this notebook. “lumped notebook list --series” shows what there is.

notebook-no-room = The notebook { $place } can't be begun: { $problem }. Choose another folder, or look at its permissions.
document-unknown = There is no “{ $name }” in this notebook. “lumped notebook list” shows what there is.
document-ambiguous = “{ $name }” could be { $count } documents: { $ids }. Name one by the beginning of its id.
document-moved-on = “{ $title }” has gone on meanwhile: { $who } saved revision { $number }. Look at it, then save again.
revision-unknown = “{ $name }” has no revision { $number }. “lumped notebook history” shows which there are.
revision-removed = Revision { $number } of “{ $title }” is its removal: there is nothing in it. Restore an earlier one.
document-removed = “{ $title }” is removed already. Restore brings any of its revisions back.
restore-removal = Revision { $number } of “{ $title }” is its removal and can't be brought back. Choose an earlier one.
compare-kinds = A { $one } and a { $other } can't be compared. Choose two of one kind.
series-unsaid = A series must say its { $what }: what is measured, with what, and how.
readings-none = There are no readings here. Give at least one.
readings-lengths = { $values } values and { $moments } moments were given. Give one moment for each value.
readings-infinite = Reading no. { $number } is infinite. Leave its value out, and say why in a remark (“over range”).
readings-unsaid = Reading no. { $number } has no value. Say why in a remark (“over range”, “fell off”).
readings-unreadable = These are not all numbers: { $problem }. Give a row of numbers, and not a number (nan) where there is none.
readings-remark = The remark at { $place } belongs to none of the { $count } readings. Remarks are placed by whole numbers from 0 on.
readings-moments = These can't be taken for moments: { $problem }. Give datetimes, or whole microseconds since 1970 (UTC).
recorder-closed = This recorder was closed and takes no more readings. Begin another one.
readings-waiting = { $count } readings could not be written and are still in memory. { $problem }

difference-changed = { $where }: { $before } → { $after }
difference-new = { $where }: new, { $after }
difference-gone = { $where }: taken out, was { $before }
difference-number = no. { $number }
difference-order = order
difference-empty = empty
difference-yes = yes
difference-no = no

unsound-file = The file itself is damaged: { $problem }
unsound-numbers = Document { $document }: a revision is missing.
unsound-unreadable = What is written in { $where } can't be read: { $problem }
unsound-search = Document { $document }: the search does not know its words. Nothing of it is lost; saved or restored again it will be found.
unsound-id = The notebook has { $count } ids of its own; it should have one.
unsound-hash = Document { $document }, revision { $number }: what it holds is not what was saved; its hash differs.
unsound-seal = “{ $title }”, revision { $number } ({ $document }): who, when, title or links are not what was saved; its seal differs.
unsound-link = “{ $name }” refers to { $reference }, which is not here.
unsound-series = Series “{ $title }” ({ $id }): its description is not what was saved; its seal differs.
unsound-count = Series “{ $title }” ({ $id }): { $there } readings are there, { $told } were acknowledged.
unsound-stretches = Series “{ $title }” ({ $id }): the seal of some readings is missing.
unsound-stretch = Series “{ $title }” ({ $id }): readings { $first } to { $last } are not what was saved; their seal differs.
take-in-apart = “{ $title }” has gone on differently here and there, from revision { $number } on. Nothing was taken in. Take it into a notebook of its own (--notebook other.sqlite), and save from there what you want.
take-in-apart-series = The series “{ $title }” has gone on differently here and there. Nothing was taken in. Take it into a notebook of its own (--notebook other.sqlite).
