"""Builds FreeCAD's shapes from what the core says: its figures are taken as they stand."""
import math

import FreeCAD
import Mesh
import Part
from FreeCAD import Base, Vector

MIRROR = Vector(0, 1, 0)
CLOSE = 1e-3


def mirrored(shape):
    """To the other side of the centreline."""
    return shape.mirror(Vector(0, 0, 0), MIRROR)


def _distinct(knots):
    values = sorted(set(knots))
    return values, [knots.count(value) for value in values]


def spline(panel):
    """The panel's surface, its poles and knots as they are told: u is x in metres."""
    along, along_mults = _distinct(panel.along)
    across, across_mults = _distinct(panel.across)
    surface = Part.BSplineSurface()
    surface.buildFromPolesMultsKnots(panel.poles, along_mults, across_mults, along, across, False, False, *panel.degrees)
    return surface


def starboard(surface):
    """Faces of the starboard skin, panel by panel; those that are drawn on past an edge end there."""
    return [_face(surface, panel) for panel in surface.panels]


def _face(surface, panel):
    whole = spline(panel)
    if not panel.cut:
        return whole.toShape()
    lengths = len(surface.steps) + 1
    fore = surface.steps[panel.length - 2][1] if panel.length > 1 else surface.stem
    aft = surface.steps[panel.length - 1][0] if panel.length < lengths else surface.transom
    begin = _edge_on(whole, fore, panel.along[0])
    end = _edge_on(whole, aft, panel.along[-1])
    # against the clock in (u, v): the other way round would be a hole
    sides = ([begin[0], end[0]], end, [end[-1], begin[-1]], begin[::-1])
    face = Part.Face(whole, Part.Wire([_curve_on(whole, side) for side in sides]))
    face.validate()
    return face


def _curve_on(whole, places):
    """One edge on a surface through places in its (u, v)."""
    points = [Base.Vector2d(*place) for place in places]
    if len(points) == 2:
        return Part.Geom2d.Line2dSegment(*points).toShape(whole)
    curve = Part.Geom2d.BSplineCurve2d()
    curve.interpolate(points)
    return curve.toShape(whole)


def _edge_on(whole, points, knot):
    """Where an edge runs in the panel's (u, v), from its inner line outward.

    Beside the edge's own end, as on topsides at a step in the bottom, the panel ends square across there.
    """
    if not points:
        return [(knot, 0.0), (knot, 1.0)]
    on = []
    for point in points:
        u = point.x / 1000
        across = whole.uIso(u)
        v = across.parameter(point)
        # two curves of an edge meet in one point
        if across.value(v).distanceToPoint(point) < CLOSE and not (on and math.dist(on[-1], (u, v)) < 1e-6):
            on.append((u, v))
    if len(on) < 2:
        u = points[-1].x / 1000
        return [(u, 0.0), (u, 1.0)]
    return [(on[0][0], 0.0)] + on[1:-1] + [(on[-1][0], 1.0)]


def hull(surface):
    """Both sides of the skin."""
    faces = starboard(surface)
    return Part.makeCompound(faces + [mirrored(face) for face in faces])


def wires(groups):
    """One compound of lines."""
    lines = [Part.makePolygon(_apart(points)) for points in groups if len(_apart(points)) > 1]
    return Part.makeCompound(lines)


def _apart(points):
    """Without points that stand on the one before."""
    kept = points[:1]
    for point in points[1:]:
        if point.distanceToPoint(kept[-1]) > 1e-6:
            kept.append(point)
    return kept


def mesh(body):
    """A body as it was told, by its corners' numbers: FreeCAD need not find out which triangles share a corner."""
    made = Mesh.Mesh()
    made.addFacets(([Vector(*vertex) for vertex in body.vertices], body.triangles))
    return made


def solid(mesh):
    """A mesh as a solid of plane faces; this takes long, a second for some thousand."""
    shape = Part.Shape()
    shape.makeShapeFromMesh(mesh.Topology, 1e-4)
    made = Part.makeSolid(Part.makeShell(shape.Faces))
    if made.Volume < 0:
        made.reverse()
    return made


def write_step(mesh, path):
    """A mesh of closed bodies as solids of plane faces."""
    Part.makeCompound([solid(body) for body in mesh.getSeparateComponents()]).exportStep(path)
