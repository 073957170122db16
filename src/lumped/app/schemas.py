"""What may stand in a file, as JSON Schema."""

from typing import Any, Literal

__all__ = ["schema"]


def schema(kind: Literal["sculpture", "recipe", "batch", "ingredient", "bundle"]) -> dict[str, Any]:
    """Give the JSON Schema of a kind of file.

    Parameters
    ----------
    kind : {"sculpture", "recipe", "batch", "ingredient", "bundle"}
        Which kind; a bundle is a notebook in one JSON file.
    """
    if kind == "bundle":
        from lumped.notebook.files import bundle_schema

        return bundle_schema()
    if kind == "sculpture":
        from lumped.sculpt import sculpture_schema

        return sculpture_schema()
    if kind == "batch":
        from lumped.dough.batch import batch_schema

        return batch_schema()
    if kind == "ingredient":
        from lumped.pantry.label_file import label_schema

        return label_schema()
    from lumped.dough import recipe_schema

    return recipe_schema()
