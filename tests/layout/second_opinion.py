"""A second opinion on roof geometry: random roofs, answered once by layout (the program named first on
the command line) and once by shapely, written independently: clearances as distances of shapes, areas
as unions, pathways by erosion of the free roof, connectivity and bisection.

Usage: second_opinion.py ANSWERS [ROOFS] [SEED]
"""
import math
import random
import subprocess
import sys
import time

from shapely.affinity import rotate, translate
from shapely.geometry import LineString, MultiLineString, MultiPolygon, Point, Polygon, box
from shapely.ops import unary_union

LENGTH_TOLERANCE = 1e-6   # m, distances
AREA_TOLERANCE = 1e-6     # m²
PATHWAY_TOLERANCE = 6e-4  # m, and the same share of the width: shapely's arcs are chords
CHORDS = 24               # a quarter
SLACK = 1e-4              # m, what stands out by less stands in
YARD = 0.9144


class Plane:
    def __init__(self, corners, edges, slope, origin=(0.0, 0.0), azimuth=math.pi):
        self.corners, self.edges, self.slope = corners, edges, slope
        self.origin, self.azimuth = origin, azimuth
        self.modules, self.shapes, self.openings = [], [], []

    @property
    def polygon(self):
        return Polygon(self.corners)

    def sides(self, *kinds):
        count = len(self.corners)
        return [LineString([self.corners[i], self.corners[(i + 1) % count]])
                for i in range(count) if self.edges[i] in kinds]

    def rectangles(self):
        found = []
        for length, width, x, y, way in self.modules:
            along, up = (width, length) if way == "p" else (length, width)
            found.append(box(x, y, x + along, y + up))
        return found

    def whole_things(self):
        return [m for m in self.rectangles() if is_on(m, self.polygon)] + [Polygon(s) for s in self.shapes]

    def things(self):
        """What of modules and obstructions lies on the plane."""
        return [part for thing in self.whole_things() for part in pieces(thing.intersection(self.polygon))
                if part.area > 0]

    def write(self, out):
        # Either way round and from any corner: the answers must not depend on it.
        order = list(range(len(self.corners)))
        turn = self.turn % len(order)
        order = order[turn:] + order[:turn]
        rows = [(self.corners[i], self.edges[i]) for i in order]
        if self.is_backward:
            corners = [c for c, _ in rows][::-1]
            edges = [e for _, e in rows]
            edges = edges[:-1][::-1] + edges[-1:]
            rows = list(zip(corners, edges))
        out.append("plane %d %.17g %.17g %.17g %.17g" % (len(rows), self.slope, *self.origin, self.azimuth))
        for (x, y), edge in rows:
            out.append("%.17g %.17g %s" % (x, y, edge))
        for module in self.modules:
            out.append("module %.17g %.17g %.17g %.17g %s" % module)
        for shape in self.shapes:
            out.append("shape %d" % len(shape))
            out.extend("%.17g %.17g" % point for point in shape)
        for opening in self.openings:
            out.append("opening %.17g %.17g %.17g" % opening)


def is_on(module, polygon):
    return module.buffer(-SLACK, join_style=2).intersects(polygon)


# --- random roofs -------------------------------------------------------------------------------

