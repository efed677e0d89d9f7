"""The cut files, read by ezdxf and GDAL and held against job.json: dxf.py FOLDER-OF-JOBS"""
import math
import re
import subprocess
import sys
import tempfile
from pathlib import Path

import ezdxf
from ezdxf import recover
from ezdxf.math import Matrix44

from curves import Line, Segment, bounds, overlap
from record import jobs_in
from verdicts import Verdicts

LENGTH = 1e-6  # mm
CUT, DATUM, EDGE, DRILL = "CUT", "DATUM", "FINISHED-EDGE", "DRILL"
USUAL = "r2000"
# Release, unit in the header, and how many mm one is; R12 has no place for a unit.
FORMS = {USUAL: ("AC1015", 4, 1.0), "r2000-in": ("AC1015", 1, 25.4), "r12": ("AC1009", None, 1.0), "r12-in": ("AC1009", None, 25.4)}
KERF = 0.01  # mm: how near the slot's edge comes to the finished edge, and how far it may reach over it


def line_of(entity, mm=1.0):
    """An entity as a run of lines and arcs in mm; one of its own units is so many."""
    kind = entity.dxftype()
    if kind == "LINE":
        return Line((Segment((entity.dxf.start.x * mm, entity.dxf.start.y * mm), (entity.dxf.end.x * mm, entity.dxf.end.y * mm), 0.0),), False)
    if kind == "LWPOLYLINE":
        return Line.of([(x * mm, y * mm, b) for x, y, b in entity.get_points("xyb")], bool(entity.closed))
    if kind == "POLYLINE":
        return Line.of([(v.dxf.location.x * mm, v.dxf.location.y * mm, v.dxf.get("bulge", 0.0)) for v in entity.vertices], bool(entity.is_closed))
    (cx, cy), r = entity.dxf.center.vec2 * mm, entity.dxf.radius * mm
    if kind == "CIRCLE":
        return Line.of([(cx + r, cy, 1.0), (cx - r, cy, 1.0)], True)
    a0, a1 = math.radians(entity.dxf.start_angle), math.radians(entity.dxf.end_angle)
    sweep = (a1 - a0) % (2 * math.pi)
    on = lambda a: (cx + r * math.cos(a), cy + r * math.sin(a))
    return Line((Segment(on(a0), on(a0 + sweep), math.tan(sweep / 4)),), False)


def refusals(path, piece, form=USUAL):
    """Everything that is wrong with a cut file, each beginning with the rule that it breaks."""
    release, unit, mm = FORMS[form]
    document, auditor = recover.readfile(str(path))
    if auditor.errors or auditor.fixes:
        yield f"repair: {len(auditor.errors)} errors, {len(auditor.fixes)} repairs"
    document = ezdxf.readfile(str(path))
    if document.audit().fixes:
        yield "repair: the audit mends something"
    if document.dxfversion != release or (unit and document.header["$INSUNITS"] != unit):
        yield f"header: unit {document.header.get('$INSUNITS')}, version {document.dxfversion}"
    if not unit and f"Unit: {'in' if mm > 1 else 'mm'}" not in path.read_text("ascii").splitlines()[1]:
        yield "header: no comment says the unit"
    entities = list(document.modelspace())
    strange = {e.dxftype() for e in entities} - {"LINE", "ARC", "CIRCLE", "LWPOLYLINE" if unit else "POLYLINE"}
    if strange:
        yield f"entities: {strange}"
    if any(tuple(e.dxf.extrusion) != (0, 0, 1) for e in entities):
        yield "extrusion: an entity is seen from below"
    seen = gdal_count(path)
    if seen != len(entities):
        yield f"gdal: sees {seen} of {len(entities)} entities"

    cuts = [line_of(e, mm) for e in entities if e.dxf.layer == CUT]
    wanted = piece.cut
    yield from differs("length", sum(c.length for c in cuts), wanted["length"], LENGTH)
    for name, found, said in zip(("lower left", "upper right"), bounds(cuts), (wanted["bounds"]["min"], wanted["bounds"]["max"])):
        for axis in (0, 1):
            yield from differs(f"bounds: {name}", found[axis], said[axis], LENGTH)
    if (sum(not c.closed for c in cuts), sum(c.closed for c in cuts)) != (wanted["open"], wanted["closed"]):
        yield f"open: {sum(not c.closed for c in cuts)} open and {sum(c.closed for c in cuts)} closed"
    edges = cuts
    if piece.plan:
        # The course of a torch is open, so the finished edge has a layer of its own.
        edges = [line_of(e, mm) for e in entities if e.dxf.layer == EDGE]
        yield from kerf_refusals(cuts, edges, piece, [line_of(e, mm) for e in entities if e.dxf.layer == DRILL and e.dxftype() == "CIRCLE"])
    if piece.kind != "cut away":
        area = sum(abs(c.area()) for c in edges) if len(edges) == 1 else max(abs(c.area()) for c in edges) * 2 - sum(abs(c.area()) for c in edges)
        yield from differs("area", area, piece.json["area"], LENGTH * piece.json["boundary"])
    # The finish line's own corners, in their places: a mirror image has others.
    for line in piece.finish:
        for x, y, _ in line.vertices:
            if not on_a_cut((x, y), edges):
                yield f"vertices: none at {x}, {y}"
                break
    every = [(n, s) for n, c in enumerate(cuts) for s in c.segments]
    for i, (of_a, a) in enumerate(every):
        for of_b, b in every[i + 1:]:
            # An overcut runs over its own beginning.
            if overlap(a, b) > 1e-4 and not (piece.plan and of_a == of_b):
                yield f"doubled: {a.start} to {a.end}"
    circles = [(e.dxf.center.x * mm, e.dxf.center.y * mm, 2 * mm * e.dxf.radius) for e in entities if e.dxf.layer == DATUM and e.dxftype() == "CIRCLE"]
    for label, (x, y), diameter in piece.datums:
        if diameter and not any(math.dist((x, y), c[:2]) <= LENGTH and abs(c[2] - diameter) <= LENGTH for c in circles):
            yield f"datum: no mark for {label} at {x}, {y}"


