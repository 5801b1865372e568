"""Rebuilds a surface file in FreeCAD's kernel and says what the skin does at given places.

Started as `freecadcmd read_surface.py`, with three file names in the environment:
GARBOARD_SURFACE, a surface file; GARBOARD_PLACES, a line "panel u v" for each place;
GARBOARD_ANSWERS, to be written: a line "panel poles knots degrees valid" for each panel, a line
"x y z nx ny nz k1 k2" for each place, in metres, and the line "done". FreeCAD works in millimetres,
so poles are scaled on the way in and results on the way out.

FreeCAD ends with 0 when a script raises, and runs it a second time: so everything is caught, and
the answers appear, whole, only at the end.
"""
import os
import sys
import traceback
import xml.etree.ElementTree as ElementTree

MM = 1000.0
NAME = "{urn:garboard:surface}"


def numbers(element):
    return [float(word) for word in element.text.split()]


def distinct(knots):
    values = sorted(set(knots))
    return values, [knots.count(value) for value in values]


class Panel:
    def __init__(self, element):
        import FreeCAD
        import Part
        self.poles = [[tuple(float(part) for part in point.split(",")) for point in row.text.split()]
                      for row in element.find(NAME + "poles_m")]
        self.u, self.u_mults = distinct(numbers(element.find(NAME + "knots-along_m")))
        self.v, self.v_mults = distinct(numbers(element.find(NAME + "knots-across")))
        self.degrees = int(element.get("degree-along")), int(element.get("degree-across"))
        self.surface = Part.BSplineSurface()
        self.surface.buildFromPolesMultsKnots(
            [[FreeCAD.Vector(x * MM, y * MM, z * MM) for x, y, z in row] for row in self.poles],
            self.u_mults, self.v_mults, self.u, self.v, False, False, *self.degrees)

    def itself(self):
        """What the kernel holds against what was read, and whether it is a sound face."""
        poles = [[(p.x, p.y, p.z) for p in row] for row in self.surface.getPoles()]
        wanted = [[tuple(c * MM for c in point) for point in row] for row in self.poles]
        knots = (self.surface.getUKnots(), self.surface.getVKnots(),
                 self.surface.getUMultiplicities(), self.surface.getVMultiplicities())
        return "%s %s %s %s" % (poles == wanted, knots == (self.u, self.v, self.u_mults, self.v_mults),
                                (self.surface.UDegree, self.surface.VDegree) == self.degrees,
                                self.surface.toShape().isValid())

    def at(self, u, v):
        """The kernel's normal points into the boat; with it a skin that bulges outward is curved positive."""
        point = self.surface.value(u, v)
        inward = self.surface.normal(u, v)
        curvatures = [self.surface.curvature(u, v, which) * MM for which in ("Max", "Min")]
        values = [point.x / MM, point.y / MM, point.z / MM, -inward.x, -inward.y, -inward.z] + curvatures
        return " ".join(repr(value) for value in values)


def answers():
    root = ElementTree.parse(os.environ["GARBOARD_SURFACE"]).getroot()
    if root.tag != NAME + "surface" or root.get("version") != "1":
        raise ValueError("no surface file of version 1: %s %s" % (root.tag, root.get("version")))
    panels = [Panel(element) for element in root.findall(NAME + "panel")]
    for number, panel in enumerate(panels):
        yield "%d %s" % (number, panel.itself())
    with open(os.environ["GARBOARD_PLACES"], encoding="ascii") as places:
        for place in places:
            number, u, v = place.split()
            yield panels[int(number)].at(float(u), float(v))
    yield "done"


def main():
    name = os.environ["GARBOARD_ANSWERS"]
    with open(name + ".part", "w", encoding="ascii") as out:
        for line in answers():
            out.write(line + "\n")
    os.replace(name + ".part", name)


try:
    main()
except BaseException:
    with open(os.environ["GARBOARD_ANSWERS"] + ".fault", "w", encoding="utf-8") as fault:
        fault.write(traceback.format_exc())
    sys.exit(3)
sys.exit(0)