def outlines(rng):
    """One outline of each form: (name, corners against the clock, edges)."""
    w, h = rng.uniform(5, 14), rng.uniform(3, 8)
    i, j = sorted((rng.uniform(0.15, 0.45) * w, rng.uniform(0.55, 0.85) * w))
    k = rng.uniform(0.2, 0.5) * h
    return {
        "rectangle": ([(0, 0), (w, 0), (w, h), (0, h)], ["eave", "rake", "ridge", "rake"]),
        "trapezoid": ([(0, 0), (w, 0), (j, h), (i, h)], ["eave", "hip", "ridge", "hip"]),
        "triangle": ([(0, 0), (w, 0), ((i + j) / 2, h)], ["eave", "hip", "hip"]),
        "valley triangle": ([((i + j) / 2, 0), (w, h), (0, h)], ["valley", "ridge", "valley"]),
        "parallelogram": ([(0, 0), (j, 0), (w, h), (i, h)], ["eave", "valley", "ridge", "hip"]),
        "low L": ([(0, 0), (i + 1, 0), (i + 1, k), (w, k), (w, h), (0, h)],
                  ["eave", "rake", "eave", "rake", "ridge", "rake"]),
        "high L": ([(0, 0), (w, 0), (w, h - k), (j, h - k), (j, h), (0, h)],
                   ["eave", "rake", "ridge", "rake", "ridge", "rake"]),
        "T": ([(i, 0), (j, 0), (j, k), (w, k), (w, h), (0, h), (0, k), (i, k)],
              ["eave", "rake", "eave", "rake", "ridge", "rake", "eave", "rake"]),
        "dormer cut": ([(0, 0), (i, 0), (i, k), (j, k), (j, 0), (w, 0), (w, h), (0, h)],
                       ["eave", "wall", "wall", "wall", "eave", "rake", "ridge", "rake"]),
        "notched eave": ([(0, 0), (i, 0), (i, k), (j, k), (j, 0), (w, 0), (w, h), (0, h)],
                         ["eave", "eave", "eave", "eave", "eave", "rake", "ridge", "rake"]),
        "narrow notch": ([(0, 0), (i, 0), (i, k), (i + 0.8, k), (i + 0.8, 0), (w, 0), (w, h), (0, h)],
                         ["eave", "eave", "eave", "eave", "eave", "rake", "ridge", "rake"]),
        "against a wall": ([(0, 0), (w, 0), (w, h), (0, h)], ["eave", "rake", "wall", "hip"]),
    }


def fill(plane, rng):
    minx, miny, maxx, maxy = plane.polygon.bounds
    length, width = rng.uniform(1.5, 2.1), rng.uniform(0.9, 1.2)
    way = rng.choice("pl")
    along, up = (width, length) if way == "p" else (length, width)
    gap = rng.choice([0, 0.02, 0.025, 0.3])
    x0 = minx + rng.choice([0, 0.3, 0.9144, rng.uniform(0, 2)])
    y0 = miny + rng.choice([0, 0.4572, 0.9144, rng.uniform(0, 2)])
    polygon = plane.polygon
    keep = rng.uniform(0.3, 1)
    y = y0
    while y + up <= maxy:
        x = x0
        while x + along <= maxx:
            inside = box(x, y, x + along, y + up).within(polygon)
            if rng.random() < keep and (inside or rng.random() < 0.02):
                plane.modules.append((length, width, x, y, way))
            x += along + gap
        y += up + gap
    for _ in range(rng.choice([0, 0, 0, 1, 3])):
        plane.modules.append((length, width, rng.uniform(minx, maxx - along), rng.uniform(miny, maxy - up),
                              rng.choice("pl")))
    del plane.modules[24:]
    for _ in range(rng.choice([0, 0, 1, 2, 4])):
        x, y = rng.uniform(minx, maxx), rng.uniform(miny, maxy)
        s = rng.uniform(0.1, 1.2)
        shape = rng.choice([[(0, 0), (s, 0), (s, s), (0, s)], [(0, 0), (s, 0.2 * s), (0.4 * s, s)],
                            [(0, 0), (s, 0), (s, 0.3 * s), (0.3 * s, 0.3 * s), (0.3 * s, s), (0, s)]])
        if Polygon([(x + a, y + b) for a, b in shape]).within(polygon):
            plane.shapes.append([(x + a, y + b) for a, b in shape])
    if rng.random() < 0.3:
        x, y = rng.uniform(minx, maxx - 1), rng.uniform((miny + maxy) / 2, maxy)
        if LineString([(x, y), (x + 0.8, y)]).within(polygon):
            plane.openings.append((x, y, 0.8))


def hip_roof(rng):
    """Four planes of one slope over a rectangle, placed in plan."""
    w = rng.uniform(6, 10)
    l = w + rng.uniform(1, 7)
    slope = rng.uniform(0.2, 0.8)
    rise = w / 2 / math.cos(slope)
    long = ([(0, 0), (l, 0), (l - w / 2, rise), (w / 2, rise)], ["eave", "hip", "ridge", "hip"])
    short = ([(0, 0), (w, 0), (w / 2, rise)], ["eave", "hip", "hip"])
    turn = rng.choice([0, 0, rng.uniform(0, 6.28)])
    planes = []
    for corners, edges, at, azimuth in [(*long, (0, 0), math.pi), (*short, (l, 0), math.pi / 2),
                                        (*long, (l, w), 0.0), (*short, (0, w), 1.5 * math.pi)]:
        c, s = math.cos(turn), math.sin(turn)
        origin = (at[0] * c + at[1] * s + 3, -at[0] * s + at[1] * c - 2)
        planes.append(Plane(list(corners), list(edges), slope, origin, (azimuth + turn) % (2 * math.pi)))
    return planes