def chords(lines, step=0.4):
    """Points along lines, no farther apart than a step."""
    points = []
    for segment in (s for line in lines for s in line.segments):
        (x0, y0), (x1, y1) = segment.start, segment.end
        count = max(2, math.ceil(math.dist(segment.start, segment.end) * (1.6 if segment.bulge else 1) / step))
        if not segment.bulge:
            points += [(x0 + (x1 - x0) * i / count, y0 + (y1 - y0) * i / count) for i in range(count + 1)]
            continue
        (cx, cy), r = segment.centre, segment.radius
        a0 = math.atan2(y0 - cy, x0 - cx)
        points += [(cx + r * math.cos(a0 + segment.sweep * i / count), cy + r * math.sin(a0 + segment.sweep * i / count)) for i in range(count + 1)]
    return points


def distance(point, segments):
    """From a point to the nearest of some lines and arcs."""
    least = math.inf
    for segment in segments:
        (x0, y0), (x1, y1) = segment.start, segment.end
        if segment.bulge:
            (cx, cy), a0 = segment.centre, math.atan2(y0 - segment.centre[1], x0 - segment.centre[0])
            turn = (math.atan2(point[1] - cy, point[0] - cx) - a0) * (1 if segment.sweep > 0 else -1) % (2 * math.pi)
            if turn <= abs(segment.sweep):
                least = min(least, abs(math.dist(point, (cx, cy)) - segment.radius))
        else:
            along = ((point[0] - x0) * (x1 - x0) + (point[1] - y0) * (y1 - y0)) / ((x1 - x0) ** 2 + (y1 - y0) ** 2)
            if 0 <= along <= 1:
                least = min(least, math.dist(point, (x0 + along * (x1 - x0), y0 + along * (y1 - y0))))
        least = min(least, math.dist(point, segment.start), math.dist(point, segment.end))
    return least


def kerf_refusals(cuts, edges, piece, drilled):
    """The slot keeps off the finished edge, and comes to it wherever the plan does not say that it is drilled, held or out of reach."""
    half = piece.plan["kerf"] / 2
    if len(cuts) != len(piece.plan["cuts"]):
        yield f"kerf: {len(cuts)} cuts of {len(piece.plan['cuts'])}"
    for found, said in zip(cuts, piece.plan["cuts"]):
        if math.dist(found.segments[0].start, said["from"]) > LENGTH or math.dist(found.segments[-1].end, said["to"]) > LENGTH:
            yield f"order: a cut from {found.segments[0].start}, but job.json says {said['from']}"
    if piece.plan["kerf_from"] == "controller":
        return
    walls = [s for e in edges for s in e.segments if not any(abs(distance(s.start, d.segments)) <= LENGTH for d in drilled)]
    nearest = min((distance(p, walls) for p in chords(cuts)), default=half)
    if nearest < half - KERF:
        yield f"kerf: the slot reaches {half - nearest} mm over the finished edge"
    course = [s for c in cuts for s in c.segments]
    spared = [(t["at"], max(3 * half, 1.0) + t["size"]) for t in piece.plan["not_cut"]]
    for segment in walls:
        middle = chords([Line((segment,), False)])[1:-1]
        for point in middle[::5]:
            if any(math.dist(point, at) <= reach for at, reach in spared):
                continue
            if distance(point, course) > half + KERF:
                yield f"kerf: the slot does not come to {point}"
                return


