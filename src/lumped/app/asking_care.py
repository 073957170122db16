"""Who may touch a dough and what to mind, as a worker tells a page: words, figures, each with its source."""

from collections.abc import Callable, Iterable, Mapping
from datetime import date, datetime
from typing import TYPE_CHECKING, Any

from lumped.app.asking import Question
from lumped.app.care import tended
from lumped.app.care_rows import dose_rows, metal_rows, packets_to_read, standing
from lumped.app.given import Given
from lumped.app.labels import shop_of
from lumped.app.own import recipe_of
from lumped.app.sources import told_of
from lumped.errors import InputError
from lumped.reference import handbook
from lumped.texts import say

if TYPE_CHECKING:
    from lumped.app.care import Care, CareTable

__all__ = ["cared"]

Report = Callable[[float], None]
_AGE = 2.0


def cared(question: Question, report: Report) -> dict[str, Any]:
    """Say who may touch a dough, and which doughs may stand on its table.

    Parameters
    ----------
    question : Question
        The recipe and the others on the table; said are their `names`, the `needs` of children, the day whose law
        counts (`on`), `age` and `dog` as somebody wrote them.

    Returns
    -------
    dict
        Of the table: `standing` (dough, state, words, because of what), `whole_table`, `mends` (number of the dough,
        its name, diets, without), `packets`. Of the dough: `allergens`, `diets`, `eaters`, `doses`, `metals`,
        `cautions`, `remarks`, and each figure's and caution's source.
    """
    said, givens = question.said, (question.given, *question.others)
    age, dog = _figure(said["age"]), _figure(said["dog"])
    own = {title: text for given in givens for title, text in given.labels.items()}
    shop = shop_of(Given(name="", text="", labels=own))
    found = tended(
        [recipe_of(given, shop) for given in givens], [given.name for given in givens], shop, names=said["names"],
        needs=said["needs"], on=_day(said["on"]), age=_AGE if age is None else age, dog=dog,
    )  # fmt: skip
    report(1.0)
    told = _of_table(found) | _of_dough(found.doughs[0], found)
    if told["limited"]:
        gluten = handbook().row("limits", "gluten-free", "highest").value
        told["sources"]["gluten-limit"] = told_of(say("web-care-gluten-limit"), gluten.provenance)
    return told


def _of_table(found: "CareTable") -> dict[str, Any]:
    numbers = {each.name: number for number, each in enumerate(found.doughs)}
    rows = standing(found) if found.fit.needs else []
    packets = packets_to_read(found)
    limit = f"{handbook().row('limits', 'gluten-free', 'highest').printed:g} mg"
    return {
        "limited": any(limit in words for words in found.fit.words),
        "standing": [(each.dough, each.state, each.words, each.because) for each in rows],
        "whole_table": [*found.fit.words, *([say("care-mend-look")] if found.fit.mends else [])],
        "mends": [(numbers[each.dough], each.dough, list(each.diets), list(each.without)) for each in found.fit.mends],
        "packets": [
            say("care-mend-packet", dough=dough, ingredients=", ".join(each)) for dough, each in packets.items()
        ],
    }


def _of_dough(dough: "Care", found: "CareTable") -> dict[str, Any]:
    eaters, rows = found.eaters, dose_rows(dough)
    lists = (("eu", dough.allergens.eu), ("us", dough.allergens.us), ("traces", dough.allergens.traces))
    return {
        "allergens": [(say(f"care-{where}"), _named(there, dough.names)) for where, there in lists],
        "diets": [(diet, each.fits, each.why) for diet, each in dough.diets.items()],
        "eaters": say("heading-care-doses", age=f"{eaters.age:g}", child=f"{eaters.child.mean:.3g}",
                      dog=f"{eaters.dog.mean:.3g}"),
        "doses": [(row.key, row.words, row.amount, row.held, row.source) for row in rows],
        "metals_heading": say("heading-care-metals", date=found.on.isoformat()),
        "metals": metal_rows(dough),
        "cautions": [(f"caution-{k}", each.severity, each.words) for k, each in enumerate(dough.cautions)],
        "remarks": [each.words for each in dough.remarks],
        "sources": {row.key: told_of(row.words, row.provenance, note=row.note) for row in rows}
        | {f"caution-{k}": told_of(say("web-caution-source"), each.provenance)
           for k, each in enumerate(dough.cautions)},
    }  # fmt: skip


def _day(text: str) -> date:
    """Read a day as an address or a field of a page tells it."""
    try:
        return datetime.strptime(text.strip(), "%Y-%m-%d").date()
    except ValueError:
        raise InputError("web-care-no-day", text=text[:60]) from None


def _figure(text: str) -> float | None:
    """Read a figure as a person writes it; nothing where nothing is said."""
    from lumped.quantities import read_number

    return read_number(text) if text.strip() else None


def _named(there: Mapping[str, Iterable[str]], names: Mapping[str, str]) -> list[str]:
    return [f"{name} ({', '.join(names[key] for key in keys)})" for name, keys in there.items()]
