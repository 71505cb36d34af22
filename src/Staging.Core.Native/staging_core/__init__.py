"""Staging.Core from Python: a plan of a multistage model rocket in, its review and its odds out.

Nothing is computed here: each call goes to the shared library libstaging_core, which lies beside this package or where the
environment variable STAGING_CORE_LIBRARY says. Only the standard library is needed. Columns are NumPy arrays where NumPy is
installed, masked ones where a number is missing; else arrays of the standard library, or lists with None.

Plans, reviews and odds never change and may be used from several threads at once; a call lets other threads run meanwhile.

A computed margin is no permission to fly: local codes, the range safety officer and licensed practice decide.
"""

from __future__ import annotations

import json
import os
import weakref
from collections.abc import Callable
from typing import Any

from ._library import LIBRARY, PROGRESS, Column, Named, StagingError, Status, call, columns, given, taken

__all__ = ["Column", "Odds", "Plan", "Review", "StagingError", "Status", "Stop", "Verdict", "handles_held", "version"]


class Verdict(Named):
    """Whether every stage lights: always, sometimes or never over what is judged."""

    LIGHTS = 0
    MAY_LIGHT = 1
    STAYS_COLD = 2


class _Object:
    """What a handle stands for; it is released when nothing refers to it any longer."""

    def __init__(self, handle: int) -> None:
        self._handle = handle
        weakref.finalize(self, LIBRARY.staging_release, handle)

    def _text(self, name: str, *inputs: Any) -> str:
        return taken(call(name, self._handle, *inputs)[0])


class Stop(_Object):
    """A wish to stop that another thread can utter; once asked, it stays."""

    def __init__(self) -> None:
        super().__init__(call("staging_stop_create")[0])

    def ask(self) -> None:
        """Ends every call that was given this, now and later, with Status.STOPPED."""
        call("staging_stop", self._handle)


class Plan(_Object):
    """A stack with its gaps."""

    @staticmethod
    def parse(text: str) -> Plan:
        """Reads a plan from its text, which may name no file."""
        return Plan(call("staging_plan_parse", given(text))[0])

    @staticmethod
    def read(path: str | os.PathLike[str]) -> Plan:
        """Reads a plan from a file, beside or below which its thrust histories are."""
        return Plan(call("staging_plan_read", given(os.fspath(path)))[0])

    def json(self) -> str:
        """The plan in full, thrust histories included; parse makes an equal plan of it."""
        return self._text("staging_plan_json")

    def review(self, cases: int = 60, stop: Stop | None = None) -> Review:
        """Flies and judges the plan; cases is the number of the quick study of the odds, 0 for none."""
        return Review(call("staging_review", self._handle, cases, stop and stop._handle)[0])

    def odds(
        self,
        cases: int = 400,
        seed: int = 0,
        threads: int = 0,
        progress: Callable[[int, int], object] | None = None,
        stop: Stop | None = None,
    ) -> Odds:
        """How often every stage lights.

        threads is 1 to 1024, or 0 to let the library choose. progress is told the cases done and the cases in all, in
        order, on this thread; what it raises ends the study and comes out of this call.
        """
        raised: list[BaseException] = []

        def tell(done: int, total: int, _: object) -> int:
            try:
                if progress is not None:
                    progress(done, total)
                return 0
            except BaseException as error:  # nothing that is raised may pass through the library
                raised.append(error)
                return 1

        told = PROGRESS(tell) if progress is not None else PROGRESS()
        try:
            return Odds(call("staging_odds", self._handle, cases, seed, threads, told, None, stop and stop._handle)[0])
        finally:
            if raised:
                raise raised[0]


class Review(_Object):
    """A plan flown and judged."""

    @property
    def verdict(self) -> Verdict:
        """Whether every stage lights."""
        return Verdict(call("staging_review_verdict", self._handle)[0])

    def json(self) -> str:
        """SI numbers with the unit in the key, null where something did not happen."""
        return self._text("staging_review_json")

    def report(self) -> dict[str, Any]:
        """The JSON as Python holds it."""
        report: dict[str, Any] = json.loads(self.json())
        return report

    def text(self, width: int = 100) -> str:
        """The review to read, in lines of 92 to 1000 characters."""
        return self._text("staging_review_text", width)

    def __str__(self) -> str:
        return self.text()

    def gap_columns(self, gap: int = 0, step_s: float = 50e-6) -> dict[str, Column]:
        """The course of a gap by the names of its columns, "time" the first."""
        return columns(call("staging_gap_table", self._handle, gap, step_s)[0])

    def flight_columns(self, body: int = 0, step_s: float = 0.01) -> dict[str, Column]:
        """The flight of a body by the names of its columns, "time" the first."""
        return columns(call("staging_flight_table", self._handle, body, step_s)[0])


class Odds(_Object):
    """How often the stages of a plan light when what is judged of its gaps is uncertain."""

    @property
    def share(self) -> tuple[float, float, float]:
        """The share of the cases in which every stage lights, and between which two the true one lies at 95 %."""
        share, least, greatest = call("staging_odds_share", self._handle)
        return share, least, greatest

    def json(self) -> str:
        """SI numbers with the unit in the key, null where no case has the number."""
        return self._text("staging_odds_json")

    def report(self) -> dict[str, Any]:
        """The JSON as Python holds it."""
        report: dict[str, Any] = json.loads(self.json())
        return report

    def text(self) -> str:
        """The odds to read, and what matters."""
        return self._text("staging_odds_text")

    def __str__(self) -> str:
        return self.text()

    def columns(self) -> dict[str, Column]:
        """A row a case: the inputs that were drawn, then what came of them."""
        return columns(call("staging_odds_table", self._handle)[0])


def version() -> str:
    """The version of the library."""
    return str(LIBRARY.staging_version().decode())


def handles_held() -> int:
    """How many objects of the library are not released yet: to find leaks."""
    return int(LIBRARY.staging_handles_held())
