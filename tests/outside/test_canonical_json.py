"""The canonical form of a body and its hash, against the standard.

RFC 8785, JSON Canonicalization Scheme (JCS), June 2020: the example of section 3.2.2 (output in 3.2.4), the order of
keys in section 3.2.3, and numbers of appendix B.
"""

import hashlib
import json
import struct

import pytest

from lumped.notebook import canonical_text, hash_of

SECTION_3_2_2 = r"""{
  "numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
  "string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/",
  "literals": [true, false]
}"""
SECTION_3_2_4 = (
    '{"literals":[true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],'
    r'"string":"€$\u000f\nA' + "'" + r'B\"\\\\\"/"}'
)  # the standard's example, without its null: a body holds none


def test_the_example_of_the_standard_comes_out_as_printed():
    assert canonical_text(json.loads(SECTION_3_2_2)) == SECTION_3_2_4


def test_keys_are_sorted_by_their_utf16_units():
    keys = ["\u20ac", "\r", "\ufb33", "1", "\U0001f600", "\u0080", "\u00f6"]
    text = canonical_text(dict.fromkeys(keys, 0))
    assert list(json.loads(text)) == ["\r", "1", "\u0080", "\u00f6", "\u20ac", "\U0001f600", "\ufb33"]


@pytest.mark.parametrize(
    ("bits", "text"),
    [
        ("0000000000000000", "0"),
        ("8000000000000000", "0"),
        ("0000000000000001", "5e-324"),
        ("7fefffffffffffff", "1.7976931348623157e+308"),
        ("4340000000000000", "9007199254740992"),
        ("44b52d02c7e14af5", "9.999999999999997e+22"),
        ("44b52d02c7e14af6", "1e+23"),
        ("444b1ae4d6e2ef50", "1e+21"),
        ("444b1ae4d6e2ef4f", "999999999999999900000"),
        ("3eb0c6f7a0b5ed8d", "0.000001"),
        ("3eb0c6f7a0b5ed8c", "9.999999999999997e-7"),
        ("41b3de4355555555", "333333333.3333333"),
    ],
)
def test_numbers_are_written_as_in_the_appendix(bits, text):
    (number,) = struct.unpack(">d", bytes.fromhex(bits))
    assert canonical_text({"n": number}) == f'{{"n":{text}}}'


def test_the_hash_is_sha_256_of_that_text():
    assert hash_of({"a": 1.0}) == hashlib.sha256(b'{"a":1}').hexdigest()
