"""Reads what samples/ColumnsToArrow.cs wrote, and compares each Arrow file with the CSV of the same name beside it.

    python3 tests/arrow/read_back.py FOLDER

Every number has to be the same to the bit, every text equal, every unit that of the head, every gap a gap. Where pyarrow
can be had, it reads the files as well.
"""
import csv
import pathlib
import sys

import arrow_file

try:
    import pyarrow.feather
except ImportError:
    pyarrow = None


def head(name, unit):
    return name if name in ("case", "outcome") else f"{name} [{unit}]"


def compare(path, columns, units):
    with open(path.with_suffix(".csv"), newline="", encoding="utf-8") as file:
        names, *rows = csv.reader(file)
    assert [head(n, units[n]) for n in columns] == names, f"{path}: {list(columns)} and {names}"
    for name, cells in zip(columns, zip(*rows, strict=True), strict=True):
        values = columns[name]
        assert len(values) == len(cells) > 0, f"{path}, {name}: {len(values)} values and {len(cells)} cells"
        for value, cell in zip(values, cells):
            same = value is None if cell == "" else value == (cell if isinstance(value, str) else type(value)(cell))
            assert same, f"{path}, {name}: {value!r} and {cell!r}"
    return len(columns), len(rows)


def main(folder):
    files = sorted(pathlib.Path(folder).glob("*.arrow"))
    assert files, f"{folder} holds no Arrow file"
    for path in files:
        columns, units = arrow_file.read(path)
        print(f"{path.name}: {'%d columns of %d rows' % compare(path, columns, units)} as in its CSV")
        if pyarrow:
            assert pyarrow.feather.read_table(path).to_pydict() == columns, f"{path}: pyarrow reads something else"
    print(f"{len(files)} files read back" + ("" if pyarrow else "; pyarrow is not here"))


main(sys.argv[1])
