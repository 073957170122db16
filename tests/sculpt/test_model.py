"""The sculpture file's model."""

from lumped.dough import recipe_schema
from lumped.quantities import suffix_of
from lumped.sculpt import sculpture_schema

WITHOUT_UNIT = {"schema", "towards"}  # a version, a direction


def holds_numbers(schema: dict) -> bool:
    if schema.get("type") in ("number", "integer"):
        return True
    inner = [schema.get("items"), *schema.get("anyOf", ()), *schema.get("prefixItems", ())]
    return any(holds_numbers(each) for each in inner if isinstance(each, dict))


def test_every_number_in_a_file_says_its_unit_by_its_key():
    for schema in (sculpture_schema(), recipe_schema()):
        tables = [schema, *schema.get("$defs", {}).values()]
        numbers = {
            key for table in tables for key, inner in table.get("properties", {}).items() if holds_numbers(inner)
        } - WITHOUT_UNIT
        assert numbers
        assert [key for key in sorted(numbers) if suffix_of(key) is None] == []
