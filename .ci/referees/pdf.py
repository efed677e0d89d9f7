"""The paper template, as poppler shows it, held against job.json: pdf.py FOLDER-OF-JOBS

Each tile's place on its page is found once, from the lines that poppler reads; everything else is checked against that one shift,
in the lines and, at 1200 dpi, in the dots that a printer would be given. Where the template was corrected for a printer, everything is
looked at as that printer would print it."""
import itertools
import json
import math
import os
import re
import subprocess
import sys
import tempfile
from collections import Counter, defaultdict
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

import numpy

from record import Record, jobs_in
from verdicts import Verdicts

IN_LINES, IN_DOTS = 0.005, 0.05   # mm
DPI = 1200
DOT = 25.4 / DPI
FINISH_PEN, DATUM_PEN, SEAM_PEN = 0.35, 0.25, 0.2
SCALE_PEN = 0.25
MOST_PLACES = {"cut away": 200}  # of one piece; of others fewer, for they have no panel edge that a seam could cross
FEWER_PLACES = 50
NUMBER = r"-?\d+(?:\.\d+)?(?:e-?\d+)?"


class Page:
    """One page in mm from its lower left corner, as it comes out of the printer."""

    def __init__(self, pdf, number, width, height, printer, line):
        self.pdf, self.number, self.width, self.height, self.printer = pdf, number, width, height, printer
        self.unprinted = numpy.linalg.inv(printer)
        # None of the thinner lines is wider than the lines to work to.
        self.finish_pen, self.datum_pen, self.seam_pen = line, min(DATUM_PEN, line), min(SEAM_PEN, line)
        self.strokes = [(pen, [self._about_middle(self.printer, p) for p in points]) for pen, points in self._strokes()]

    def _about_middle(self, matrix, point):
        x, y = point[0] - self.width / 2, point[1] - self.height / 2
        return (self.width / 2 + matrix[0, 0] * x + matrix[0, 1] * y, self.height / 2 + matrix[1, 0] * x + matrix[1, 1] * y)

    def _strokes(self):
        """Each stroke's pen and corner points."""
        with tempfile.NamedTemporaryFile(suffix=".svg") as svg:
            subprocess.run(["pdftocairo", "-svg", "-noshrink", "-nocenter", "-f", str(self.number), "-l", str(self.number), self.pdf, svg.name], check=True)
            text = Path(svg.name).read_text("utf-8")
        unit = 25.4 / 72
        for path in re.finditer(r"<path ([^>]*)/>", text):
            attributes = dict(re.findall(r'(\S+)="([^"]*)"', path.group(1)))
            style = attributes.get("style", "")
            pen = re.search(rf"stroke-width:({NUMBER})", style)
            if not pen or "stroke:rgb" not in style:
                continue
            a, b, c, d, e, f = (float(n) for n in re.findall(NUMBER, attributes.get("transform", "matrix(1,0,0,1,0,0)")))
            corners = []
            for command, numbers in re.findall(rf"([MLCZ])((?:\s*{NUMBER})*)", attributes["d"]):
                xy = [float(n) for n in re.findall(NUMBER, numbers)]
                if xy:
                    x, y = xy[-2:]
                    corners.append(((a * x + c * y + e) * unit, self.height - (b * x + d * y + f) * unit))
            yield float(pen.group(1)) * math.sqrt(abs(a * d - b * c)) * unit, corners

    def moved(self):
        """How far the printer's correction moves a corner of the page, both ways, at most."""
        corner = self._about_middle(self.unprinted, (0, 0)), self._about_middle(self.unprinted, (0, self.height))
        return max(abs(c[0]) for c in corner), max(abs(corner[0][1]), abs(corner[1][1] - self.height))

    def corners(self, pen):
        return [p for width, points in self.strokes if abs(width - pen) < 0.004 for p in points]

    def dots(self, centre, half):
        """Darkness 0 to 1 of a square about a point of the print, rows from the top, and the square's lower left corner in mm."""
        printed = centre
        centre = self._about_middle(self.unprinted, centre)
        left, top = int((centre[0] - half) / DOT), int((self.height - centre[1] - half) / DOT)
        size = int(2 * half / DOT) + 1
        made = subprocess.run(
            ["pdftoppm", "-gray", "-r", str(DPI), "-f", str(self.number), "-l", str(self.number), "-x", str(left), "-y", str(top),
             "-W", str(size), "-H", str(size), self.pdf], capture_output=True, check=True).stdout
        head = re.match(rb"P5\s+(\d+)\s+(\d+)\s+255\s", made)
        width, height = int(head.group(1)), int(head.group(2))
        grey = numpy.frombuffer(made[head.end():], dtype=numpy.uint8).reshape(height, width)
        # Within a square of 2 mm the printer's error is below a fiftieth of a millimetre; it moves the square as a whole.
        return 1 - grey / 255.0, (left * DOT + printed[0] - centre[0], self.height - (top + height) * DOT + printed[1] - centre[1])


