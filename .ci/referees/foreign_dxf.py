"""Files that ezdxf writes, in every release and with every entity, come in with the right areas and are told of; repaired ones are sound.

usage: foreign_dxf.py PROGRAM.dll FOLDER
"""
import json
import math
import subprocess
import sys
from pathlib import Path

import ezdxf
from ezdxf.math import closed_uniform_bspline

from verdicts import Verdicts

program, folder = sys.argv[1], Path(sys.argv[2])
folder.mkdir(parents=True, exist_ok=True)
verdicts = Verdicts()


def check(sound, what):
    verdicts.of(what, [] if sound else ["this is not so"])


ALL = ["R12", "R2000", "R2004", "R2007", "R2010", "R2013", "R2018"]
NEW = ALL[1:]


def square(msp):
    msp.add_lwpolyline([(0, 0), (100, 0), (100, 80), (0, 80)], close=True) if msp.doc.dxfversion != "AC1009" else \
        msp.add_polyline2d([(0, 0), (100, 0), (100, 80), (0, 80)], close=True)
    return 8000.0


def lines(msp):
    corners = [(0, 0), (60, 0), (60, 45), (0, 45)]
    for a, b in zip(corners, corners[1:] + corners[:1]):
        msp.add_line(a, b)
    return 2700.0


def circle(msp):
    msp.add_circle((20, 30), 25)
    return math.pi * 625


def arcs(msp):
    msp.add_arc((0, 0), 40, 30, 210)
    msp.add_arc((0, 0), 40, 210, 30)
    return math.pi * 1600


def bulges(msp):
    points = [(0, 0, 0, 0, 0), (100, 0, 0, 0, 1), (100, 50, 0, 0, 0), (0, 50, 0, 0, -0.4)]
    if msp.doc.dxfversion == "AC1009":
        line = msp.add_polyline2d([(p[0], p[1], p[4]) for p in points], format="xyb", close=True)
    else:
        msp.add_lwpolyline(points, close=True)
    half = math.pi * 25 * 25 / 2
    sweep = 4 * math.atan(0.4)
    radius = 50 * (1 + 0.16) / (4 * 0.4)
    return 100 * 50 + half - radius * radius * (sweep - math.sin(sweep)) / 2


def wide_bulge(msp):
    points = [(0, 0, 0, 0, 3), (10, 0, 0, 0, 0)]
    if msp.doc.dxfversion == "AC1009":
        msp.add_polyline2d([(p[0], p[1], p[4]) for p in points], format="xyb", close=True)
    else:
        msp.add_lwpolyline(points, close=True)
    sweep = 4 * math.atan(3)
    radius = 10 * (1 + 9) / 12
    return radius * radius * (sweep - math.sin(sweep)) / 2


def upside_down(msp):
    msp.add_circle((-20, 30), 25, dxfattribs={"extrusion": (0, 0, -1)})
    msp.add_arc((-200, 0), 10, 0, 180, dxfattribs={"extrusion": (0, 0, -1)})
    msp.add_line((190, 0), (210, 0))
    return math.pi * 625 + math.pi * 50


def ellipse(msp):
    msp.add_ellipse((10, 10), major_axis=(60, 20), ratio=0.37)
    return math.pi * 4000 * 0.37


def half_ellipse(msp):
    msp.add_ellipse((0, 0), major_axis=(50, 0), ratio=0.5, start_param=0, end_param=math.pi)
    msp.add_line((-50, 0), (50, 0))
    return math.pi * 50 * 25 / 2


def spline(msp):
    controls = [(0, 0), (40, 90), (120, 70), (140, -10), (60, -60), (10, -40)]
    curve = closed_uniform_bspline([(x, y, 0) for x, y in controls], order=4)
    msp.add_spline().apply_construction_tool(curve)
    return area_of(curve)


def rational(msp):
    # A whole circle as nine weighted control points: known exactly.
    w = math.sqrt(0.5)
    r = 30
    controls = [(r, 0), (r, r), (0, r), (-r, r), (-r, 0), (-r, -r), (0, -r), (r, -r), (r, 0)]
    msp.add_rational_spline(
        [(x, y, 0) for x, y in controls], weights=[1, w, 1, w, 1, w, 1, w, 1], degree=2, knots=[0, 0, 0, 1, 1, 2, 2, 3, 3, 4, 4, 4])
    return math.pi * r * r


