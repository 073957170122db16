"""Words to search by: without case and accents, the same on every database."""

from lumped.notebook.canonical import read_canonical
from lumped.texts.folding import folded

__all__ = ["words_of"]


def words_of(title: str, body: str | None) -> str:
    r"""Give all text in a document (not its keys and numbers), folded; `body` is its canonical form.

    Examples
    --------
    >>> words_of("Quay", '{"lumps":[{"name":"East","size_mm":3}]}')
    'quay\neast'
    """
    found, waiting = [title], [read_canonical(body)] if body else []
    while waiting:
        value = waiting.pop(0)
        if isinstance(value, str):
            found.append(value)
        elif isinstance(value, dict | list):
            waiting[:0] = value.values() if isinstance(value, dict) else value
    return "\n".join(dict.fromkeys(map(folded, found)))
