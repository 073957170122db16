"""Wrong usage in words: what `argparse` finds wrong, as a sentence that says what to do instead."""

import argparse
import re
from typing import NoReturn

from lumped.errors import InputError

__all__ = ["Parser", "usage_error"]

_FOUND = (
    (r"unrecognized arguments: (?P<words>-.*)", "usage-unknown"),
    (r"unrecognized arguments: (?P<words>.*)", "usage-words"),
    (r"the following arguments are required: (?P<words>.*)", "usage-missing"),
    (r"argument (?P<option>.*?): invalid choice: '(?P<value>.*)' \(choose from (?P<known>.*)\)", "usage-choice"),
    (r"argument (?P<option>.*?): expected .*", "usage-no-value"),
    (r"argument (?P<option>.*?): invalid \w+ value: '(?P<value>.*)'", "usage-value"),
    (r"argument (?P<option>.*?): not allowed with argument (?P<other>.*)", "usage-together"),
    (r"(?:argument (?P<option>.*?): )?(?P<problem>.*)", "usage-other"),
)


class Parser(argparse.ArgumentParser):
    """A parser that says in a sentence what is wrong, and leaves it to the command line how to show it.

    Examples
    --------
    >>> try:
    ...     Parser(prog="lumped mix").parse_args(["--off"])
    ... except InputError as error:
    ...     print(error)
    “lumped mix” does not know “--off”. What it takes: “lumped mix --help”.
    """

    def error(self, message: str) -> NoReturn:
        """Raise what is wrong as an error that has a sentence."""
        raise usage_error(self.prog, message)


def usage_error(program: str, message: str) -> InputError:
    """Give the error that says what `argparse` says.

    Parameters
    ----------
    program : str
        The command with its verb.
    message : str
        In the words of `argparse`.
    """
    for pattern, code in _FOUND:
        if (found := re.fullmatch(pattern, message, re.DOTALL)) is not None:
            said = {key: (value or "").replace("'", "") for key, value in found.groupdict().items()}
            return InputError(code, program=program, **said)
    return InputError("usage-other", program=program, option="", problem=message)