def open_spline(msp):
    controls = [(0, 0, 0), (30, 80, 0), (70, 80, 0), (100, 0, 0)]
    msp.add_open_spline(controls, degree=3)
    msp.add_line((100, 0), (0, 0))
    return area_of(msp[0].construction_tool())


def area_of(curve):
    # Green's theorem by Gauss' rule on each stretch between knots, the closing chord included.
    nodes = [(-0.9061798459386640, 0.2369268850561891), (-0.5384693101056831, 0.4786286704993665), (0, 0.5688888888888889),
             (0.5384693101056831, 0.4786286704993665), (0.9061798459386640, 0.2369268850561891)]
    knots = sorted(set(curve.knots()))
    low, high = curve.knots()[curve.degree], curve.knots()[curve.count]
    total = 0.0
    for a, b in zip(knots, knots[1:]):
        if a < low - 1e-12 or b > high + 1e-12:
            continue
        for x, weight in nodes:
            t = (a + b) / 2 + (b - a) / 2 * x
            p, d = curve.derivative(t, 1)
            total += weight * (b - a) / 2 * (p.x * d.y - p.y * d.x) / 2
    start, end = curve.point(low), curve.point(high)
    return abs(total + (end.x * start.y - end.y * start.x) / 2)


def blocks(msp):
    block = msp.doc.blocks.new("PLATE", base_point=(5, 5))
    block.add_circle((5, 5), 10)
    inner = msp.doc.blocks.new("PAIR")
    inner.add_blockref("PLATE", (0, 0))
    inner.add_blockref("PLATE", (30, 0), dxfattribs={"xscale": -1})
    msp.add_blockref("PAIR", (100, 100), dxfattribs={"rotation": 30, "xscale": 2, "yscale": 2})
    msp.add_blockref("PLATE", (500, 0), dxfattribs={"column_count": 3, "row_count": 2, "column_spacing": 40, "row_spacing": 50})
    return 2 * math.pi * 400 + 6 * math.pi * 100


def squeezed(msp):
    block = msp.doc.blocks.new("DISC")
    block.add_circle((0, 0), 10)
    if msp.doc.dxfversion != "AC1009":
        block.add_lwpolyline([(30, 0, 0, 0, 1), (50, 0, 0, 0, 0)], close=True)
    msp.add_blockref("DISC", (0, 0), dxfattribs={"xscale": 3, "yscale": 1.5, "rotation": 20})
    return math.pi * 100 * 4.5 + (math.pi * 50 * 4.5 if msp.doc.dxfversion != "AC1009" else 0)


def old_polyline(msp):
    msp.add_polyline2d([(0, 0), (50, 0), (50, 20), (0, 20)], close=True)
    return 1000.0


def in_space(msp):
    msp.add_polyline3d([(0, 0, 7), (70, 0, 7), (70, 10, 7), (0, 10, 7)], close=True)
    return 700.0


SHAPES = {f.__name__: f for f in [square, lines, circle, arcs, bulges, wide_bulge, upside_down, ellipse, half_ellipse, spline, rational,
                                  open_spline, blocks, squeezed, old_polyline, in_space]}
NOT_IN_R12 = {"ellipse", "half_ellipse", "spline", "rational", "open_spline"}


def read(path, *more):
    ran = subprocess.run(["dotnet", program, "check-dxf", str(path), "--json", *more], capture_output=True, text=True)
    try:
        return ran.returncode, json.loads(ran.stdout)
    except ValueError:
        return ran.returncode, {"layers": [], "findings": [], "mended": [], "error": ran.stdout + ran.stderr}


def area(report):
    return sum(layer["area"] for layer in report["layers"])


