"""What holds for all tests: the same examples on every machine, and no clock."""

from hypothesis import settings

settings.register_profile("lumped", deadline=None, derandomize=True, database=None)
settings.load_profile("lumped")
