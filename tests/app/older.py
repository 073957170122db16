"""A notebook as an older Lumped left it: it took what a newer one no longer reads."""

from dataclasses import replace

from lumped.app.notebooks import kinds
from lumped.notebook import Notebook, open_notebook

__all__ = ["older_notebook"]


def older_notebook(place) -> Notebook:
    """Open a notebook that takes every body."""
    return open_notebook(place, kinds=[replace(each, check=lambda body, name: None) for each in kinds()])