def across(page, point, normal, reach=0.8, pen=None):
    """How far off a stroke's middle lies from a point, along a normal; nothing where another stroke is near."""
    dark, (left, bottom) = page.dots(point, reach + 0.1)
    rows = dark.shape[0]
    steps = numpy.arange(-reach, reach, DOT / 4)
    columns = ((point[0] + normal[0] * steps - left) / DOT).astype(int)
    lines = rows - 1 - ((point[1] + normal[1] * steps - bottom) / DOT).astype(int)
    profile = dark[lines.clip(0, rows - 1), columns.clip(0, dark.shape[1] - 1)] > 0.6
    edges = numpy.flatnonzero(numpy.diff(numpy.concatenate(([0], profile.astype(int), [0]))))
    if len(edges) != 2:
        return None
    first, last = steps[edges[0]], steps[min(edges[1], len(steps)) - 1]
    # Where another line runs into this one the two are wider than the pen.
    return float((first + last) / 2) if abs(last - first - (pen or page.finish_pen)) < 0.06 else None


def shift_of(page, points):
    """The one shift that brings most of these points of the drawing onto corners of the page's lines, how many corners those are, and how many points."""
    found = page.corners(page.finish_pen)
    votes = Counter()
    for (px, py), (fx, fy) in itertools.product(points, found):
        votes[round((fx - px) / IN_LINES), round((fy - py) / IN_LINES)] += 1
    if not votes:
        return None, 0, 0
    (i, j), _ = max(votes.items(), key=lambda v: sum(votes[v[0][0] + a, v[0][1] + b] for a in (-1, 0, 1) for b in (-1, 0, 1)))
    near = [((px, py), fx - px, fy - py) for (px, py), (fx, fy) in itertools.product(points, found)
            if math.hypot(fx - px - i * IN_LINES, fy - py - j * IN_LINES) < 2 * IN_LINES]
    return (sum(n[1] for n in near) / len(near), sum(n[2] for n in near) / len(near)), len(near), len({n[0] for n in near})


def pages_of(pdf, record):
    told = subprocess.run(["pdfinfo", "-f", "1", "-l", "9999", pdf], capture_output=True, text=True, check=True).stdout
    sizes = re.findall(rf"Page\s+\d+ size:\s+({NUMBER}) x ({NUMBER}) pts", told)
    return [Page(pdf, i + 1, float(w) * 25.4 / 72, float(h) * 25.4 / 72, record.printer(record.lies_across(float(w) * 25.4 / 72, float(h) * 25.4 / 72)), record.line())
            for i, (w, h) in enumerate(sizes)]


def scale_checks(page):
    """The page's two scale checks: the longest level and upright stroke of a multiple of 50 mm with ticks at both ends."""
    for upright in (False, True):
        best = 0
        for pen, points in page.strokes:
            if len(points) != 2 or abs(pen - SCALE_PEN) > 0.004:
                continue
            (x0, y0), (x1, y1) = points
            along, aside = (abs(y1 - y0), abs(x1 - x0)) if upright else (abs(x1 - x0), abs(y1 - y0))
            if aside < IN_LINES and along > 90 and abs(along - 50 * round(along / 50)) < IN_LINES:
                best = max(best, along)
        yield best


