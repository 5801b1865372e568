"""How our objects show in the tree and in the view."""
import FreeCAD
from PySide import QtCore

from garboard_wb import paths

ICONS = {"Boat": "open", "Hull": "hull", "Part": "place", "CutHull": "cut", "Places": "sites", "Sheets": "sheets"}
COLOURS = {"Hull": (0.80, 0.84, 0.88), "Part": (0.85, 0.45, 0.15), "CutHull": (0.80, 0.84, 0.88), "Places": (0.80, 0.10, 0.10)}


class View:
    """A view provider with an icon of our own."""

    def __init__(self, obj, icon):
        self.icon = icon
        obj.Proxy = self

    def getIcon(self):
        return paths.icon(self.icon)

    def attach(self, obj):
        """A mesh shows its vertices' colours only when it is told once it stands; so also when a document is opened."""
        if self.icon == "sites":
            name = obj.Object.Document.Name
            QtCore.QTimer.singleShot(0, lambda: colour(FreeCAD.listDocuments().get(name)))

    def dumps(self):
        return self.icon

    def loads(self, state):
        self.icon = state or "garboard"

    __getstate__ = dumps
    __setstate__ = loads


def colour(doc):
    for obj in doc.Objects if doc else ():
        if hasattr(obj, "VertexColors"):
            obj.ViewObject.Coloring = False
            obj.ViewObject.Coloring = True


def dress(obj, name):
    View(obj.ViewObject, ICONS.get(name, "garboard"))
    if name in COLOURS and hasattr(obj.ViewObject, "ShapeColor"):
        obj.ViewObject.ShapeColor = COLOURS[name]
    if name == "Hull":
        obj.ViewObject.Transparency = 30
        obj.ViewObject.Deviation = 0.1
    if name == "CutHull":
        # a plug's triangles have edges without number
        obj.ViewObject.DisplayMode = "Shaded"
    if name == "Places":
        obj.ViewObject.PointSize = 9
        obj.ViewObject.PointColor = COLOURS[name]
