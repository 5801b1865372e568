"""FreeCAD's own importer reads drawings: a line for each layer with the length of all that it made of it [mm]."""
import os

import FreeCAD
import Import

with open(os.environ["GARBOARD_ANSWERS"], "w") as answers:
    try:
        FreeCAD.ParamGet("User parameter:BaseApp/Preferences/Mod/Draft").SetBool("groupLayers", True)
        for path in os.environ["GARBOARD_DRAWINGS"].split(os.pathsep):
            document = FreeCAD.newDocument()
            Import.readDXF(path, document.Name)
            for made in document.Objects:
                if hasattr(made, "Shape"):
                    length = sum(edge.Length for edge in made.Shape.Edges)
                    answers.write("%s %s %r\n" % (os.path.basename(path), made.Label, length))
            FreeCAD.closeDocument(document.Name)
        answers.write("done\n")
    except Exception as fault:
        answers.write("%r\n" % fault)
