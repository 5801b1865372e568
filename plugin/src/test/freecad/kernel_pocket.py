"""Takes a pocket out of a hull by the kernel alone, to measure the core's pocket against it."""
import math

import Mesh
import Part
from FreeCAD import Vector

from garboard_wb import shapes


class PocketFrame:
    """The pocket's own frame: u aft along the floor, v to starboard, w up, square to the floor."""

    def __init__(self, pocket):
        slope = math.radians(pocket["slope_deg"])
        self.origin = Vector(pocket["x_m"] * 1000, 0, pocket["z_m"] * 1000)
        self.along = Vector(math.cos(slope), 0, math.sin(slope))
        self.up = Vector(-math.sin(slope), 0, math.cos(slope))

    def w(self, point):
        return (point - self.origin).dot(self.up)


class PocketCut:
    """A pocket by the kernel's own exact faces: an opening through the skin, and a plug that closes it again down to the pocket's surface.

    The pocket's ramps run out along the skin, so no kernel can be asked where the two meet. The opening's walls stand square to
    the skin, which every kernel cuts; the plug is made of the core's own triangles.
    """

    ROOM = 10
    BELOW = 20
    # a skin's triangle looks down, one of floor, wall or ramp does not: cosine between them
    SKIN = -0.35

    def __init__(self, part):
        self.frame = PocketFrame(part.pocket)
        told = next(solid for solid in part.solids if solid.name == "pocket")
        triangles = told.triangles
        self.vertices = [Vector(*place) for place in told.vertices]
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
        return shapes.solid(Mesh.Mesh(facets))


def closed_hull(skin):
    """The hull as one solid, closed by ruled lids from each free edge of starboard to the same of port; None where that fails."""
    half = skin.Faces[:len(skin.Faces) // 2]

    shell = _sewn(half)
    lids = []
    for edge in _free_edges(shell):
        box = edge.BoundBox
        if max(abs(box.YMin), abs(box.YMax)) < shapes.CLOSE:
            continue
        lids.append(Part.makeRuledSurface(edge, shapes.mirrored(edge)))
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
