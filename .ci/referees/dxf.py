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
CUT, DATUM = "CUT", "DATUM"


def line_of(entity):
    """An entity as a run of lines and arcs."""
    kind = entity.dxftype()
    if kind == "LINE":
        return Line((Segment((entity.dxf.start.x, entity.dxf.start.y), (entity.dxf.end.x, entity.dxf.end.y), 0.0),), False)
    if kind == "LWPOLYLINE":
        return Line.of([tuple(p) for p in entity.get_points("xyb")], bool(entity.closed))
    (cx, cy), r = entity.dxf.center.vec2, entity.dxf.radius
    if kind == "CIRCLE":
        return Line.of([(cx + r, cy, 1.0), (cx - r, cy, 1.0)], True)
    a0, a1 = math.radians(entity.dxf.start_angle), math.radians(entity.dxf.end_angle)
    sweep = (a1 - a0) % (2 * math.pi)
    on = lambda a: (cx + r * math.cos(a), cy + r * math.sin(a))
    return Line((Segment(on(a0), on(a0 + sweep), math.tan(sweep / 4)),), False)


def refusals(path, piece):
    """Everything that is wrong with a cut file, each beginning with the rule that it breaks."""
    document, auditor = recover.readfile(str(path))
    if auditor.errors or auditor.fixes:
        yield f"repair: {len(auditor.errors)} errors, {len(auditor.fixes)} repairs"
    document = ezdxf.readfile(str(path))
    if document.audit().fixes:
        yield "repair: the audit mends something"
    if document.header["$INSUNITS"] != 4 or document.dxfversion != "AC1015":
        yield f"header: unit {document.header['$INSUNITS']}, version {document.dxfversion}"
    entities = list(document.modelspace())
    strange = {e.dxftype() for e in entities} - {"LINE", "ARC", "CIRCLE", "LWPOLYLINE"}
    if strange:
        yield f"entities: {strange}"
    if any(tuple(e.dxf.extrusion) != (0, 0, 1) for e in entities):
        yield "extrusion: an entity is seen from below"
    seen = gdal_count(path)
    if seen != len(entities):
        yield f"gdal: sees {seen} of {len(entities)} entities"

    cuts = [line_of(e) for e in entities if e.dxf.layer == CUT]
    wanted = piece.cut
    yield from differs("length", sum(c.length for c in cuts), wanted["length"], LENGTH)
    for name, found, said in zip(("lower left", "upper right"), bounds(cuts), (wanted["bounds"]["min"], wanted["bounds"]["max"])):
        for axis in (0, 1):
            yield from differs(f"bounds: {name}", found[axis], said[axis], LENGTH)
    if (sum(not c.closed for c in cuts), sum(c.closed for c in cuts)) != (wanted["open"], wanted["closed"]):
        yield f"open: {sum(not c.closed for c in cuts)} open and {sum(c.closed for c in cuts)} closed"
    if piece.kind != "cut away":
        area = sum(abs(c.area()) for c in cuts) if len(cuts) == 1 else max(abs(c.area()) for c in cuts) * 2 - sum(abs(c.area()) for c in cuts)
        yield from differs("area", area, piece.json["area"], LENGTH * piece.json["boundary"])
    # The finish line's own corners, in their places: a mirror image has others.
    for line in piece.finish:
        for x, y, _ in line.vertices:
            if not on_a_cut((x, y), cuts):
                yield f"vertices: none at {x}, {y}"
                break
    for i, a in enumerate(s for c in cuts for s in c.segments):
        for b in [s for c in cuts for s in c.segments][i + 1:]:
            if overlap(a, b) > 1e-4:
                yield f"doubled: {a.start} to {a.end}"
    circles = [(e.dxf.center.x, e.dxf.center.y, 2 * e.dxf.radius) for e in entities if e.dxf.layer == DATUM and e.dxftype() == "CIRCLE"]
    for label, (x, y), diameter in piece.datums:
        if diameter and not any(math.dist((x, y), c[:2]) <= LENGTH and abs(c[2] - diameter) <= LENGTH for c in circles):
            yield f"datum: no mark for {label} at {x}, {y}"


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
            verdicts.of(f"{name} is read with nothing to repair, and is what job.json says", refusals(path, piece))
            if piece.kind in tried:
                continue
            tried.add(piece.kind)
            with tempfile.TemporaryDirectory() as there:
                verdicts.refused(f"{name} scaled by 1.001", refusals(changed(path, scaled, there), piece), "length")
                verdicts.refused(f"{name} with a doubled line", refusals(changed(path, doubled, there), piece), "doubled")
                if piece.kind == "cut away":
                    verdicts.refused(f"{name} mirrored", refusals(changed(path, mirrored, there), piece), "vertices")
    verdicts.end()


main(Path(sys.argv[1]))
