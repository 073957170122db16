"""Plain files in one zip archive.

Before an archive is opened, its table of contents is looked at; before a member is, its name, kind and packing are.
Members are read in pieces that are counted, so that one small archive can't fill memory or disk; nothing is ever
unpacked to the disk, and an archive in an archive is a stranger.
"""

import io
import stat
import struct
import zipfile
import zlib
from collections.abc import Iterator
from contextlib import contextmanager
from typing import BinaryIO

from lumped.errors import InputError
from lumped.notebook.files.limits import Budget
from lumped.notebook.files.trees import FILES_LIMIT, IGNORED, Sink, Source, refuse_stranger
from lumped.notebook.lines import shown
from lumped.texts import say

__all__ = ["ArchiveSink", "ArchiveSource"]

HEAD_LIMIT = 64_000_000  # bytes of the table of contents: 250,000 names of 250 letters
DENSE = 50  # a file that packs better than this is not packed at all, so that no notebook looks like a trap
_ROOM = 1 << 16


class ArchiveSink(Sink):
    """A new archive to write plain files into; the same notebook gives the same bytes.

    Parameters
    ----------
    file : BinaryIO
        Where the archive is written.
    """

    def __init__(self, file: BinaryIO) -> None:
        self._archive = zipfile.ZipFile(file, "w")

    def __enter__(self) -> "ArchiveSink":
        return self

    def __exit__(self, *_: object) -> None:
        self._archive.close()

    @contextmanager
    def file(self, name: str) -> Iterator[BinaryIO]:
        """Open a new member for writing."""
        with self._archive.open(_member(name, zipfile.ZIP_DEFLATED), "w", force_zip64=True) as file:
            yield file  # type: ignore[misc]

    def put(self, name: str, content: bytes) -> None:
        """Write a small file."""
        dense = len(content) > DENSE * len(zlib.compress(content))
        self._archive.writestr(_member(name, zipfile.ZIP_STORED if dense else zipfile.ZIP_DEFLATED), content)


def _member(name: str, packing: int) -> zipfile.ZipInfo:
    member = zipfile.ZipInfo(name)  # dated 1980: the seals tell when, and nothing else changes the bytes
    member.compress_type = packing
    member.create_system = 3
    member.external_attr = (stat.S_IFREG | 0o644) << 16
    return member


class ArchiveSource(Source):
    """An archive with plain files.

    Parameters
    ----------
    file : BinaryIO
        The archive; it stays open as long as the source is used.
    budget : Budget
        Counts what is read.

    Raises
    ------
    InputError
        If it can't be opened, or a name, kind or packing in it is not one that a notebook writes.
    """

    def __init__(self, file: BinaryIO, budget: Budget) -> None:
        with _in_words():
            budget.archive = _refuse_large_head(file)
            self._archive = zipfile.ZipFile(file)
        self._members = dict[str, zipfile.ZipInfo]()
        for member in self._archive.infolist():
            name = member.orig_filename
            if name.endswith("/"):
                _refuse_strange_folder(name)
            elif name.rpartition("/")[2] not in IGNORED:
                _refuse_trick(member)
                if name in self._members:
                    raise InputError("plain-twice", file=shown(name, 120))
                self._members[name] = member
        super().__init__(self._members, budget)

    @contextmanager
    def opened(self, name: str) -> Iterator[BinaryIO]:
        """Open a member."""
        with _in_words(), self._archive.open(self._members[name]) as file:
            yield io.BufferedReader(file, _ROOM)  # type: ignore[type-var]


def _refuse_large_head(file: BinaryIO) -> int:
    """See that the table of contents is small; give the size of the archive. [bytes]"""
    size = file.seek(0, io.SEEK_END)
    file.seek(max(0, size - 22))
    end = file.read(22)
    if len(end) < 22 or end[:4] != b"PK\x05\x06" or end[20:] != b"\0\0":
        raise InputError("plain-archive", problem=say("plain-archive-no-end"))
    count, head = struct.unpack("<HL", end[10:16])
    file.seek(max(0, size - 22 - 20 - 56))
    wide = file.read(56 + 20)
    if len(wide) == 76 and wide[56:60] == b"PK\x06\x07":
        count, head = max((count, head), struct.unpack("<QQ", wide[32:48]))
    if count > FILES_LIMIT:
        raise InputError("plain-many", limit=FILES_LIMIT)
    if head > HEAD_LIMIT:
        problem = say("plain-archive-head", limit=f"{HEAD_LIMIT // 1_000_000} MB")
        raise InputError("plain-archive", problem=problem)
    return size


def _refuse_trick(member: zipfile.ZipInfo) -> None:
    name = member.orig_filename
    kind = stat.S_IFMT(member.external_attr >> 16)
    if kind not in (0, stat.S_IFREG):
        raise InputError("plain-special", file=shown(name, 120))
    refuse_stranger(name)
    if member.flag_bits & 0x1:
        raise InputError("plain-archive-locked", file=shown(name, 120))
    if member.compress_type not in (zipfile.ZIP_STORED, zipfile.ZIP_DEFLATED):
        raise InputError("plain-archive-packing", file=shown(name, 120), method=str(member.compress_type))


def _refuse_strange_folder(name: str) -> None:
    """A folder is taken if a file of the tree could lie in it."""
    for inside in ("0/0/history.toml", "0/history.toml", "history.toml", "0/series.toml", "series.toml"):
        try:
            refuse_stranger(name + inside)
        except InputError:
            continue
        return
    refuse_stranger(name)


@contextmanager
def _in_words() -> Iterator[None]:
    try:
        yield
    except InputError:
        raise
    except (zipfile.BadZipFile, zlib.error, struct.error, EOFError, OSError, ValueError, RuntimeError) as error:
        # RuntimeError: encrypted, or a way of packing that Python does not know; ValueError: offsets, names
        raise InputError("plain-archive", problem=shown(error, 120)) from None
