"""Reads Arrow IPC files with uncompressed numbers and texts, by the format's description alone.

Written for the tests, so that the files of Staging.Core.Arrow are read by something that shares no code with what wrote
them. Apache Arrow, columnar format 1.x, "IPC File Format" and Schema.fbs, Message.fbs, File.fbs; FlatBuffers, "Internals":
tables with a list of offsets, vectors and texts with a length before them, all little-endian.
"""
import struct

MAGIC = b"ARROW1"
INT, FLOATING_POINT, UTF8 = 2, 3, 5  # of the union Type in Schema.fbs


class Table:
    """A FlatBuffers table at a place in a buffer."""

    def __init__(self, data, at):
        self.data, self.at = data, at

    def place(self, field):
        """Where a field stands; None where it is left out."""
        offsets = self.at - struct.unpack_from("<i", self.data, self.at)[0]
        if 4 + 2 * field >= struct.unpack_from("<H", self.data, offsets)[0]:
            return None
        offset = struct.unpack_from("<H", self.data, offsets + 4 + 2 * field)[0]
        return self.at + offset if offset else None

    def number(self, field, form, default=0):
        place = self.place(field)
        return default if place is None else struct.unpack_from("<" + form, self.data, place)[0]

    def follow(self, place):
        return place + struct.unpack_from("<I", self.data, place)[0]

    def table(self, field):
        return Table(self.data, self.follow(self.place(field)))

    def text(self, field):
        at = self.follow(self.place(field))
        length = struct.unpack_from("<I", self.data, at)[0]
        return self.data[at + 4:at + 4 + length].decode("utf-8")

    def vector(self, field):
        """Number of items and where the first stands."""
        place = self.place(field)
        if place is None:
            return 0, 0
        at = self.follow(place)
        return struct.unpack_from("<I", self.data, at)[0], at + 4

    def tables(self, field):
        count, at = self.vector(field)
        return [Table(self.data, self.follow(at + 4 * i)) for i in range(count)]


def read(path):
    """Columns by name, each a list with None where a value is absent, and the unit of each by name."""
    with open(path, "rb") as file:
        data = file.read()
    if not (data.startswith(MAGIC) and data.endswith(MAGIC)):
        raise ValueError(f"{path} is no Arrow file")
    length = struct.unpack_from("<i", data, len(data) - 10)[0]
    start = len(data) - 10 - length
    footer = Table(data, start + struct.unpack_from("<I", data, start)[0])
    fields = footer.table(1).tables(1)
    units = {f.text(0): {m.text(0): m.text(1) for m in f.tables(6)}["unit"] for f in fields}
    columns = {f.text(0): [] for f in fields}
    count, blocks = footer.vector(3)
    for block in range(count):
        offset, head, _ = struct.unpack_from("<qi4xq", data, blocks + 24 * block)
        message_at = offset + (8 if data[offset:offset + 4] == b"\xff" * 4 else 4)
        message = Table(data, message_at + struct.unpack_from("<I", data, message_at)[0])
        for field, values in zip(fields, batch(data, message.table(2), fields, offset + head)):
            columns[field.text(0)].extend(values)
    return columns, units


def batch(data, record, fields, body):
    """The values of each field of a record batch, whose buffers stand after its head."""
    _, nodes = record.vector(1)
    _, buffers = record.vector(2)
    at = 0

    def buffer():
        nonlocal at
        offset, length = struct.unpack_from("<qq", data, buffers + 16 * at)
        at += 1
        return data[body + offset:body + offset + length]

    for number, field in enumerate(fields):
        rows, absent = struct.unpack_from("<qq", data, nodes + 16 * number)
        valid = buffer()
        kind = field.number(2, "B")
        if kind == UTF8:
            ends, letters = struct.unpack_from(f"<{rows + 1}i", buffer()), buffer()
            values = [letters[ends[i]:ends[i + 1]].decode("utf-8") for i in range(rows)]
        else:
            form = {FLOATING_POINT: "d", INT: "q"}[kind]
            values = list(struct.unpack_from(f"<{rows}{form}", buffer()))
        yield [v if not absent or valid[i // 8] >> i % 8 & 1 else None for i, v in enumerate(values)]
