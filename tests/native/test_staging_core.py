"""The Python package against the published library. STAGING_SAMPLES names the folder of the invented plans."""

import array
import json
import math
import os
import pathlib
import threading
import unittest
from unittest import mock

import staging_core as staging
from staging_core import _library

SAMPLES = pathlib.Path(os.environ["STAGING_SAMPLES"])
DEMO = staging.Plan.read(SAMPLES / "demo/plan.json")
CONTACT = staging.Plan.read(SAMPLES / "plans/contact-paper.json")  # soon reviewed


class Errors(unittest.TestCase):
    def test_a_bad_plan_names_line_and_key(self):
        for text, words in [
            ('{\n  "planVersion": 1,\n  oops\n}', ["line 3"]),
            ('{"planVersion": 1, "nam": 5}', [r"\$\.nam", r"\$\.flight"]),
            ("half a pair: \ud800", ["not UTF-8", "byte 14"]),
            ("", ["line 1"]),
        ]:
            with self.subTest(text[:20].encode("ascii", "replace")), self.assertRaises(staging.StagingError) as caught:
                staging.Plan.parse(text)
            self.assertEqual(staging.Status.BAD_PLAN, caught.exception.status)
            for word in words:
                self.assertRegex(str(caught.exception), word)

    def test_values_out_of_range_are_named(self):
        review = CONTACT.review(cases=0)
        for call, words in [
            (lambda: DEMO.review(cases=-1), r"cases is -1; it must be between 0 and 1E\+06\.$"),
            (lambda: DEMO.odds(cases=0), r"cases is 0; it must be between 1 and 1E\+06\.$"),
            (lambda: DEMO.odds(cases=2**32 + 5), "4294967301.*2147483647"),
            (lambda: DEMO.odds(seed=-1), "-1.*18446744073709551615"),
            (lambda: DEMO.odds(threads=2000), "Threads.*2000.*1.*1024"),
            (lambda: review.text(width=10), "width.*10.*92.*1000"),
            (lambda: review.gap_columns(1), "gap is 1; 1 gaps"),
            (lambda: review.gap_columns(step_s=math.nan), "step_s is not a finite number"),
            (lambda: review.flight_columns(body=-1), "body is -1"),
            (lambda: review.flight_columns(step_s=0), "step.*0 s.*1000 s"),
            (lambda: staging.Plan.parse("{}\0"), "zero at character 3"),
        ]:
            with self.subTest(words), self.assertRaisesRegex(staging.StagingError, words) as caught:
                call()
            self.assertEqual(staging.Status.BAD_ARGUMENT, caught.exception.status)

    def test_a_body_that_ends_where_it_starts_has_no_trajectory(self):
        plan = json.loads(staging.Plan.read(SAMPLES / "plans/electronics.json").json())
        booster, sustainer = plan["flight"]["stages"]
        booster["structureMass"] = "5 kg"  # too heavy to lift: the sustainer leaves it on the guide
        sustainer["ignition"]["guards"] = {}
        review = staging.Plan.parse(json.dumps(plan)).review(cases=0)
        self.assertIn("time", review.flight_columns(body=0))
        with self.assertRaisesRegex(staging.StagingError, r"^body 1 ends where it starts; it has no trajectory\.$") as caught:
            review.flight_columns(body=1)
        self.assertEqual(staging.Status.BAD_ARGUMENT, caught.exception.status)

    def test_a_file_that_is_not_there_and_a_model_that_does_not_hang_together(self):
        with self.assertRaisesRegex(staging.StagingError, "nowhere.json") as caught:
            staging.Plan.read("nowhere.json")
        self.assertEqual(staging.Status.BAD_PLAN, caught.exception.status)
        text = DEMO.json()
        plan = json.loads(text)
        plan["flight"]["stages"][1]["ignition"]["gap"]["design"]["vents"][0]["station"]["value"] = 900
        with self.assertRaisesRegex(staging.StagingError, "GAP001") as caught:
            staging.Plan.parse(json.dumps(plan)).review()
        self.assertEqual(staging.Status.BAD_MODEL, caught.exception.status)

    def test_a_handle_that_is_released_made_up_or_mixed_up_touches_nothing(self):
        gone = staging.Stop()._handle
        for handle, words in [(gone, "released"), (2**40, "no handle"), (None, "NULL"), (DEMO._handle, "another kind: of a plan")]:
            with self.subTest(words), self.assertRaisesRegex(staging.StagingError, words) as caught:
                _library.call("staging_review_json", handle)
            self.assertEqual(staging.Status.BAD_HANDLE, caught.exception.status)


