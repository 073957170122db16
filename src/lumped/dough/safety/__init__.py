"""Who may touch a dough, who must not eat it, and what to mind.

Everything is counted from what went into the bowl: allergens by ingredient, salt and other substances by their atoms,
against doses and limits of the handbook with their sources and their days. Nothing here is a certificate or a doctor;
local rules and qualified people come first.
"""

from lumped.dough.safety.allergens import Allergens, allergens_of
from lumped.dough.safety.caution import Caution
from lumped.dough.safety.cautions import cautions_on
from lumped.dough.safety.contents import element_share
from lumped.dough.safety.diets import DIETS, Remark, Suits, remarks_on, suits
from lumped.dough.safety.doses import Dose, Helping, doses, helpings, near_doses, salt_share
from lumped.dough.safety.known import KNOWN, caution, cautions_of
from lumped.dough.safety.metals import Migration, amount_at_limit, limits_on, migration
from lumped.dough.safety.needs import diet_named, known_needs, need_in_words, need_named
from lumped.dough.safety.table import Mend, Reason, TableFit, fit_for_table
from lumped.dough.safety.weights import child_mass, dog_mass, salt_of_a_day

__all__ = [
    "DIETS",
    "KNOWN",
    "Allergens",
    "Caution",
    "Dose",
    "Helping",
    "Mend",
    "Migration",
    "Reason",
    "Remark",
    "Suits",
    "TableFit",
    "allergens_of",
    "amount_at_limit",
    "caution",
    "cautions_of",
    "cautions_on",
    "child_mass",
    "diet_named",
    "dog_mass",
    "doses",
    "element_share",
    "fit_for_table",
    "helpings",
    "known_needs",
    "limits_on",
    "migration",
    "near_doses",
    "need_in_words",
    "need_named",
    "remarks_on",
    "salt_of_a_day",
    "salt_share",
    "suits",
]
