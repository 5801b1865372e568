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


class PocketFrame:
    """The pocket's own frame: u aft along the floor, v to starboard, w up, square to the floor."""

    def __init__(self, pocket):
        slope = math.radians(pocket["slope_deg"])
        self.origin = Vector(pocket["x_m"] * 1000, 0, pocket["z_m"] * 1000)
        self.along = Vector(math.cos(slope), 0, math.sin(slope))
        self.up = Vector(-math.sin(slope), 0, math.cos(slope))

    def place(self, shape):
        """Moves a shape that was made in u, v, w."""
        matrix = FreeCAD.Matrix(self.along.x, 0, self.up.x, self.origin.x, 0, 1, 0, self.origin.y,
                                self.along.z, 0, self.up.z, self.origin.z, 0, 0, 0, 1)
        shape.Placement = FreeCAD.Placement(matrix)
        return shape

    def w(self, point):
        return (point - self.origin).dot(self.up)


def pocket(part, skin):
    """The body that a pocket takes out of the boat: what lies between its floor, walls and ramps and the skin, one solid."""
    figures = part.pocket
    frame = PocketFrame(figures)
    below = min(frame.w(point) for point in part.opening) - 20
    half_length, half_width = figures["length_mm"] / 2, figures["width_mm"] / 2
    tool = _prism(_rounded(half_length, half_width, figures["corner-radius_mm"], below), Vector(0, 0, figures["depth_mm"] - below))
    face, ratio = figures["face-depth_mm"], figures["ramp-ratio"]
    # where the face lies flush with a flat keel its ramps have no length
    if ratio > 0 and max(figures["fore-ramp_mm"], figures["aft-ramp_mm"]) > 0.1:
        reach = half_length + (face - below) * ratio
        profile = [Vector(-reach, -half_width, below), Vector(-half_length, -half_width, face),
                   Vector(half_length, -half_width, face), Vector(reach, -half_width, below)]
        tool = tool.fuse(_prism(Part.makePolygon(profile + profile[:1]), Vector(0, 2 * half_width, 0)))
    frame.place(tool)
    return _above_skin(tool, skin, frame.origin + frame.up * (figures["depth_mm"] - 0.01))


def _rounded(half_length, half_width, radius, w):
    """Outline of the floor as lines and true arcs."""
    if radius <= 0:
        corners = [Vector(-half_length, -half_width, w), Vector(half_length, -half_width, w),
                   Vector(half_length, half_width, w), Vector(-half_length, half_width, w)]
        return Part.makePolygon(corners + corners[:1])
    u, v = half_length - radius, half_width - radius
    edges = []
    for cu, cv, begin in ((u, -v, -90), (u, v, 0), (-u, v, 90), (-u, -v, 180)):
        edges.append(Part.makeCircle(radius, Vector(cu, cv, w), Vector(0, 0, 1), begin, begin + 90))
    joined = []
    for edge, following in zip(edges, edges[1:] + edges[:1]):
        joined.append(edge)
        start, end = edge.valueAt(edge.LastParameter), following.valueAt(following.FirstParameter)
        if start.distanceToPoint(end) > 1e-7:
            joined.append(Part.makeLine(start, end))
    return Part.Wire(joined)


def _prism(wire, along):
    return Part.Face(wire).extrude(along)


def _above_skin(tool, skin, inside):
    """The piece of a body, split by the skin, that holds a place."""
    faces = [_near(face, tool.BoundBox) for face in skin.Faces if face.BoundBox.intersect(tool.BoundBox)]
    pieces, _ = tool.generalFuse(faces)
    for solid in pieces.Solids:
        if solid.isInside(inside, 1e-7, True):
            return solid
    raise ValueError("the pocket does not meet the hull that is shown; was the hull drawn from another table?")


def _near(face, box):
    """The stretch of a face beside a box, the same surface: a short one is met in half the time."""
    u1, u2, v1, v2 = face.ParameterRange
    surface = face.Surface
    if len(face.OuterWire.Edges) != 4 or (u1, u2, v1, v2) != tuple(surface.bounds()):
        return face
    fore, aft = max(u1, box.XMin / 1000 - 0.1), min(u2, box.XMax / 1000 + 0.1)
    if fore >= aft:
        return face
    stretch = surface.copy()
    stretch.segment(fore, aft, v1, v2)
    return stretch.toShape()


def solids(part):
    """Parts told as meshes, as solids of plane faces, by name."""
    made = []
    for name, _, vertices, triangles in part.solids:
        mesh = Mesh.Mesh([[Vector(*vertices[corner]) for corner in triangle] for triangle in triangles])
        shape = Part.Shape()
        shape.makeShapeFromMesh(mesh.Topology, 1e-4)
        solid = Part.makeSolid(Part.makeShell(shape.Faces))
        if solid.Volume < 0:
            solid.reverse()
        made.append((name, solid))
    return made


def closed_hull(skin):
    """The hull as one solid, closed by ruled lids from each free edge of starboard to the same of port; None where that fails."""
    half = skin.Faces[:len(skin.Faces) // 2]

    shell = _sewn(half)
    lids = []
    for edge in _free_edges(shell):
        box = edge.BoundBox
        if max(abs(box.YMin), abs(box.YMax)) < CLOSE:
            continue
        lids.append(Part.makeRuledSurface(edge, mirrored(edge)))
    body = _sewn(list(skin.Faces) + [face for lid in lids for face in lid.Faces])
    if not body.Shells or len(body.Shells) != 1 or not body.Shells[0].isClosed():
        return None
    solid = Part.makeSolid(body.Shells[0])
    if solid.Volume < 0:
        solid.reverse()
    return solid if solid.isValid() else None


def _sewn(faces):
    shape = Part.makeCompound(faces)
    shape.sewShape(0.01)
    return shape


def _free_edges(shape):
    """Edges of one face only."""
    counted = {}
    for face in shape.Faces:
        for edge in face.Edges:
            counted.setdefault(edge.hashCode(), []).append(edge)
    return [edges[0] for edges in counted.values() if len(edges) == 1]