def random_roof(rng, at):
    if at % 6 == 5:
        planes, name = hip_roof(rng), "hip roof"
    else:
        forms = outlines(rng)
        name = sorted(forms)[at % len(forms)] if at % 6 else rng.choice(sorted(forms))
        corners, edges = forms[name]
        planes = [Plane(corners, edges, rng.uniform(0.05, 0.9))]
    for plane in planes:
        plane.turn, plane.is_backward = rng.randrange(8), rng.random() < 0.5
        if not (len(planes) > 1 and rng.random() < 0.3):
            fill(plane, rng)
    return name, planes


# --- shapely's answers ---------------------------------------------------------------------------

def pieces(shape):
    if shape.is_empty:
        return []
    return list(shape.geoms) if hasattr(shape, "geoms") else [shape]


def bisect(holds, high):
    low = 0.0
    while high - low > 3e-4:
        middle = (low + high) / 2
        low, high = (middle, high) if holds(middle) else (low, middle)
    return low


def widest(free_of, polygon, sides, start, end, high):
    """Erosion: does one piece of the roof, kept w/2 from all that is in the way, touch both ends?"""
    barrier = unary_union(free_of + sides)
    start, end = unary_union(start), unary_union(end)

    def holds(width):
        left = polygon.difference(barrier.buffer(width / 2, CHORDS)) if not barrier.is_empty else polygon
        return any(piece.distance(start) < 1e-7 and piece.distance(end) < 1e-7 for piece in pieces(left))

    return bisect(holds, high)


def widest_to_corner(things, polygon, sides, base):
    """A triangle: no ring of what is in the way, widened by w/2, may reach from side to side, and a disc
    must fit on the base."""
    one, two = sides
    things = unary_union(things)

    def holds(width):
        banks = one.buffer(width / 2, CHORDS), two.buffer(width / 2, CHORDS)
        left = polygon.difference(unary_union(banks))
        if left.distance(base) > 1e-7 or left.is_empty:
            return False
        wide = things.buffer(width / 2, CHORDS).intersection(polygon)
        return not any(all(piece.intersects(bank.intersection(polygon)) for bank in banks)
                       for piece in pieces(wide))

    return bisect(holds, base.length)


def pathway(plane):
    polygon, things = plane.polygon, plane.things()
    closed = plane.sides("hip", "valley", "rake", "wall")
    ridges, eaves = plane.sides("ridge"), plane.sides("eave")
    if not ridges and len(plane.corners) == 3:
        return widest_to_corner(things, polygon, closed, eaves[0])
    if not eaves:
        return widest_to_corner(things, polygon, closed, ridges[0])
    if not ridges:  # the highest level side
        top = max(y for _, y in plane.corners)
        ridges = [s for s in closed if all(abs(y - top) < 1e-6 for _, y in s.coords)]
        closed = [s for s in closed if s not in ridges]
    minx, miny, maxx, maxy = polygon.bounds
    return widest(things, polygon, closed, eaves, ridges, maxx - minx + maxy - miny)


def in_plan(plane, x, y):
    """Right-hand unit vector and up-slope unit vector from the compass direction of the fall."""
    fall = math.sin(plane.azimuth), math.cos(plane.azimuth)
    y *= math.cos(plane.slope)
    return (plane.origin[0] - x * fall[1] - y * fall[0], plane.origin[1] + x * fall[0] - y * fall[1])


def joints(plane, other):
    """Sides that both share, in either plane's coordinates, ends matched."""
    for i in range(len(plane.corners)):
        a, b = plane.corners[i], plane.corners[(i + 1) % len(plane.corners)]
        for j in range(len(other.corners)):
            c, d = other.corners[j], other.corners[(j + 1) % len(other.corners)]
            if (math.dist(in_plan(plane, *a), in_plan(other, *d)) < 1e-6 and
                    math.dist(in_plan(plane, *b), in_plan(other, *c)) < 1e-6):
                yield (a, b), (d, c), i


