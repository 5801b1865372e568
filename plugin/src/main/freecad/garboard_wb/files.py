"""Reads what the core writes: surface, record and part as XML, curves and checks as CSV. Lengths become FreeCAD's millimetres."""
import csv
import io
import xml.etree.ElementTree as ElementTree

from FreeCAD import Vector

SURFACE = "{urn:garboard:surface}"
RECORD = "{urn:garboard:record}"
PART = "{urn:garboard:part}"
JOB = "{urn:garboard:job}"
MM = 1000.0


def job_table(path):
    """File of the table that a job names, and whether the hull goes through its points; the core has read the job before."""
    table = ElementTree.parse(path).getroot().find(JOB + "table")
    return table.get("file"), table.get("fit") == "exact"


def transducers(path):
    """Names of the transducers of a job, in its order; none of what cannot be read, which the core will tell."""
    try:
        return [found.get("name", "") for found in ElementTree.parse(path).getroot().iter(JOB + "transducer")]
    except (OSError, ElementTree.ParseError):
        return []


class Unreadable(Exception):
    """What an object of a document keeps is not what the core wrote there."""


def parsed(text):
    """The root of what the core wrote; a document that somebody edited by hand may hold anything."""
    try:
        return ElementTree.fromstring(text)
    except ElementTree.ParseError as fault:
        raise Unreadable("what is kept in the document is not what Garboard wrote there (%s); undo the change, or choose Read the "
                         "files again, or Find sites" % fault) from None


def points(text):
    """x,y,z in metres, many."""
    return [Vector(*(float(part) * MM for part in word.split(","))) for word in text.split()]


class Panel:
    """One B-spline of the starboard skin."""

    def __init__(self, element):
        self.length = int(element.get("length") or 1)
        self.cut = element.get("cut") == "true"
        self.lines = element.get("inner-line"), element.get("outer-line")
        self.degrees = int(element.get("degree-along")), int(element.get("degree-across"))
        self.along = [float(word) for word in element.find(SURFACE + "knots-along_m").text.split()]
        self.across = [float(word) for word in element.find(SURFACE + "knots-across").text.split()]
        self.poles = [points(row.text) for row in element.find(SURFACE + "poles_m")]


class Surface:
    """The starboard skin: panels, and the edges at which those that are cut end."""

    def __init__(self, text):
        root = parsed(text)
        if root.tag != SURFACE + "surface":
            root = root.find(SURFACE + "surface")
        self.panels = [Panel(element) for element in root.findall(SURFACE + "panel")]
        self.steps = [(points(step.find(SURFACE + "lower_m").text), points(step.find(SURFACE + "upper_m").text))
                      for step in root.findall(SURFACE + "step")]
        self.transom = self._edge(root, "transom-edge_m")
        self.stem = self._edge(root, "stem-edge_m")

    @staticmethod
    def _edge(root, name):
        edge = root.find(SURFACE + name)
        return [] if edge is None else [point for curve in edge for point in points(curve.text)]


class Check:
    """One check of one place; as the core says it."""

    def __init__(self, name, demand, limit, unit, utilisation, verdict, governing, source, words):
        self.name, self.demand, self.limit, self.unit = name, demand, limit, unit
        self.utilisation, self.verdict, self.governing, self.source, self.words = utilisation, verdict, governing, source, words


class Site:
    """A place with its checks."""

    def __init__(self, element, mount):
        self.mount = mount
        self.point = Vector(*(float(element.get(name)) * MM for name in ("x_m", "y_m", "z_m")))
        self.checks = [Check(c.get("name"), c.get("demand"), c.get("limit"), c.get("unit"), c.get("utilisation"), c.get("verdict"),
                             c.get("governing") == "true", c.get("source"), c.text or "") for c in element.findall(RECORD + "check")]


class Region:
    """A part of the bottom in plan, on which a mount passes every check that can be made."""

    def __init__(self, element, mount):
        self.mount = mount
        self.side = element.get("side") or "both"
        self.outline = self._ring(element.find(RECORD + "outline"))
        self.holes = [self._ring(hole) for hole in element.findall(RECORD + "hole")]
        xs, ys = zip(*self.outline)
        self.least, self.most = (min(xs), min(ys)), (max(xs), max(ys))

    @staticmethod
    def _ring(element):
        return [tuple(float(part) for part in word.split(",")) for word in element.text.split()]

    def holds(self, x, y):
        """Whether a place in plan, in metres, is in it: a region told for both sides is drawn to starboard."""
        y = abs(y) if self.side == "both" else y
        if not (self.least[0] <= x <= self.most[0] and self.least[1] <= y <= self.most[1]):
            return False
        return _within(self.outline, x, y) and not any(_within(hole, x, y) for hole in self.holes)


def _within(ring, x, y):
    inside = False
    for (x1, y1), (x2, y2) in zip(ring, ring[1:] + ring[:1]):
        if (x1 > x) != (x2 > x) and y1 + (y2 - y1) * (x - x1) / (x2 - x1) > y:
            inside = not inside
    return inside


class Record:
    """What a search found."""

    def __init__(self, text):
        root = parsed(text)
        self.answer = root.find(RECORD + "answer").text or ""
        self.advised = root.find(RECORD + "answer").get("mount") or ""
        self.sites, self.regions = [], []
        for siting in root.findall(RECORD + "siting"):
            mount = siting.get("mount")
            self.sites += [Site(element, mount) for element in siting.findall(RECORD + "site")]
            self.regions += [Region(element, mount) for element in siting.findall(RECORD + "region")]


class Solid:
    """A closed body of triangles: corners, and three of them for each triangle."""

    def __init__(self, element):
        self.name, self.litres = element.get("name"), float(element.get("volume_litres"))
        self.vertices = self._triples(element, "vertices_mm", float)
        self.triangles = self._triples(element, "triangles", int)

    @staticmethod
    def _triples(element, name, kind):
        figures = map(kind, element.find(PART + name).text.replace(",", " ").split())
        return list(zip(figures, figures, figures))


class Part:
    """What is cut or made at a place."""

    def __init__(self, text):
        root = parsed(text)
        pocket = root.find(PART + "pocket")
        self.pocket = None if pocket is None else {name: float(value) for name, value in pocket.attrib.items()}
        self.opening = [] if pocket is None else points(pocket.find(RECORD + "opening").text)
        self.solids = [Solid(element) for element in root.findall(PART + "solid")]
        self.notes = [note.text or "" for note in root.findall(PART + "note")]

    @property
    def skin(self):
        """The hull's skin with the cut in it; None where it is not made, and the notes say why."""
        return next((solid for solid in self.solids if solid.name in ("hull-skin", "skin-round-pocket")), None)


def curves(text, *key):
    """Points of a CSV of curves, grouped by these columns, in the order of the file."""
    groups = {}
    for row in csv.DictReader(io.StringIO(text)):
        groups.setdefault(tuple(row[name] for name in key), []).append(
            Vector(*(float(row[name]) * MM for name in ("x_m", "y_m", "z_m"))))
    return groups


def rows(text):
    return list(csv.DictReader(io.StringIO(text)))
