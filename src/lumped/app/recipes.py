"""A recipe as a page shows it: what its dough does, in full, with what one change would do and what would narrow it."""

import tomllib
from collections.abc import Callable
from typing import Any

from lumped.app.given import Given

__all__ = ["kneaded"]


def kneaded(given: Given, report: Callable[[float], None]) -> dict[str, Any]:
    """Work out the dough of a recipe and make all that a page shows of it; a worker of the pool does it.

    Parameters
    ----------
    given : Given
        The recipe.
    report : callable
        Told the share that is done.

    Returns
    -------
    dict
        `dough` as JSON shows it; `notes`, what is worth knowing of it; `batches`, what was learnt of it, in words;
        `steps`, `narrower` and `what_if` (key, words and figure); `ingredients` (name and what is added by feel);
        `cautions`; `method`, `temperature`, `story`.
    """
    from lumped.app.labels import shop_of
    from lumped.app.own import kneading_of, recipe_of, taught
    from lumped.dough import knead
    from lumped.dough.blocking import blocking_of
    from lumped.dough.safety import caution
    from lumped.dough.what_if import what_if
    from lumped.quantities import short_text
    from lumped.texts import say

    recipe, shop = recipe_of(given), shop_of(given)
    own = taught(given, recipe)
    learnt = own.lessons.calibration
    dough = knead(recipe, shop, learnt, own.lessons.fit)
    report(0.4)
    against = blocking_of(kneading_of(given), shop, learnt)
    changes = what_if(recipe, shop, learnt) if against is None else against.changes
    document = tomllib.loads(given.text)
    report(1.0)
    return {
        "dough": dough.as_dict(),
        "notes": [*(against.words if against else ()), *dough.notes],
        "batches": list(own.words),
        "steps": [(each.key, each.words, each.value.text()) for each in (*dough.reasons, *dough.facts)],
        "narrower": [
            (each.measurement, each.words,
             say("web-narrower", share=f"{100 * each.share:.0f}", factor=short_text(each.factor_left)))
            for each in dough.influences
        ],
        "what_if": [
            (each.key, each.words, say("what-if-factor", factor=each.factor.text())) for each in changes
        ],
        "ingredients": [
            (shop.find(each["ingredient"]).name, each.get("as_needed_g")) for each in document["ingredients"]
        ],
        "cautions": [*dough.cautions, caution("rules").brief],
        "method": document.get("method", {}).get("cooked", "pot"),
        "temperature": say("web-temperature", degrees=f"{document.get('temperature_degC', 20):g}"),
        "story": str(document.get("story", "")),
    }  # fmt: skip
