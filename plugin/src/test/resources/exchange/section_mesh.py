"""Cuts a mesh file with planes in FreeCAD's kernel.

Started as `freecadcmd section_mesh.py`, with three file names in the environment: GARBOARD_SURFACE, an STL
in millimetres; GARBOARD_PLACES, a line "nx ny nz d" for each plane n.p = d; GARBOARD_ANSWERS, to be written: a line
"solid volume" with whether the kernel finds the mesh solid, then for each plane a line of all pieces
"x1 y1 z1 x2 y2 z2 ..." and, last, the line "done".

FreeCAD ends with 0 when a script raises, and runs it a second time: so everything is caught.
"""
import os
import sys
import traceback


def pieces(shape, line):
    import FreeCAD
    nx, ny, nz, d = [float(word) for word in line.split()]
    ends = []
    for wire in shape.slice(FreeCAD.Vector(nx, ny, nz), d):
        for edge in wire.Edges:
            for vertex in edge.Vertexes:
                ends += [vertex.X, vertex.Y, vertex.Z]
    return " ".join(repr(end) for end in ends)


def main():
    import Mesh
    import Part
    mesh = Mesh.Mesh(os.environ["GARBOARD_SURFACE"])
    shape = Part.Shape()
    shape.makeShapeFromMesh(mesh.Topology, 0.0001)
    solid = Part.Solid(shape)
    answers = ["%s %r" % (mesh.isSolid(), solid.Volume)]
    with open(os.environ["GARBOARD_PLACES"]) as lines:
        answers += [pieces(shape, line) for line in lines if line.strip()]
    with open(os.environ["GARBOARD_ANSWERS"] + ".part", "w") as out:
        out.write("\n".join(answers + ["done"]) + "\n")
    os.rename(os.environ["GARBOARD_ANSWERS"] + ".part", os.environ["GARBOARD_ANSWERS"])


if not os.path.exists(os.environ["GARBOARD_ANSWERS"]):
    try:
        main()
    except BaseException:
        with open(os.environ["GARBOARD_ANSWERS"] + ".fault", "w") as out:
            out.write(traceback.format_exc())
        sys.exit(1)
