"""A whole notebook as files: one JSON bundle, a folder of TOML and CSV, or an archive of one; written and read back.

`write_contents` and `read_contents` choose by the name. What is read may come from anywhere, so it is weighed before
it is built, and proven before it is given back: whatever would do harm is refused in words.
"""

from lumped.notebook.files.bundle import bundle_schema, read_contents, write_contents

__all__ = ["bundle_schema", "read_contents", "write_contents"]
