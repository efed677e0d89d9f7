"""What a job says of itself: job.json."""
import json
import re
from pathlib import Path

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
        """Width, height and margin in mm, from the shop's own table as it stands in the record."""
        table = next(s["text"] for s in self.json["shop"] if s["file"] == "papers.yaml")
        row = re.search(rf"^\s*{re.escape(self.json['paper'])}:\s*\{{(.*)\}}", table, re.M).group(1)
        sizes = dict(re.findall(r"(\w+):\s*([\d.]+ (?:mm|in))", row))
        return tuple(_mm(sizes[name]) for name in ("width", "height", "margin"))


class Piece:
    def __init__(self, json_piece):
        self.json = json_piece
        self.name, self.kind = json_piece["name"], json_piece["kind"]
        self.finish = [Line.of(line["vertices"], line["closed"]) for line in json_piece["finish"]]
        self.cut = json_piece.get("cut")
        self.plan = json_piece.get("plan")
        self.datums = [(d["label"], tuple(d["at"]), d["diameter"]) for d in json_piece["datums"]]


def jobs_in(folder):
    """Every finished job under a folder, by its path."""
    return [Record(found.parent) for found in sorted(Path(folder).rglob("job.json"))]


def _mm(text):
    number, unit = text.split()
    return float(number) * (25.4 if unit == "in" else 1)