class Reviews(unittest.TestCase):
    def test_the_verdict_is_that_of_the_command(self):
        # region python-review
        plan = staging.Plan.read(SAMPLES / "demo/plan.json")
        review = plan.review()
        print(review.verdict.name, review.report()["apogee_m"])
        # endregion
        self.assertEqual(staging.Verdict.MAY_LIGHT, review.verdict)
        self.assertEqual("MAY_LIGHT", str(review.verdict))
        self.same(json.loads(pathlib.Path(os.environ["STAGING_REVIEW"]).read_text()), review.report(), "$")

    def same(self, theirs, ours, where):
        """Equal but for the last digits: native code sums in other vectors, and a solver takes its steps to 1e-6."""
        self.assertIs(type(theirs), type(ours), where)
        if isinstance(theirs, dict):
            self.assertEqual(list(theirs), list(ours), where)
            for key in theirs:
                self.same(theirs[key], ours[key], f"{where}.{key}")
        elif isinstance(theirs, list):
            self.assertEqual(len(theirs), len(ours), where)
            for i, (one, other) in enumerate(zip(theirs, ours)):
                self.same(one, other, f"{where}[{i}]")
        elif isinstance(theirs, float):
            self.assertTrue(math.isclose(theirs, ours, rel_tol=1e-6, abs_tol=1e-12), f"{where}: {theirs} and {ours}")
        else:
            self.assertEqual(theirs, ours, where)

    def test_verdicts_of_other_plans(self):
        for name, verdict in [("electronics", staging.Verdict.LIGHTS), ("nested-tubes-inner-only", staging.Verdict.STAYS_COLD)]:
            self.assertEqual(verdict, staging.Plan.read(SAMPLES / f"plans/{name}.json").review(cases=20).verdict, name)

    def test_a_plan_written_and_read_is_the_same(self):
        self.assertEqual(DEMO.json(), staging.Plan.parse(DEMO.json()).json())

    def test_threads_get_the_same_bits(self):
        found = []
        threads = [threading.Thread(target=lambda: found.append((CONTACT.review().json(), CONTACT.odds(40, seed=3).json()))) for _ in range(4)]
        for thread in threads:
            thread.start()
        for thread in threads:
            thread.join()
        self.assertEqual(4, len(found))
        self.assertEqual(1, len(set(found)))

    def test_nothing_is_held_in_the_end(self):
        before = staging.handles_held()
        review = CONTACT.review(cases=0)
        review.gap_columns(), review.flight_columns(), CONTACT.odds(8).columns()
        self.assertEqual(before + 1, staging.handles_held())
        del review
        self.assertEqual(before, staging.handles_held())


class Studies(unittest.TestCase):
    def test_odds_tell_how_far_they_have_come(self):
        told = []
        odds = DEMO.odds(cases=40, seed=7, threads=2, progress=lambda done, total: told.append((done, total)))
        self.assertEqual((40, 40), told[-1])
        self.assertEqual(sorted(told), told)
        share, least, greatest = odds.share
        self.assertTrue(0 < least < share < greatest < 1)
        self.assertEqual(share, odds.report()["everyStageLights"]["share"])
        self.assertIn("What moves the margin", odds.text())
        self.assertEqual(odds.text(), str(odds))

    def test_a_stop_from_another_thread_ends_a_study(self):
        # region python-stop
        stop = staging.Stop()
        threading.Timer(0.2, stop.ask).start()
        try:
            plan = staging.Plan.read(SAMPLES / "demo/plan.json")
            odds = plan.odds(cases=1_000_000, stop=stop)
        except staging.StagingError as error:
            ended = error.status
        # endregion
        self.assertEqual(staging.Status.STOPPED, ended)
        self.assertEqual("STOPPED STOPPED 5", f"{ended} {ended!s} {int(ended)}")
        with self.assertRaises(staging.StagingError):
            DEMO.review(stop=stop)

    def test_what_progress_raises_ends_the_study_and_comes_out(self):
        def interrupted(done, total):
            raise KeyboardInterrupt(f"{done} of {total}")

        with self.assertRaisesRegex(KeyboardInterrupt, "of 20000"):
            DEMO.odds(cases=20_000, progress=interrupted)  # told of after each hundredth


class Columns(unittest.TestCase):
    def test_courses_in_SI_units(self):
        # region python-columns
        review = staging.Plan.read(SAMPLES / "demo/plan.json").review(cases=0)
        gap = review.gap_columns(step_s=1e-4)
        flight = review.flight_columns(body=0)
        print(max(gap["gapPressure"].values), gap["gapPressure"].unit)
        print(max(flight["height"].values), flight["height"].unit)
        # endregion
        report = review.report()
        self.assertEqual("Pa", gap["gapPressure"].unit)
        self.assertAlmostEqual(report["apogee_m"], max(max(review.flight_columns(b)["height"].values) for b in range(len(report["bodies"]))), 1)
        self.assertEqual(1, len({len(c.values) for c in gap.values()}))
        self.assertTrue(all(math.isfinite(v) for c in gap.values() for v in c.values))

    def test_numbers_that_are_missing_are_no_numbers(self):
        plan = staging.Plan.read(SAMPLES / "plans/three-stages.json")
        for numpy in {None, _library.numpy}:
            with mock.patch.object(_library, "numpy", numpy):
                columns = plan.odds(60, seed=1).columns()
            lacking = {name for name, column in columns.items() if isinstance(column.values, list) or hasattr(column.values, "mask")}
            self.assertTrue(lacking, "a third stage is not reached in every case")
            self.assertTrue(all("margin" in name for name in lacking), lacking)

    def test_without_numpy_columns_are_arrays(self):
        with mock.patch.object(_library, "numpy", None):
            self.assertIsInstance(DEMO.odds(8).columns()["margin"].values, array.array)


if __name__ == "__main__":
    unittest.main(verbosity=2)