def inches(page):
    """The distances in inches of the ends of the page's ticks from the start of its scale checks, level and upright; whole ones alone."""
    for upright in (False, True):
        checks = [p for pen, p in page.strokes if len(p) == 2 and abs(pen - SCALE_PEN) < 0.004]
        base = max(checks, key=lambda p: abs(p[1][1] - p[0][1]) if upright else abs(p[1][0] - p[0][0]))
        start = base[0][1 if upright else 0]
        found = set()
        for (x0, y0), (x1, y1) in checks:
            along = (y0 if upright else x0) - start
            short = math.hypot(x1 - x0, y1 - y0)
            on_line = abs((x0 - base[0][0]) if upright else (y0 - base[0][1])) < IN_LINES
            below = (x1 > x0) if upright else (y1 < y0)
            if short < 3 and on_line and below and abs(along / 25.4 - round(along / 25.4)) * 25.4 < IN_LINES:
                found.add(round(along / 25.4))
        yield found


def refusals(record, pages):
    """Everything that is wrong with a template, each beginning with the rule that it breaks."""
    width, height = record.paper()
    for page in pages:
        fits = min(abs(page.width - width), abs(page.height - width)) < 0.01 if height is None else \
            max(abs(a - b) for a, b in zip(sorted((page.width, page.height)), sorted((width, height)))) < 0.01
        if not fits:
            yield f"paper: page {page.number} is {page.width:.3f} by {page.height:.3f} mm"
    placed, missing = tiles_of(record, pages), []
    for piece in (p.on_paper() for p in record.pieces):
        tiles = placed[piece.name]
        for page, _, offs in tiles:
            yield from (f"dots: {piece.name} is {off:+.3f} mm off at {x:.3f}, {y:.3f} on page {page.number}"
                        for (x, y), off in offs.items() if abs(off) > IN_DOTS)
        yield from datum_refusals(piece, tiles)
        looked = Counter(place for _, _, offs in tiles for place in offs)
        if len(looked) < 4:
            yield f"dots: only {len(looked)} places of {piece.name} could be looked at"
        if len(tiles) > 1 and piece.kind == "cut away" and max(looked.values(), default=0) < 2:
            yield f"seam: no place of {piece.name} was seen on two pages"
        for w in vertices_of(piece):
            if not any(math.hypot(w[0] + dx - x, w[1] + dy - y) < IN_LINES for page, (dx, dy), _ in tiles for x, y in page.corners(page.finish_pen)):
                missing.append((piece.name, w))
    for name, (x, y) in missing:
        yield f"vertex: {name} has none at {x}, {y} on any page"
    with_vertices = {p.number: p for tiles in placed.values() for p, _, _ in tiles}
    for page in with_vertices.values():
        level, upright = scale_checks(page)
        if not (level and upright):
            yield f"scale check: page {page.number} has {level:.3f} and {upright:.3f} mm"
        for way, length, found in zip(("level", "upright"), (level, upright), inches(page)):
            most = max(found, default=0)
            if most < min(8, int(length / 25.4)) or found != set(range(most + 1)):
                yield f"inches: the {way} check of page {page.number} has ticks at {sorted(found)}"
    # A page with panel edges alone has no vertex to be placed by, so a line over it is not seen twice.
    is_whole = len(with_vertices) == sum(1 for p in pages if all(scale_checks(p)))
    for piece in record.pieces:
        yield from seam_check_refusals(piece.name, placed[piece.name], is_whole)


def seam_check_refusals(name, tiles, is_whole):
    """The long lines over the joined pages: each shows on two pages at least, at the one place in the drawing, as long as it says."""
    on_pages = {}  # each line by its ends in the drawing
    for page, (dx, dy), _ in tiles:
        for pen, points in page.strokes:
            if len(points) == 2 and abs(pen - page.seam_pen) < 0.004 and math.dist(*points) > 60:
                (x0, y0), (x1, y1) = points
                ends = (x0 - dx, y0 - dy, x1 - dx, y1 - dy)
                same = next((known for known in on_pages if max(abs(a - b) for a, b in zip(known, ends)) < 2 * IN_LINES), ends)
                on_pages.setdefault(same, []).append((page, points))
    for length in (math.dist(*points) for found in on_pages.values() for _, points in found):
        if abs(length - 10 * round(length / 10)) > 2 * IN_LINES:
            yield f"seam check: a line of {length:.3f} mm on {name}"
    if not is_whole:
        return
    shifts = [s for _, s, _ in tiles]
    for axis, way in ((0, "level"), (1, "upright")):
        apart = any(abs(a[axis] - b[axis]) > 50 and abs(a[1 - axis] - b[1 - axis]) < 1 for a, b in itertools.combinations(shifts, 2))
        seen = [found for key, found in on_pages.items() if (abs(key[0] - key[2]) > 1) == (axis == 0)]
        if apart and not seen:
            yield f"seam check: {name} has none that is {way}"
        for found in seen:
            shown = sum(1 for page, points in found if is_inked(page, points, axis))
            if shown < 2:
                yield f"seam check: a {way} line of {name} shows on {shown} pages"


