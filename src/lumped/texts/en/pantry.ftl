# Ingredients.

pantry-negative = { $where }: { $row } is { $value } per cent. A share can't be negative; look at the label again.
pantry-sum = { $where }: what it is made of sums to { $total } per cent instead of 100. Look for a row that is missing or wrong.
