"""A mesh (GARBOARD_MESH) as bodies of plane faces into a STEP file (GARBOARD_STEP), by a FreeCAD of its own."""
import os
import sys

try:
    import Mesh

    sys.path.insert(0, os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
    from garboard_wb import shapes
    shapes.write_step(Mesh.Mesh(os.environ["GARBOARD_MESH"]), os.environ["GARBOARD_STEP"])
# FreeCAD would end with 0 and carry a script that raises out twice
except BaseException as fault:
    with open(os.environ["GARBOARD_SAID"], "w", encoding="utf-8") as said:
        said.write(str(fault) or fault.__class__.__name__)
    sys.exit(1)
sys.exit(0)