def is_inked(page, points, axis):
    """Whether some millimetres of a line show in the dots of a page."""
    (x0, y0), (x1, y1) = points
    places = [(x0 + (x1 - x0) * t, y0 + (y1 - y0) * t) for t in (0.03, 0.08, 0.17, 0.29, 0.37, 0.45, 0.57, 0.66, 0.74, 0.83, 0.92, 0.97)]
    return any(page_has(page, place) and (off := across(page, place, (0, 1) if axis == 0 else (1, 0), pen=page.seam_pen)) is not None and abs(off) < IN_DOTS
               for place in places)


def page_has(page, place):
    return 22 < place[0] < page.width - 10 and 30 < place[1] < page.height - 10


def vertices_of(piece):
    return [tuple(v[:2]) for line in piece.finish for v in line.vertices]


def tiles_of(record, pages):
    """For each piece its pages, each with its shift and how far off the places along the finish line lie.

    Two pieces of one job may be alike, so that a page could be taken for another's: it is that of the piece which it fits best."""
    tiles, laid = defaultdict(list), [p.on_paper() for p in record.pieces]
    for page in pages:
        if not any(scale_checks(page)):
            continue
        best = nothing = (0.0, 0.0, 0, -len(pages))
        margins = record.margins(record.lies_across(page.width, page.height))
        for piece in laid:
            wanted = vertices_of(piece)
            shift, votes, brought = shift_of(page, wanted)
            if shift is None or votes < min(3, len(wanted)):
                continue
            offs = dots_off(piece, page, shift, margins)
            share = sum(abs(off) <= IN_DOTS for off in offs.values()) / max(1, len(offs))
            # One outline with holes and without: that without has all its vertices on either page, that with them only on its own.
            # Of two that are the same in every line each has as many pages as the other.
            fit = (share, brought / len(wanted), brought, -len(tiles[piece.name]))
            if fit > best:
                best, found = fit, (piece.name, (page, shift, offs))
        if best > nothing:
            tiles[found[0]].append(found[1])
    return tiles


def datum_refusals(piece, tiles):
    # Four strokes of the open cross point at the middle, 1 mm off it; the circle's corners lie half a diameter off it.
    for label, (x, y), diameter in piece.datums:
        here = (math.hypot(x + dx - px, y + dy - py) for page, (dx, dy), _ in tiles for px, py in page.corners(page.datum_pen))
        if not any(abs(d - (diameter / 2 or 1)) < IN_LINES for d in here):
            yield f"datum: {label} is on no page"


