"""Lines and arcs as a DXF polyline writes them: points, and bulge = tan(sweep / 4), positive counter-clockwise. All in mm.

Written from the definitions, independently of the program."""
import math
from dataclasses import dataclass


@dataclass(frozen=True)
class Segment:
    start: tuple
    end: tuple
    bulge: float

    @property
    def chord(self):
        return math.dist(self.start, self.end)

    @property
    def sweep(self):
        return 4 * math.atan(self.bulge)

    @property
    def radius(self):
        return self.chord * (1 + self.bulge ** 2) / (4 * abs(self.bulge))

    @property
    def centre(self):
        (x0, y0), (x1, y1), b = self.start, self.end, self.bulge
        to_left = (1 - b * b) / (4 * b)
        return ((x0 + x1) / 2 - (y1 - y0) * to_left, (y0 + y1) / 2 + (x1 - x0) * to_left)

    @property
    def length(self):
        return self.chord if self.bulge == 0 else self.radius * abs(self.sweep)

    def at(self, t):
        """The point at a fraction t of the length, and the unit vector along the segment there."""
        if self.bulge == 0:
            (x0, y0), (x1, y1), n = self.start, self.end, self.chord
            return (x0 + (x1 - x0) * t, y0 + (y1 - y0) * t), ((x1 - x0) / n, (y1 - y0) / n)
        (cx, cy), r = self.centre, self.radius
        a = math.atan2(self.start[1] - cy, self.start[0] - cx) + self.sweep * t
        turn = 1 if self.bulge > 0 else -1
        return (cx + r * math.cos(a), cy + r * math.sin(a)), (-turn * math.sin(a), turn * math.cos(a))

    def extremes(self):
        """Points that bound it."""
        yield self.start
        yield self.end
        if self.bulge:
            (cx, cy), r = self.centre, self.radius
            a0 = math.atan2(self.start[1] - cy, self.start[0] - cx)
            low, high = min(a0, a0 + self.sweep), max(a0, a0 + self.sweep)
            for k in range(-8, 9):
                a = k * math.pi / 2
                if low < a < high:
                    yield cx + r * math.cos(a), cy + r * math.sin(a)


@dataclass(frozen=True)
class Line:
    """A run of segments."""
    segments: tuple
    closed: bool

    @staticmethod
    def of(vertices, closed):
        """From (x, y, bulge of what follows)."""
        following = list(vertices[1:]) + ([vertices[0]] if closed else [])
        return Line(tuple(Segment((a[0], a[1]), (b[0], b[1]), a[2]) for a, b in zip(vertices, following)), closed)

    @property
    def length(self):
        return math.fsum(s.length for s in self.segments)

    @property
    def vertices(self):
        starts = [(*s.start, s.bulge) for s in self.segments]
        return starts if self.closed else starts + [(*self.segments[-1].end, 0.0)]

    def area(self):
        """Of what a closed line encloses, positive counter-clockwise; an open one is closed by a straight line."""
        ox, oy = self.segments[0].start
        corners = [s.start for s in self.segments] + ([] if self.closed else [self.segments[-1].end])
        polygon = math.fsum(
            (ax - ox) * (by - oy) - (bx - ox) * (ay - oy)
            for (ax, ay), (bx, by) in zip(corners, corners[1:] + corners[:1])) / 2
        return polygon + math.fsum(
            s.radius ** 2 / 2 * (s.sweep - math.sin(s.sweep)) for s in self.segments if s.bulge)


def bounds(lines):
    points = [p for line in lines for s in line.segments for p in s.extremes()]
    xs, ys = [p[0] for p in points], [p[1] for p in points]
    return (min(xs), min(ys)), (max(xs), max(ys))


def overlap(a, b, tolerance=1e-4):
    """The length in mm over which two segments run on top of each other."""
    if (a.bulge == 0) != (b.bulge == 0):
        return 0.0
    if a.bulge == 0:
        (x, y), (ux, uy) = a.at(0)
        along = sorted((px - x) * ux + (py - y) * uy for px, py in (b.start, b.end))
        aside = max(abs((py - y) * ux - (px - x) * uy) for px, py in (b.start, b.end))
        return max(0.0, min(a.chord, along[1]) - max(0.0, along[0])) if aside <= tolerance else 0.0
    if math.dist(a.centre, b.centre) > tolerance or abs(a.radius - b.radius) > tolerance:
        return 0.0

    def interval(s):
        a0 = math.atan2(s.start[1] - s.centre[1], s.start[0] - s.centre[0])
        return min(a0, a0 + s.sweep), max(a0, a0 + s.sweep)

    (low, high), (low2, high2) = interval(a), interval(b)
    turn = 2 * math.pi
    return a.radius * sum(max(0.0, min(high, high2 + k * turn) - max(low, low2 + k * turn)) for k in range(-3, 4))
