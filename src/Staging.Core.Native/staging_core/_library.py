"""The calls of staging_core.h, each with what it takes and what it gives, and their errors."""

from __future__ import annotations

import array
import ctypes
import enum
import os
import pathlib
import sys
from collections.abc import Sequence
from typing import Any, NamedTuple

try:
    import numpy
except ImportError:
    numpy = None  # type: ignore[assignment]

ABI_VERSION = 1

PROGRESS = ctypes.CFUNCTYPE(ctypes.c_int32, ctypes.c_int64, ctypes.c_int64, ctypes.c_void_p)

_TEXT, _HANDLE, _PLACE = ctypes.c_char_p, ctypes.c_void_p, ctypes.c_void_p
_INT32, _UINT64, _REAL = ctypes.c_int32, ctypes.c_uint64, ctypes.c_double

# What each call takes, and what it gives through a place of the caller; the place of the error comes last in all of them.
_CALLS: dict[str, tuple[list[Any], list[Any]]] = {
    "staging_stop_create": ([], [_HANDLE]),
    "staging_stop": ([_HANDLE], []),
    "staging_plan_parse": ([_TEXT], [_HANDLE]),
    "staging_plan_read": ([_TEXT], [_HANDLE]),
    "staging_plan_json": ([_HANDLE], [_PLACE]),
    "staging_review": ([_HANDLE, _INT32, _HANDLE], [_HANDLE]),
    "staging_review_verdict": ([_HANDLE], [_INT32]),
    "staging_review_json": ([_HANDLE], [_PLACE]),
    "staging_review_text": ([_HANDLE, _INT32], [_PLACE]),
    "staging_review_plan_text": ([_TEXT, _INT32], [_PLACE]),
    "staging_gap_table": ([_HANDLE, _INT32, _REAL], [_HANDLE]),
    "staging_flight_table": ([_HANDLE, _INT32, _REAL], [_HANDLE]),
    "staging_odds": ([_HANDLE, _INT32, _UINT64, _INT32, PROGRESS, _PLACE, _HANDLE], [_HANDLE]),
    "staging_odds_share": ([_HANDLE], [_REAL, _REAL, _REAL]),
    "staging_odds_json": ([_HANDLE], [_PLACE]),
    "staging_odds_text": ([_HANDLE], [_PLACE]),
    "staging_odds_table": ([_HANDLE], [_HANDLE]),
    "staging_table_size": ([_HANDLE], [_INT32, _INT32]),
    "staging_table_heading": ([_HANDLE, _INT32], [_PLACE, _PLACE]),
    "staging_table_column": ([_HANDLE, _INT32, _INT32, _PLACE, _PLACE], []),
}

_RANGES = {_INT32: (-(2**31), 2**31 - 1), _UINT64: (0, 2**64 - 1)}


class Named(enum.IntEnum):
    """A number of the library that prints as its name."""

    def __str__(self) -> str:
        return self.name

    def __format__(self, layout: str) -> str:
        return format(self.name, layout)


class Status(Named):
    """How a call ended."""

    OK = 0
    BAD_PLAN = 1
    BAD_MODEL = 2
    BAD_ARGUMENT = 3
    BAD_HANDLE = 4
    STOPPED = 5
    NO_MEMORY = 6
    FAULT = 7


class StagingError(Exception):
    """A call that failed; the text names the key or line, the value, its unit and its range."""

    def __init__(self, status: Status, text: str) -> None:
        super().__init__(text)
        self.status = status


class Column(NamedTuple):
    """One column of a table: its unit, "-" where there is none, and a number for each row."""

    unit: str
    values: Sequence[float | None] | Any


def call(name: str, *inputs: Any) -> list[Any]:
    """Makes a call and gives what came through its places."""
    takes, gives = _CALLS[name]
    for value, kind in zip(inputs, takes, strict=True):
        least, greatest = _RANGES.get(kind, (0, 0))
        if kind in _RANGES and not least <= value <= greatest:
            raise StagingError(Status.BAD_ARGUMENT, f"{value} is given to {name}; it must be between {least} and {greatest}.")
    places = [kind() for kind in gives]
    error = _PLACE()
    status = getattr(LIBRARY, name)(*inputs, *map(ctypes.byref, places), ctypes.byref(error))
    if status != Status.OK:
        raise StagingError(Status(status), taken(error.value) if error.value else Status(status).name)
    return [place.value for place in places]


def taken(place: int) -> str:
    """Copies a text and frees it."""
    try:
        return ctypes.string_at(place).decode()
    finally:
        LIBRARY.staging_text_free(place)


def given(text: str) -> bytes:
    """A text as the library takes it: it ends at the first zero, so none may be inside."""
    if "\0" in text:
        raise StagingError(Status.BAD_ARGUMENT, f"the text holds a zero at character {text.index(chr(0)) + 1}.")
    return text.encode("utf-8", "surrogatepass")  # half a pair is refused by the library


def columns(table: int) -> dict[str, Column]:
    """Copies a table, and releases it."""
    try:
        rows, count = call("staging_table_size", table)
        return dict(_column(table, i, rows) for i in range(count))
    finally:
        LIBRARY.staging_release(table)


def _column(table: int, column: int, rows: int) -> tuple[str, Column]:
    name, unit = map(taken, call("staging_table_heading", table, column))
    values, present = array.array("d", bytes(8 * rows)), array.array("B", bytes(rows))
    call("staging_table_column", table, column, rows, values.buffer_info()[0], present.buffer_info()[0])
    complete = all(present)
    if numpy is not None:
        numbers = numpy.frombuffer(values)
        return name, Column(unit, numbers if complete else numpy.ma.masked_array(numbers, numpy.frombuffer(present, "u1") == 0))
    return name, Column(unit, values if complete else [v if there else None for v, there in zip(values, present, strict=True)])


def _loaded() -> ctypes.CDLL:
    """Finds the library and makes sure that it is the one this package was written for."""
    end = {"darwin": "dylib", "win32": "dll"}.get(sys.platform, "so")
    beside = pathlib.Path(__file__).resolve().parent.parent / f"libstaging_core.{end}"
    path = os.environ.get("STAGING_CORE_LIBRARY") or str(beside)
    try:
        library = ctypes.CDLL(path)
    except OSError as error:
        raise ImportError(f"{path} cannot be loaded; STAGING_CORE_LIBRARY may name another file: {error}") from error
    if library.staging_abi_version() != ABI_VERSION:
        raise ImportError(f"{path} has ABI version {library.staging_abi_version()}; this package is for {ABI_VERSION}.")
    for name, (takes, gives) in _CALLS.items():
        getattr(library, name).argtypes = [*takes, *map(ctypes.POINTER, gives), ctypes.POINTER(_PLACE)]
        getattr(library, name).restype = _INT32
    library.staging_version.restype = _TEXT
    library.staging_text_free.argtypes, library.staging_text_free.restype = [_PLACE], None
    library.staging_release.argtypes = [_HANDLE]
    library.staging_handles_held.restype = ctypes.c_int64
    return library


LIBRARY = _loaded()