def on_a_cut(point, cuts):
    for segment in (s for c in cuts for s in c.segments):
        if min(math.dist(point, segment.start), math.dist(point, segment.end)) <= LENGTH:
            return True
        if segment.bulge and abs(math.dist(point, segment.centre) - segment.radius) <= LENGTH:
            (cx, cy) = segment.centre
            a0 = math.atan2(segment.start[1] - cy, segment.start[0] - cx)
            turn = (math.atan2(point[1] - cy, point[0] - cx) - a0) * (1 if segment.bulge > 0 else -1) % (2 * math.pi)
            if turn <= abs(segment.sweep) + 1e-9:
                return True
    return False


def differs(rule, found, wanted, within):
    if abs(found - wanted) > within:
        yield f"{rule}: {found!r}, but job.json says {wanted!r}"


def gdal_count(path):
    told = subprocess.run(["ogrinfo", "-ro", "-so", "-al", str(path)], capture_output=True, text=True)
    found = re.search(r"Feature Count: (\d+)", told.stdout)
    return int(found.group(1)) if told.returncode == 0 and found else -1


def changed(path, change, folder):
    """A copy of a cut file with something changed."""
    document = ezdxf.readfile(str(path))
    change(document.modelspace())
    spoiled = Path(folder) / f"spoiled-{path.name}"
    document.saveas(spoiled)
    return spoiled


def scaled(modelspace):
    for entity in modelspace:
        entity.transform(Matrix44.scale(1.001, 1.001, 1.001))


def mirrored(modelspace):
    # Point by point: a mirroring transform would only turn the entities' axes over and leave their numbers as they are.
    for entity in modelspace.query(f"LWPOLYLINE[layer=='{CUT}']"):
        entity.set_points([(-x, y, -bulge) for x, y, bulge in entity.get_points("xyb")], format="xyb")
    for circle in modelspace.query(f"CIRCLE[layer=='{CUT}']"):
        circle.dxf.center = (-circle.dxf.center.x, circle.dxf.center.y)


def is_its_own_mirror_image(path):
    places = set()
    for entity in ezdxf.readfile(str(path)).modelspace().query(f"LWPOLYLINE CIRCLE[layer=='{CUT}']"):
        found = [entity.dxf.center] if entity.dxftype() == "CIRCLE" else entity.get_points("xy")
        places |= {(round(p[0], 4) + 0.0, round(p[1], 4) + 0.0) for p in found}
    return places == {(-x + 0.0, y) for x, y in places}


def aside(modelspace):
    for entity in (e for e in modelspace if e.dxf.layer == CUT):
        entity.transform(Matrix44.translate(0.05, 0.05, 0))


def doubled(modelspace):
    cut = next(e for e in modelspace if e.dxf.layer == CUT)
    modelspace.add_entity(cut.copy())


def main(folder):
    verdicts = Verdicts()
    tried = set()
    for record in jobs_in(folder):
        for piece in (p for p in record.pieces if p.cut):
            path = record.folder / piece.cut["file"]
            name = f"{record.folder.relative_to(folder)}/{path.name}"
            verdicts.of(f"{name} is read with nothing to repair, and is what job.json says", refusals(path, piece, record.dxf))
            kind = (piece.kind, bool(piece.plan))
            if record.dxf != USUAL or kind in tried or (piece.kind == "cut away" and is_its_own_mirror_image(path)):
                continue
            tried.add(kind)
            with tempfile.TemporaryDirectory() as there:
                verdicts.refused(f"{name} scaled by 1.001", refusals(changed(path, scaled, there), piece), "length")
                verdicts.refused(f"{name} with a doubled line", refusals(changed(path, doubled, there), piece), "doubled")
                if piece.plan:
                    verdicts.refused(f"{name} with its cuts 0.05 mm aside", refusals(changed(path, aside, there), piece), "kerf")
                elif piece.kind == "cut away":
                    verdicts.refused(f"{name} mirrored", refusals(changed(path, mirrored, there), piece), "vertices")
    verdicts.end()


main(Path(sys.argv[1]))
