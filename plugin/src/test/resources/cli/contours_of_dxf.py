"""A program for mills reads cut files: a line for each closed contour of their outlines and holes with its length [mm]."""
import os
import sys

import dxf2gcode.globals.globals as g
from PyQt5 import QtCore


class Settings:
    point_tolerance = 0.001
    fitting_tolerance = 0.001

    def update_tool_values(self):
        pass


g.config = Settings()
from dxf2gcode.dxfimport.importer import ReadDXF

application = QtCore.QCoreApplication([])
for path in sys.argv[1:]:
    read = ReadDXF(path)
    for contour in read.entities.cont:
        layer = read.layers[read.entities.geo[contour.order[0][0]].Layer_Nr].name
        if layer != "MARK":
            print(os.path.basename(path), layer, "closed" if contour.closed else "open", repr(contour.length))