def straddling(plane, other, joint):
    (a, b), (c, d), _ = joint
    angle = math.atan2(b[1] - a[1], b[0] - a[0]) - math.atan2(d[1] - c[1], d[0] - c[0])

    def move(shape):
        return translate(rotate(shape, angle, origin=c, use_radians=True), a[0] - c[0], a[1] - c[1])

    polygon = unary_union([plane.polygon.buffer(1e-7, join_style=2), move(other.polygon).buffer(1e-7, join_style=2)])
    shared = LineString([a, b]).buffer(1e-6)

    def both(*kinds):
        lines = plane.sides(*kinds) + [move(s) for s in other.sides(*kinds)]
        return [line for line in lines if not line.within(shared)]

    things = [part for thing in plane.whole_things() + [move(t) for t in other.whole_things()]
              for part in pieces(thing.intersection(polygon)) if part.area > 0]
    minx, miny, maxx, maxy = polygon.bounds
    ridges = both("ridge")
    if not ridges:
        return None
    # The rim of the union is widened by 1e-7, and so are the ends.
    return widest(things, polygon, both("hip", "valley", "rake", "wall"),
                  [s.buffer(3e-7) for s in both("eave")], [s.buffer(3e-7) for s in ridges],
                  maxx - minx + maxy - miny)


def least(shapes, others, polygon):
    found = [0.0 if not is_on(s, polygon) else s.distance(o) for s in shapes for o in others]
    return min(found) if found else None


def section_answers(modules, gap):
    wide = unary_union([m.buffer(gap / 2 - SLACK, join_style=1) for m in modules]) if modules else Polygon()
    groups = [[m for m in modules if m.intersects(piece)] for piece in pieces(wide)]
    between = [a.distance(b) for k, one in enumerate(groups) for two in groups[:k] for a in one for b in two]
    return len(groups), min(between) if between else None


class Differing:
    def __init__(self):
        self.count, self.done = 0, 0
        self.worst = {}

    def near(self, what, name, at, is_, should, tolerance):
        self.done += 1
        kind = name.split(":")[0]
        if should is None:
            good = is_ is None
        else:
            good = is_ is not None and abs(is_ - should) <= tolerance
            if is_ is not None:
                self.worst[kind] = max(self.worst.get(kind, 0.0), abs(is_ - should))
        if not good:
            self.count += 1
            if self.count <= 20:
                print("roof %d (%s): %s: layout says %s, shapely says %s" % (at, what, name, is_, should))


def compare(at, what, planes, said, differing):
    near = lambda name, is_, should, tolerance: differing.near(what, name, at, is_, should, tolerance)
    covered = sum(unary_union(p.rectangles()).area * math.cos(p.slope) for p in planes if p.modules)
    whole = sum(p.polygon.area * math.cos(p.slope) for p in planes)
    near("covered_share", said["roof covered_share"], covered / whole, 1e-9)
    ways = [pathway(p) for p in planes]
    together = {}  # of two planes: the same seen from either
    for k, plane in enumerate(planes):
        get = lambda name: said.get("p%d %s" % (k, name))
        polygon, modules = plane.polygon, plane.rectangles()
        shapes = [Polygon(s) for s in plane.shapes]
        near("area", get("area"), polygon.area, AREA_TOLERANCE)
        near("plan_area", get("plan_area"), polygon.area * math.cos(plane.slope), AREA_TOLERANCE)
        near("covered_area", get("covered_area"), unary_union(modules).area if modules else 0, AREA_TOLERANCE)
        cores = [m.buffer(-SLACK, join_style=2) for m in modules]
        near("modules_over_edge", get("modules_over_edge"), sum(not c.within(polygon) for c in cores), 0)
        near("modules_over_obstructions", get("modules_over_obstructions"),
             sum(any(c.intersects(s) for s in shapes) for c in cores), 0)
        near("modules_overlapping", get("modules_overlapping"),
             sum(min(c.intersection(d).bounds[2] - c.intersection(d).bounds[0],
                     c.intersection(d).bounds[3] - c.intersection(d).bounds[1]) > SLACK
                 for n, c in enumerate(modules) for d in modules[:n] if c.intersection(d).area > 0), 0)
        for edge in ("eave", "ridge", "hip", "valley", "rake", "wall"):
            near("clearance:" + edge, get("clearance:" + edge), least(modules, plane.sides(edge), polygon),
                 LENGTH_TOLERANCE)
        near("clearance_to_obstructions", get("clearance_to_obstructions"), least(modules, shapes, polygon),
             LENGTH_TOLERANCE)
        near("pathway_width:" + what, get("pathway_width"), ways[k], PATHWAY_TOLERANCE * (1 + ways[k]))
        if abs(ways[k] - YARD) > 0.002:
            near("pathway_count is one or more", get("pathway_count") >= 1, ways[k] > YARD, 0)
        count, between = section_answers(modules, 0.3)
        near("section_count", get("section_count"), count, 0)
        near("gap_between_sections", get("gap_between_sections"), between, LENGTH_TOLERANCE)
        if len(planes) > 1:
            around = [(n, joint) for n, other in enumerate(planes) if n != k for joint in joints(plane, other)]
            near("adjacent_pathway_width", get("adjacent_pathway_width"), max(ways[n] for n, _ in around),
                 PATHWAY_TOLERANCE * (1 + max(ways)))
            for n, joint in around:
                if frozenset((n, k)) not in together:
                    together[frozenset((n, k))] = straddling(plane, planes[n], joint)
            across = [together[frozenset((n, k))] for n, _ in around]
            if None not in across:
                near("straddling_pathway_width", get("straddling_pathway_width"), max(across),
                     PATHWAY_TOLERANCE * (1 + max(across)))
    opening = 0
    for plane in planes:
        for x, y, width in plane.openings:
            compare_opening(near, plane, x, y, width, said, opening)
            opening += 1


