"""What is seen of the boat while a panel is open, and where the user clicks on it."""
import FreeCAD
import FreeCADGui

from garboard_wb.panel import Panel

LINES = ("Sections", "Buttocks", "Waterlines", "Attitude")


def hide_lines(doc, groups=LINES):
    """Lines that would run across what is to be looked at."""
    for group in filter(None, map(doc.getObject, groups)):
        for obj in group.Group:
            obj.ViewObject.Visibility = False


def look(doc, below=False):
    """Brings the whole boat into view; from straight below where the bottom is what matters."""
    gui = FreeCADGui.getDocument(doc.Name)
    view = gui.activeView() if gui else None
    if view is None or not hasattr(view, "viewAxonometric"):
        return
    if below:
        # bow to the left
        view.setCameraOrientation(FreeCAD.Rotation(FreeCAD.Vector(1, 0, 0), 180).Q)
    else:
        view.viewAxonometric()
    view.fitAll()


class PlacePicker:
    """Tells a panel where the user clicks on the boat."""

    def __init__(self, panel):
        self.panel = panel

    def addSelection(self, document, name, element, point):
        # a click on the tree has no place
        if FreeCAD.ActiveDocument and document == FreeCAD.ActiveDocument.Name and tuple(point) != (0, 0, 0):
            self.panel.clicked(FreeCAD.Vector(*point))


class ListeningPanel(Panel):
    """A panel that is told of clicks while it is open."""

    def __init__(self):
        super().__init__()
        self.picker = PlacePicker(self)
        FreeCADGui.Selection.addObserver(self.picker)

    def close(self):
        if self.picker is not None:
            FreeCADGui.Selection.removeObserver(self.picker)
            self.picker = None
