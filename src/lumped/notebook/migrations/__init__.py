"""The steps from each layout of the tables to the next, for both databases."""
