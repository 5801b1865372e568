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


class PocketCut:
    """How a pocket is cut out of a hull: an opening through the skin, and a plug that closes it again down to the pocket's surface.

    The pocket's ramps run out along the skin, so no kernel can be asked where the two meet. The opening's walls stand square to
    the skin, which every kernel cuts; the plug is made of the core's own triangles.
    """

    ROOM = 10
    BELOW = 20
    # a skin's triangle looks down, one of floor, wall or ramp does not: cosine between them
    SKIN = -0.35

    def __init__(self, part):
        self.frame = PocketFrame(part.pocket)
        _, _, vertices, triangles = next(solid for solid in part.solids if solid[0] == "pocket")
        self.vertices = [Vector(*place) for place in vertices]
        skin = [self._cosine(triangle) < self.SKIN for triangle in triangles]
        self.upper = [triangle for triangle, is_skin in zip(triangles, skin) if not is_skin]
        self.lower = [triangle for triangle, is_skin in zip(triangles, skin) if is_skin]
        self.level = max(self.frame.w(point) for point in self.vertices) + self.ROOM
        self.rim = self._rim()

    def _cosine(self, triangle):
        a, b, c = (self.vertices[corner] for corner in triangle)
        normal = (b - a).cross(c - a)
        return normal.dot(self.frame.up) / normal.Length

    def _rim(self):
        """Corners of the opening in turn: edges of the pocket's surface that no other triangle of it has."""
        edges = {(t[k], t[(k + 1) % 3]) for t in self.upper for k in range(3)}
        following = {a: b for a, b in edges if (b, a) not in edges}
        ring = [next(iter(following))]
        while following[ring[-1]] != ring[0]:
            ring.append(following[ring[-1]])
        if len(ring) != len(following):
            raise ValueError("the pocket's opening is not one ring; it is not cut")
        return ring

    def _lifted(self, corner):
        point = self.vertices[corner]
        return point + self.frame.up * (self.level - self.frame.w(point))

    def opening(self):
        """A prism through the skin, of the opening's outline."""
        top = [self._lifted(corner) for corner in self.rim]
        lowest = min(self.frame.w(point) for point in self.vertices)
        return Part.Face(Part.makePolygon(top + top[:1])).extrude(self.frame.up * (lowest - self.BELOW - self.level))

    def plug(self):
        """What stays of the boat within the opening, above the pocket."""
        facets = [[self.vertices[corner] for corner in triangle[::-1]] for triangle in self.upper]
        facets += [[self._lifted(corner) for corner in triangle[::-1]] for triangle in self.lower]
        for a, b in zip(self.rim, self.rim[1:] + self.rim[:1]):
            facets += [[self.vertices[a], self.vertices[b], self._lifted(b)], [self.vertices[a], self._lifted(b), self._lifted(a)]]
        return solid(Mesh.Mesh(facets))

    def surface(self):
        """Floor, walls and ramps alone."""
        shape = Part.Shape()
        shape.makeShapeFromMesh(Mesh.Mesh([[self.vertices[corner] for corner in triangle] for triangle in self.upper]).Topology, 1e-4)
        return shape


def meshes(part):
    """Parts told as meshes, each closed, by name."""
    return [(name, _mesh(vertices, triangles)) for name, _, vertices, triangles in part.solids]


def _mesh(vertices, triangles):
    """Told by its corners' numbers: FreeCAD need not find out which triangles share a corner."""
    made = Mesh.Mesh()
    made.addFacets(([Vector(*vertex) for vertex in vertices], triangles))
    return made


def solid(mesh):
    """A mesh as a solid of plane faces; this takes long, a second for some thousand."""
    shape = Part.Shape()
    shape.makeShapeFromMesh(mesh.Topology, 1e-4)
    made = Part.makeSolid(Part.makeShell(shape.Faces))
    if made.Volume < 0:
        made.reverse()
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