for name, draw in SHAPES.items():
    for release in ALL if name not in NOT_IN_R12 else NEW:
        # The releases differ in their headers and tables; every entity is read in the oldest, the usual and the newest one.
        if release not in ("R12", "R2000", "R2018") and name not in ("square", "spline", "blocks"):
            continue
        doc = ezdxf.new(release)
        doc.header["$INSUNITS"] = 4
        doc.header["$MEASUREMENT"] = 1
        wanted = draw(doc.modelspace())
        path = folder / f"{name}-{release}.dxf"
        doc.saveas(path)
        code, report = read(path)
        off = abs(area(report) - wanted) / wanted
        check(off <= 1e-6, f"{name} {release}: area {area(report):.6f}, off by {off:.1e}" + report.get("error", "")[:300])

# Inches become millimetres once.
doc = ezdxf.new("R2010")
doc.header["$INSUNITS"] = 1
doc.header["$MEASUREMENT"] = 0
doc.modelspace().add_circle((0, 0), 2)
doc.saveas(folder / "inches.dxf")
_, report = read(folder / "inches.dxf")
check(abs(area(report) / (math.pi * 50.8 ** 2) - 1) <= 1e-6, f"inches: area {area(report):.4f}")

# What is wrong is told, and mended where it can be.
doc = ezdxf.new("R2000", setup=False)
doc.header["$INSUNITS"] = 0
msp = doc.modelspace()
for a, b in [((0, 0), (100, 0)), ((100, 0), (100, 60)), ((100, 60.15), (0, 60)), ((0, 60), (0, 0)), ((0, 0), (100, 0)), ((20, 0), (70, 0))]:
    msp.add_line(a, b)
msp.add_line((40, 40), (40, 40))
chords = [(50 + 15 * math.cos(2 * math.pi * i / 90), 30 + 15 * math.sin(2 * math.pi * i / 90)) for i in range(90)]
msp.add_lwpolyline(chords, close=True)
msp.add_text("PART 7")
doc.saveas(folder / "wrong.dxf")
code, report = read(folder / "wrong.dxf")
kinds = {f["kind"] for f in report["findings"]}
wanted = {"no-unit", "gap", "doubled", "overlapping", "zero-length", "chords-of-arc", "not-cut"}
check(code == 1 and kinds == wanted, f"wrong: told {sorted(kinds)}, wanted {sorted(wanted)}")
code, report = read(folder / "wrong.dxf", "--repair", str(folder / "mended.dxf"), "--replace")
check(code == 0 and report["findings"] == [], f"mended: left {report['findings']} {report.get('error', '')}")
mended = ezdxf.readfile(folder / "mended.dxf")
errors = mended.audit().errors
kinds = sorted(e.dxftype() for e in mended.modelspace())
check(not errors and mended.header["$INSUNITS"] == 4 and kinds == ["CIRCLE", "LWPOLYLINE"], f"mended: {kinds}, {len(errors)} errors")

# What nobody sees is left out of what is cut, in a block of a frozen layer, too; what lies on a corner closes there; metres are told of.
doc = ezdxf.new("R2010")
doc.header["$INSUNITS"] = 6
doc.header["$MEASUREMENT"] = 1
doc.layers.add("OFF").off()
doc.layers.add("COLD").freeze()
block = doc.blocks.new("PLATE")
block.add_circle((0, 0), 3)
msp = doc.modelspace()
msp.add_lwpolyline([(0, 0.15), (0, 60), (100, 60), (100, 0), (0, 0)])
msp.add_circle((50, 30), 5, dxfattribs={"layer": "OFF"})
msp.add_blockref("PLATE", (20, 30), dxfattribs={"layer": "COLD"})
doc.saveas(folder / "hidden.dxf")
code, report = read(folder / "hidden.dxf")
kinds = {f["kind"] for f in report["findings"]}
check(code == 1 and kinds >= {"unusual-unit", "too-wide", "hidden-layer"}, f"hidden: told {sorted(kinds)}")
code, report = read(folder / "hidden.dxf", "--unit", "mm", "--repair", str(folder / "seen.dxf"), "--replace")
seen = ezdxf.readfile(folder / "seen.dxf")
corners = sorted((round(x, 6), round(y, 6)) for e in seen.modelspace() for x, y in e.get_points("xy"))
check(code == 0 and corners == [(0, 0), (0, 60), (100, 0), (100, 60)], f"hidden: left out, corners {corners} {report.get('error', '')}")
verdicts.end()
