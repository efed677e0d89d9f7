"""The SVG files as a browser sees them: true millimetres, and cuts as long and as large as job.json says: browser.py FOLDER-OF-JOBS"""
import json
import re
import subprocess
import sys
import tempfile
from pathlib import Path

from record import jobs_in
from verdicts import Verdicts

BATCH = 20
MM_A_PIXEL = 25.4 / 96  # CSS
PLACE = 0.01  # mm: a browser's geometry is in single precision
LENGTH = 3e-4  # of a length: it measures the curves that it draws arcs by

MEASURE = """
<script>
const seen = [...document.querySelectorAll('svg')].map(svg => {
    const box = svg.getBoundingClientRect(), layers = {};
    for (const g of svg.querySelectorAll(':scope > g[id]')) {
        const b = g.getBBox();
        let length = 0;
        for (const p of g.querySelectorAll(':scope > path')) length += p.getTotalLength();
        layers[g.id] = {box: [b.x, b.y, b.x + b.width, b.y + b.height], length, shown: getComputedStyle(g).stroke};
    }
    return {width: box.width, height: box.height, layers};
});
document.body.innerHTML = '<pre>' + JSON.stringify(seen) + '</pre>';
</script>
"""


def seen(paths):
    """What the browser measures on each picture, all of them in one page."""
    pictures = [re.sub(r"<\?xml.*?\?>", "", p.read_text("utf-8")) for p in paths]
    with tempfile.TemporaryDirectory() as there:
        page = Path(there) / "page.html"
        page.write_text(f"<!doctype html><meta charset='utf-8'><body>{''.join(pictures)}{MEASURE}</body>", "utf-8")
        told = subprocess.run(
            ["chromium", "--headless", "--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage", f"--user-data-dir={there}/user", "--dump-dom", f"file://{page}"],
            capture_output=True, text=True, timeout=300)
    found = re.search(r"<pre>(.*)</pre>", told.stdout, re.S)
    return json.loads(found.group(1)) if found else [{}] * len(paths)


def refusals(path, picture, piece=None):
    if not picture:
        yield "drawn: the browser shows nothing"
        return
    root = re.search(r"<svg[^>]*>", path.read_text("utf-8")).group(0)
    for side in ("width", "height"):
        said = float(re.search(rf'{side}="([\d.]+)mm"', root).group(1))
        if abs(picture[side] * MM_A_PIXEL - said) > 0.05:
            yield f"size: {side} {picture[side] * MM_A_PIXEL:.3f} mm, but the file says {said}"
    if not any(layer["length"] > 0 and layer["shown"] != "none" for layer in picture["layers"].values()):
        yield "drawn: no line is seen"
    if piece:
        cut, wanted = picture["layers"].get("CUT"), piece.cut
        if not cut:
            yield "layers: no cut"
            return
        if abs(cut["length"] - wanted["length"]) > LENGTH * wanted["length"]:
            yield f"length: {cut['length']}, but job.json says {wanted['length']}"
        (x0, y0), (x1, y1) = wanted["bounds"]["min"], wanted["bounds"]["max"]
        for found, said in zip(cut["box"], (x0, -y1, x1, -y0)):
            if abs(found - said) > PLACE:
                yield f"bounds: {found}, but job.json says {said}"


def main(folder):
    pictures = []
    for record in jobs_in(folder):
        pictures.append((record.folder / "preview.svg", None))
        for piece in (p for p in record.pieces if p.cut):
            path = record.folder / f"{piece.name}-cut.svg"
            if path.exists():
                pictures.append((path, piece))
    verdicts = Verdicts()
    for start in range(0, len(pictures), BATCH):
        some = pictures[start:start + BATCH]
        for (path, piece), picture in zip(some, seen([p for p, _ in some])):
            verdicts.of(f"{path.relative_to(folder)} is true in a browser", refusals(path, picture, piece))
    # The referee sees what is wrong.
    path, piece = next(((path, piece) for path, piece in pictures if piece), pictures[0])
    with tempfile.TemporaryDirectory() as there:
        spoiled = Path(there) / path.name
        for what, rule, change in (
            ("without its cuts", "layers", lambda text: text.replace('id="CUT"', 'id="NOTE-2"')),
            ("a hundredth too wide", "size", lambda text: re.sub(r'width="([\d.]+)mm"', lambda m: f'width="{float(m.group(1)) * 1.01}mm"', text, count=1)),
        ):
            spoiled.write_text(change(path.read_text("utf-8")), "utf-8")
            wide = seen([spoiled])[0]
            # Held against what the sound file says of itself.
            verdicts.refused(f"{path.relative_to(folder)} {what}", refusals(path, wide, piece), rule)
    verdicts.end()


main(Path(sys.argv[1]))
