"""Prices for tests, invented: exact, and one that nobody knows well."""

from lumped.quantities import Value

PRICES = {
    key: Value.exact(price, "coins/kg")
    for key, price in {
        "plain-flour": 1.0, "tap-water": 0.0, "vegetable-oil": 2.0, "cream-of-tartar": 20.0, "table-salt": 0.5,
    }.items()
}  # fmt: skip
VAGUE = PRICES | {"cream-of-tartar": Value(mean=20.0, low=10.0, high=40.0, unit="coins/kg", spread="lognormal")}
