"""The previews: an SVG in true millimetres that a renderer draws, and a PNG wide enough to look at: pictures.py FOLDER-OF-JOBS"""
import struct
import subprocess
import sys
import xml.etree.ElementTree as xml
from pathlib import Path

from record import jobs_in
from verdicts import Verdicts

LEAST_WIDTH = 1600  # pixels


def svg_refusals(path):
    root = xml.parse(path).getroot()
    if not (root.get("width", "").endswith("mm") and root.get("height", "").endswith("mm")):
        yield f"size: {root.get('width')} by {root.get('height')}"
    else:
        box = [float(n) for n in root.get("viewBox").split()]
        if abs(float(root.get("width")[:-2]) - box[2]) > 1e-6 or abs(float(root.get("height")[:-2]) - box[3]) > 1e-6:
            yield f"scale: {root.get('width')} shows {box[2]} mm"
    if "nan" in path.read_text("utf-8").lower():
        yield "number: not a number"
    drawn = subprocess.run(["rsvg-convert", "-w", "400", str(path)], capture_output=True)
    if drawn.returncode or len(drawn.stdout) < 2000:
        yield "drawn: the renderer draws nothing"


def png_refusals(path):
    head = path.read_bytes()[:24]
    if head[:8] != b"\x89PNG\r\n\x1a\n":
        yield "kind: no PNG"
    elif struct.unpack(">I", head[16:20])[0] < LEAST_WIDTH:
        yield f"width: {struct.unpack('>I', head[16:20])[0]} pixels"


verdicts = Verdicts()
for record in jobs_in(Path(sys.argv[1])):
    name = record.folder.relative_to(sys.argv[1])
    verdicts.of(f"{name}/preview.svg is true and can be drawn", svg_refusals(record.folder / "preview.svg"))
    verdicts.of(f"{name}/preview.png is wide enough", png_refusals(record.folder / "preview.png"))
verdicts.end()
