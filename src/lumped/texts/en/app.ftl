### What the uses of Lumped say when they fail.

file-ending = “{ $file }”: the name of such a file ends in { $endings }. Choose another name.
file-there = “{ $file }” is there already and is not written over. Choose another name.
file-unwritable = “{ $file }” can't be written: { $problem }. Choose another folder, or look at its permissions.
setting-unknown = { $where } sets “{ $name }”, which is no setting. There are: { $known }.
setting-port = { $where } is { $value }, which is no port. Choose a number from 1024 to 65535, or 0 for any free one.
setting-choice = { $where } is { $value }, but { $name } must be one of: { $choices }.
recipe-not-along = { $file } refers to the recipe “{ $recipe }”, which did not come along. Choose the recipe file together with the sculpture, or take “I don't know mine”; in a file that is unknown = "conducting".
batch-recipe-not-along = { $file } refers to the recipe “{ $recipe }”, which did not come along. Choose the recipe file together with the batch: a batch teaches of its recipe only.
work-broke-off = The computation broke off. Try again; if it stays so, start Lumped anew.
export-ending = “{ $file }”: a notebook is not written as “{ $ending }”. End the name in .json for one bundle or .zip for packed plain files, or give a name without an ending for a folder of them.
