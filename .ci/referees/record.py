"""What a job says of itself: job.json."""
import json
import math
import re
from pathlib import Path

import numpy

from curves import Line


class Record:
    def __init__(self, folder, text=None):
        self.folder = Path(folder)
        self.text = text if text is not None else (self.folder / "job.json").read_text("utf-8")
        self.json = json.loads(self.text)
        self.pieces = [Piece(p) for p in self.json["pieces"]]

    @property
    def demonstration(self):
        return self.json["demonstration"]

    @property
    def dxf(self):
        """Release and unit of the cut files."""
        return self.json.get("dxf", "r2000")

    @property
    def files(self):
        return self.json["files"]

    def paper(self):
        """Width and height in mm; a roll's height is None."""
        size = self.paper_name
        if roll := re.fullmatch(r"roll ([\d.]+)mm", size):
            return float(roll.group(1)), None
        if own := re.fullmatch(r"([\d.]+)x([\d.]+)mm", size):
            return float(own.group(1)), float(own.group(2))
        sizes = dict(re.findall(r"(\w+):\s*([\d.]+ (?:mm|in))", self._row(size)))
        return _mm(sizes["width"]), _mm(sizes["height"])

    def lies_across(self, width, height):
        """Whether a page is turned before it is printed; on a roll one that is as high as the roll is wide, however long it is."""
        roll, length = self.paper()
        if length is None and min(abs(width - roll), abs(height - roll)) < 0.5:
            return abs(width - roll) >= 0.5
        return width > height

    @property
    def paper_name(self):
        """The paper without how it lies."""
        return re.sub(r" (upright|across)$", "", self.json["paper"])

    def margins(self, across):
        """Left, right, top and bottom of a page: the printer's own where it has some, across the wider of two on both sides."""
        usual = re.search(r"^paper:\s*(\S+)", self._table("habits.yaml"), re.M).group(1)
        known = re.search(rf"^\s*{re.escape(self.paper_name)}:", self._table("papers.yaml"), re.M)
        said = self._margin(self._row(self.paper_name if known else usual), "margin")
        if self.json.get("printer", "none") != "none":
            said = self._margin(self._printer(), "margins") or said
        left, right, top, bottom = said
        return (max(top, bottom),) * 2 + (max(left, right),) * 2 if across else (left, right, top, bottom)

    def printer(self, across):
        """What the printer does to a sheet, as a matrix; worked out from the coupon's four lengths, not as the program does."""
        if self.json.get("printer", "none") == "none":
            return numpy.identity(2)
        row = re.search(rf"^\s*{re.escape(self.paper_name)}:\s*(.*)$", self._printer(), re.M)
        if not row:
            return numpy.identity(2)
        (w, u), (h, v) = ((float(d), float(m)) for d, m in re.findall(r"drawn: ([\d.]+) mm, measured: ([\d.]+) mm", row.group(1)))
        rising, falling = (float(re.search(rf"{which}: ([\d.]+) mm", row.group(1)).group(1)) for which in ("rising", "falling"))
        # The parallelogram laid out: A at the origin, B along x, D where the two lengths to it put it; then turned so that it leans evenly.
        cosine = (rising ** 2 - falling ** 2) / (4 * u * v)
        printed = numpy.array([[u / w, v * cosine / h], [0, v * math.sqrt(1 - cosine ** 2) / h]])
        left, sizes, right = numpy.linalg.svd(printed)
        even = right.T @ numpy.diag(sizes) @ right
        return numpy.array([[even[1, 1], -even[0, 1]], [-even[1, 0], even[0, 0]]]) if across else even

    def line(self):
        """How wide the lines to work to are."""
        return _mm(re.sub(r"^([\d.]+)\s*(mm)?$", r"\1 mm", self.json.get("line", "0.35 mm")))

    def _table(self, name):
        return "\n".join(s["text"] for s in self.json["shop"] if s["file"] == name)

    def _row(self, size):
        return re.search(rf"^\s*{re.escape(size)}:\s*\{{(.*)\}}", self._table("papers.yaml"), re.M).group(1)

    def _printer(self):
        """The lines of its entry: those below its name that stand further to the right."""
        found = re.search(rf"^( *){re.escape(self.json['printer'])}:[^\n]*\n((?:\1 +[^\n]*\n)*)", self._table("printers.yaml") + "\n", re.M)
        return found.group(2)

    @staticmethod
    def _margin(text, key):
        if each := re.search(rf"{key}:\s*\{{([^}}]*)\}}", text):
            edges = {edge: _mm(size) for edge, size in re.findall(r"(\w+):\s*([\d.]+ (?:mm|in))", each.group(1))}
            return tuple(edges[edge] for edge in ("left", "right", "top", "bottom"))
        if one := re.search(rf"{key}:\s*([\d.]+ (?:mm|in))", text):
            return (_mm(one.group(1)),) * 4
        return None


class Piece:
    def __init__(self, json_piece):
        self.json = json_piece
        self.name, self.kind = json_piece["name"], json_piece["kind"]
        self.finish = [Line.of(line["vertices"], line["closed"]) for line in json_piece["finish"]]
        self.cut = json_piece.get("cut")
        self.plan = json_piece.get("plan")
        self.datums = [(d["label"], tuple(d["at"]), d["diameter"]) for d in json_piece["datums"]]

    def on_paper(self):
        """The piece as it lies on its template: turned, if it was."""
        turn = math.radians(self.json.get("turned", 0))
        c, s = math.cos(turn), math.sin(turn)

        def turned(x, y):
            return c * x - s * y, s * x + c * y
        laid = Piece(self.json)
        laid.finish = [Line.of([[*turned(x, y), b] for x, y, b in line["vertices"]], line["closed"]) for line in self.json["finish"]]
        laid.datums = [(label, turned(*at), diameter) for label, at, diameter in self.datums]
        return laid


def jobs_in(folder):
    """Every finished job under a folder, by its path."""
    return [Record(found.parent) for found in sorted(Path(folder).rglob("job.json"))]


def _mm(text):
    number, unit = text.split()
    return float(number) * (25.4 if unit == "in" else 1)
