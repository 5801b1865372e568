"""Parts at a place of the user's: placed, cut out of the hull, written to files, drawn. Generators like those of `operations`."""
import os
import tempfile

import FreeCAD
import MeshPart
import Part

from garboard_wb import child, core, files, objects, shapes
from garboard_wb.document import Refused, boat_of, hull_of, of_kind, step


def place_part(doc, mount, x, y, depth=objects.AS_THE_JOB, ramp=objects.AS_THE_JOB, height=objects.AS_THE_JOB, transducer=""):
    """A pocket, or the parts of another mount, at a place; lengths in millimetres. Of several transducers the first is taken, or the
    one that is named.
    """
    boat = boat_of(doc, job=True)
    named = files.transducers(boat.File)
    transducer = transducer or (named[0] if len(named) > 1 else "")
    answer = (yield ["cut", boat.File] + objects.placed_words(mount, x, y, depth, ramp, height, transducer)).require()
    with step(doc, "Place part"):
        part = objects.add(doc, "Mesh::FeaturePython", objects.Fitted, "Part",
                           objects.LABELS[mount])
        part.Boat, part.Mount, part.X, part.Y = boat, mount, x, y
        part.Depth, part.Ramp, part.Height, part.Transducer = depth, ramp, height, transducer
        objects.Fitted.take(part, answer)
    return part


def cut_hull(doc):
    """The skin with what is cut in it for the parts that are placed."""
    hull = hull_of(doc)
    placed = of_kind(doc, objects.Fitted)
    parts = [(fitted, files.Part(fitted.Told)) for fitted in placed]
    cuts = [fitted for fitted, part in parts if part.skin is not None]
    if not cuts:
        raise Refused("No part is placed that the skin is cut for; place a pocket or a through-hull first."
                      + "".join("\n%s: %s" % (fitted.Label, " ".join(part.notes)) for fitted, part in parts))
    with step(doc, "Cut hull"):
        there = of_kind(doc, objects.Cut)
        cut = there[0] if there else objects.add(doc, "Mesh::FeaturePython", objects.Cut, "CutHull", "Cut skin")
        cut.Cuts = cuts
    if FreeCAD.GuiUp:
        hull.ViewObject.Visibility = False
        for fitted in placed:
            fitted.ViewObject.Visibility = False
    return cut


def export(obj, path, deflection=1.0):
    """One object as STEP or STL by the name's ending; STL of a shape strays by no more than so many millimetres. What takes long is
    asked of another FreeCAD, where there is one.
    """
    kind = os.path.splitext(path)[1].lower()
    if kind not in (".step", ".stp", ".stl"):
        raise Refused("%s: name a file that ends in .step or .stl" % path)
    if not 0.01 <= deflection <= 50:
        raise Refused("A deflection of %g mm; from 0.01 to 50 mm can be written." % deflection)
    part = os.path.join(os.path.dirname(os.path.abspath(path)), ".%s.%d%s" % (os.path.basename(path), os.getpid(), kind))
    try:
        if hasattr(obj, "Mesh"):
            yield from _export_mesh(obj.Mesh, kind, part)
        elif kind == ".stl":
            # Shape.exportStl leaves slivers at seams, and takes 0.01 mm unless told, which on a whole hull fills the memory
            MeshPart.meshFromShape(Shape=obj.Shape, LinearDeflection=deflection, AngularDeflection=0.3, Relative=False).write(part)
        else:
            obj.Shape.exportStep(part)
        os.replace(part, path)
    except (OSError, RuntimeError, Part.OCCError, core.CoreFault) as fault:
        raise Refused("%s cannot be written: %s" % (path, fault)) from None
    finally:
        if os.path.exists(part):
            os.remove(part)
    return path


def _export_mesh(mesh, kind, path):
    """As STL its own triangles; as STEP bodies of plane faces."""
    if kind == ".stl":
        mesh.write(path)
    elif child.program():
        with tempfile.TemporaryDirectory() as folder:
            own = os.path.join(folder, "cut.stl")
            mesh.write(own)
            (yield child.Script("write_step.py", mesh=own, step=path)).require()
    else:
        shapes.write_step(mesh, path)


def make_sheets(doc, folder, part=None):
    """The whole set of drawings, by the core: of the advised site, or of a part where it was placed. Whatever the answer, what it
    said is kept.
    """
    boat = boat_of(doc, job=True)
    answer = (yield ["run", boat.File, "--out", folder] + (objects.wish_words(part) if part else [])).require(0, 4)
    if not answer.out:
        raise core.CoreFault(answer.words())
    with step(doc, "Make sheets"):
        old = [obj for obj in of_kind(doc, objects.Sheets) if obj.Folder == folder]
        sheets = old[0] if old else objects.add(doc, "App::FeaturePython", objects.Sheets, "Sheets", "Sheets")
        sheets.Folder = folder
        sheets.Files = sorted(name for name in os.listdir(folder) if not name.startswith("."))
        sheets.Words = answer.out + answer.err
    return sheets