def dots_off(piece, page, shift, margins):
    """How far off the printed dots lie at places along the finish line that this page shows clear of other lines."""
    segments = [s for line in piece.finish for s in line.segments if s.length > 3]
    places = [segment.at(t) for segment in segments for t in (0.11, 0.29, 0.5, 0.68, 0.87)]
    looked = []
    # A curve of a hundred arcs is not truer for being looked at five hundred times; on every page at the same places, for the seams.
    for (x, y), (ux, uy) in places[::1 + len(places) // MOST_PLACES.get(piece.kind, FEWER_PLACES)]:
        px, py = x + shift[0], y + shift[1]
        # A printer's correction makes the margins wider by what it moves; what lies nearer to the edge than that is not looked at.
        (moved_x, moved_y), (left, right, top, bottom) = page.moved(), margins
        if left + moved_x + 14 < px < page.width - right - moved_x - 1 and bottom + moved_y + 21 < py < page.height - top - moved_y - 1:
            looked.append(((x, y), (px, py), (-uy, ux)))
    offs = {at: across(page, there, normal) for at, there, normal in looked}
    return {at: off for at, off in offs.items() if off is not None}


def blank_refusals(record, pdf):
    """No page is empty, and nothing is printed where the printer cannot."""
    with tempfile.TemporaryDirectory() as folder:
        subprocess.run(["pdftoppm", "-gray", "-r", "72", pdf, f"{folder}/p"], check=True)
        for number, path in enumerate(sorted(Path(folder).glob("*.pgm")), 1):
            raw = path.read_bytes()
            head = re.match(rb"P5\s+(\d+)\s+(\d+)\s+255\s", raw)
            grey = numpy.frombuffer(raw[head.end():], dtype=numpy.uint8).reshape(int(head.group(2)), int(head.group(1)))
            left, right, top, bottom = (int(max(0, m - 0.5) * 72 / 25.4) for m in record.margins(record.lies_across(grey.shape[1] * 25.4 / 72, grey.shape[0] * 25.4 / 72)))
            if (grey < 128).sum() < 400:
                yield f"blank: page {number}"
            inner = grey.copy()
            inner[top:inner.shape[0] - bottom, left:inner.shape[1] - right] = 255
            if (inner < 200).any():
                yield f"margin: page {number} has ink where the printer has none"


def handless_pages(record, pdf):
    """Every page says which hand it is, in words that can be searched."""
    pages = subprocess.run(["pdftotext", pdf, "-"], capture_output=True, text=True, check=True).stdout.split("\f")[:-1]
    for number, text in enumerate(pages, 1):
        # A piece that is its own mirror image serves either hand, and the second face of a plate the other one.
        if not re.search(r"(EITHER|LEFT|RIGHT)\s+HAND" if number > 1 else rf"(EITHER|{record.json['hand'].upper()})\s+HAND", text):
            yield f"words: page {number} does not say of which hand it is"


def changed(record, factor_x, factor_y):
    """The record as it would be for a drawing of another scale or hand."""
    spoiled = json.loads(record.text)
    for piece in spoiled["pieces"]:
        for line in piece["finish"]:
            line["vertices"] = [[x * factor_x, y * factor_y, b * (1 if factor_x * factor_y > 0 else -1)] for x, y, b in line["vertices"]]
        for datum in piece["datums"]:
            datum["at"] = [datum["at"][0] * factor_x, datum["at"][1] * factor_y]
    return Record(record.folder, json.dumps(spoiled))


def looked_at(folder, record):
    """Everything there is to say of one job."""
    name = f"{record.folder.relative_to(folder)}/template.pdf"
    pages = pages_of(str(record.folder / "template.pdf"), record)
    told = [(f"{name} is true on {len(pages)} pages, in lines and in dots", list(refusals(record, pages)), "")]
    for sheet in ("template.pdf", "job-sheet.pdf"):
        told.append((f"{record.folder.relative_to(folder)}/{sheet} has no empty page and keeps off the margin",
                     list(blank_refusals(record, str(record.folder / sheet))), ""))
        told.append((f"{record.folder.relative_to(folder)}/{sheet} says its hand on every page", list(handless_pages(record, str(record.folder / sheet))), ""))
    if record.folder.name == "notch-measured":
        told.append((f"{name} against a job scaled by 1.001", list(refusals(changed(record, 1.001, 1.001), pages)), "vertex"))
        told.append((f"{name} against the mirrored job", list(refusals(changed(record, -1, 1), pages)), "vertex"))
    return told


def main(folder):
    verdicts = Verdicts()
    # Nearly all of the time is that of the programs which draw pages, so threads keep every core at work.
    with ThreadPoolExecutor(os.cpu_count()) as workers:
        for told in workers.map(lambda record: looked_at(folder, record), jobs_in(folder)):
            for what, refused, rule in told:
                if rule:
                    verdicts.refused(what, refused, rule)
                else:
                    verdicts.of(what, refused)
            sys.stdout.flush()
    verdicts.end()


main(Path(sys.argv[1]))