def compare_opening(near, plane, x, y, width, said, at):
    half = max(YARD, width) / 2 - SLACK
    strip = box(x + width / 2 - half, -100, x + width / 2 + half, y - SLACK)
    near("clear_below", said["opening%d clear_below" % at],
         not any(m.intersection(strip).area > 0 for m in plane.rectangles()), 0)
    below = box(-100, -100, 100, y)
    left, right, is_blocked = -math.inf, math.inf, False
    sloping = [s for s in plane.sides("eave", "ridge", "hip", "valley", "rake", "wall")
               if abs(s.coords[0][1] - s.coords[1][1]) > SLACK]
    for shape in plane.things() + sloping:
        part = shape.intersection(below)
        if part.is_empty or part.bounds[1] >= y - SLACK:
            continue
        low, high = part.bounds[0], part.bounds[2]
        if high <= x + SLACK:
            left = max(left, high)
        elif low >= x + width - SLACK:
            right = min(right, low)
        else:
            is_blocked = True
    near("clear_width_below", said["opening%d clear_width_below" % at], 0 if is_blocked else right - left,
         LENGTH_TOLERANCE)


def read_answers(text):
    roofs, said = [], {}
    for line in text.splitlines():
        words = line.split()
        if words == ["end"]:
            roofs.append(said)
            said = {}
        elif words[0].startswith("opening"):
            said[words[0] + " " + words[2]] = float(words[3]) if words[3] != "stop" else None
        else:
            said[words[0] + " " + words[1]] = float(words[2]) if words[2] != "stop" else None
    return roofs


def main():
    program = sys.argv[1]
    count = int(sys.argv[2]) if len(sys.argv) > 2 else 500
    seed = int(sys.argv[3]) if len(sys.argv) > 3 else 20260401
    rng = random.Random(seed)
    roofs, out = [], []
    for at in range(count):
        roofs.append(random_roof(rng, at))
        out.append("roof")
        for plane in roofs[-1][1]:
            plane.write(out)
        out.append("end")
    began = time.time()
    answer = subprocess.run([program], input="\n".join(out) + "\n", capture_output=True, text=True, check=True)
    said = read_answers(answer.stdout)
    if len(said) != count:
        sys.exit("layout answered %d of %d roofs" % (len(said), count))
    differing = Differing()
    answered = time.time()
    for at, (what, planes) in enumerate(roofs):
        compare(at, what, planes, said[at], differing)
    print("%d roofs, %d planes, %d modules, %d answers compared, %d differ; layout %.2f s, shapely %.1f s" %
          (count, sum(len(p) for _, p in roofs), sum(len(p.modules) for _, ps in roofs for p in ps),
           differing.done, differing.count, answered - began, time.time() - answered))
    for kind in sorted(differing.worst):
        print("  %-28s farthest apart %.3g" % (kind, differing.worst[kind]))
    sys.exit(1 if differing.count or differing.done < 10 * count else 0)


main()
