"""The ingredients there are: those of the handbook or of a shop, and those of some ingredient files."""

from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from lumped.pantry import Pantry

__all__ = ["shop_with"]


def shop_with(labels: Sequence[Path], shop: "Pantry | None" = None) -> "Pantry":
    """Give the handbook's ingredients, or those of a shop, with those of some ingredient files.

    Raises
    ------
    InputError
        If a file can't be read.
    """
    from lumped.pantry import pantry

    shop = shop or pantry()
    for each in labels:
        from lumped.pantry.label_file import read_label_toml
        from lumped.pantry.label_table import read_labels_csv

        added = read_labels_csv(each, shop) if each.suffix.lower() == ".csv" else (read_label_toml(each, shop),)
        shop = shop.with_added(*added)
    return shop
