"""The panels of the commands, one class each."""
import os

import FreeCAD
import FreeCADGui
from PySide import QtCore, QtGui

from garboard_wb import files, objects, operations
from garboard_wb.panel import CHECK_HEADINGS, Panel, QtWidgets, check_rows, site_rows, write


class OpenPanel(Panel):
    TITLE = "Open a job or a table"
    DO = "Open"

    def fill(self):
        boats = operations.of_kind(self.doc, objects.Boat)
        self.file = self.path("File", boats[0].File if boats else "", lambda old: QtWidgets.QFileDialog.getOpenFileName(
            self.form, self.TITLE, os.path.dirname(old), "Jobs and tables of offsets (*.xml *.csv *.xlsx);;All files (*)")[0])

    def work(self):
        if not self.file.text().strip():
            raise operations.Refused("No file is named; choose a job (.xml) or a table of offsets (.csv, .xlsx).")
        return operations.open_boat(self.doc, self.file.text().strip())

    def show(self, boat):
        look(self.doc)
        return "%s is open; its hull is shown." % boat.File


class LinesPanel(Panel):
    TITLE = "Show the hull's lines"
    DO = "Show"

    def fill(self):
        self.spacings = [self.number(label, value, 10, 100000) for label, value in
                         zip(("Sections every", "Buttocks every", "Waterlines every"), operations.SPACINGS_MM)]

    def work(self):
        return operations.show_lines(self.doc, [box.value() for box in self.spacings])

    def show(self, count):
        look(self.doc)
        return "%d curves, in the groups Sections, Buttocks and Waterlines." % count


class AttitudePanel(Panel):
    TITLE = "How she runs"
    DO = "Work it out"
    HEADINGS = ["speed", "kn", "load", "regime", "trim °", "wetted keel m", "wetted chine m", "remarks"]

    def fill(self):
        self.rows = self.table(self.HEADINGS, 260)
        self.rows.itemSelectionChanged.connect(self.chosen)
        self.layout.addWidget(QtWidgets.QLabel("A row shows the water at its speed alone."))
        self.speeds = []

    def work(self):
        return operations.show_attitude(self.doc)

    def show(self, result):
        rows, said = result
        write(self.rows, [[row["speed"], row["speed_kn"], row["load"], row["regime"], row["trim_deg"], row["wetted_keel_m"],
                           row["wetted_chine_m"], row["remarks"]] for row in rows])
        self.speeds = [row["speed_kn"] for row in rows]
        if rows:
            # the fastest is the last of the job's
            self.rows.selectRow(max(range(len(rows)), key=lambda i: float(self.speeds[i])))
        hide_lines(self.doc, ("Sections", "Buttocks", "Waterlines"))
        look(self.doc)
        return "\n".join(said)

    def chosen(self):
        row = self.rows.currentRow()
        shown = self.doc.getObject("Attitude")
        if shown is not None and 0 <= row < len(self.speeds):
            for obj in shown.Group:
                obj.ViewObject.Visibility = obj.Label.endswith(" at %s kn" % self.speeds[row])


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


class SitesPanel(ListeningPanel):
    TITLE = "Find sites"
    DO = "Search the bottom"

    def fill(self):
        self.asked = None
        self.sites = self.table(["mount", "x m", "y m", "checks met", "not known"], 100)
        self.sites.itemSelectionChanged.connect(self.chosen)
        self.heading = QtWidgets.QLabel("Checks: choose a site, or click a place on the bottom.")
        self.heading.setWordWrap(True)
        self.layout.addWidget(self.heading)
        self.checks = self.table(CHECK_HEADINGS, 360)
        self.found = []

    def work(self):
        if self.asked is not None:
            point, self.asked = self.asked, None
            return self.at(point)
        return operations.find_sites(self.doc)

    def at(self, point):
        rows = yield from operations.check_place(self.doc, point.x, point.y)
        return point, rows

    def clicked(self, point):
        """Every check at the place; a click while the core works is let go."""
        if self.steps is None:
            self.asked = point
            QtCore.QTimer.singleShot(0, self.begin)

    def show(self, result):
        if isinstance(result, tuple):
            point, rows = result
            write(self.checks, *check_rows(rows))
            self.heading.setText("Checks at x %.3f m, y %.3f m" % (point.x / 1000, point.y / 1000))
            return "%d of %d checks are not met there." % (sum(row["verdict"] == "not met" for row in rows), len(rows))
        self.found = result.sites
        write(self.sites, [[objects.LABELS[site.mount], "%.3f" % (site.point.x / 1000), "%.3f" % (site.point.y / 1000),
                            str(sum(check.verdict == "met" for check in site.checks)),
                            str(sum(check.verdict == "NOT KNOWN" for check in site.checks))] for site in self.found])
        if self.found:
            self.sites.selectRow(0)
        hide_lines(self.doc)
        look(self.doc, below=True)
        return result.answer

    def chosen(self):
        row = self.sites.currentRow()
        if 0 <= row < len(self.found):
            site = self.found[row]
            write(self.checks, *site_rows(site))
            self.heading.setText("Checks of %s at x %.3f m, y %.3f m" % (objects.LABELS[site.mount], site.point.x / 1000, site.point.y / 1000))


class PartPanel(ListeningPanel):
    TITLE = "Place a pocket or a block"
    DO = "Place"

    def fill(self):
        self.mount = QtWidgets.QComboBox()
        for mount, label in objects.LABELS.items():
            self.mount.addItem(label, mount)
        self.fields.addRow("Mount", self.mount)
        self.x = self.number("x aft", 0, -100000, 100000)
        self.y = self.number("y to starboard", 0, -20000, 20000)
        self.depth = self.wish("Depth", -1, 2000)
        self.ramp = self.wish("Ramp 1 :", -1, 100, "")
        self.height = self.wish("Height", -1, 2000)
        self.mount.currentIndexChanged.connect(lambda ignored: self.suit(self.mount.currentData()))
        self.suit(self.mount.currentData())
        self.suggest()

    def suit(self, mount):
        for box, mounts in ((self.y, [each for each in objects.LABELS if each != objects.POCKET]), (self.depth, (objects.POCKET,)),
                            (self.ramp, (objects.POCKET,)), (self.height, (objects.BLOCK,))):
            box.setEnabled(mount in mounts)
        if mount == objects.POCKET:
            self.y.setValue(0)

    def suggest(self):
        """The best site that the last search found, where there is one."""
        for places in operations.of_kind(self.doc, objects.Places):
            try:
                sites = files.Record(places.Record).sites
            except files.Unreadable as fault:
                FreeCAD.Console.PrintWarning("Garboard: %s: %s\n" % (places.Label, fault))
                continue
            for site in sites:
                if self.choose(site.mount):
                    self.x.setValue(site.point.x)
                    self.y.setValue(site.point.y)
                    return

    def choose(self, mount):
        """True where the mount is one of the list."""
        at = self.mount.findData(mount)
        if at >= 0:
            self.mount.setCurrentIndex(at)
        return at >= 0

    def clicked(self, point):
        self.x.setValue(point.x)
        if self.y.isEnabled():
            self.y.setValue(point.y)

    def work(self):
        return operations.place_part(self.doc, self.mount.currentData(), self.x.value(), self.y.value(),
                                     self.depth.value(), self.ramp.value(), self.height.value())

    def show(self, part):
        # the coloured bottom would cover it
        for obj in self.doc.Objects:
            if hasattr(obj, "VertexColors"):
                obj.ViewObject.Visibility = False
        hide_lines(self.doc)
        look(self.doc, below=True)
        return "\n".join(["%s, %.4f litres. Whether the place serves, Find sites tells by a click on it." % (part.Label, part.Litres)] + list(part.Notes))


class CutPanel(Panel):
    TITLE = "Cut the hull"
    DO = "Cut and export"

    def fill(self):
        self.file = self.path("File, .step or .stl; none to cut alone", "", lambda old: QtWidgets.QFileDialog.getSaveFileName(
            self.form, self.TITLE, old, "STEP (*.step);;STL (*.stl)")[0])

    def work(self):
        cut = operations.cut_hull(self.doc)
        name = self.file.text().strip()
        return cut, operations.export(cut, name) if name else ""

    def show(self, result):
        cut, written = result
        look(self.doc, below=True)
        return "%d closed, %.4f litres: the skin round each part, with what is cut in it." % (len(cut.Cuts), cut.Litres) \
            + ("\nWritten: %s" % written if written else "")


class SheetsPanel(Panel):
    TITLE = "Make the sheets"
    DO = "Draw"

    def fill(self):
        boats = operations.of_kind(self.doc, objects.Boat)
        beside = os.path.join(os.path.dirname(boats[0].File), "drawings") if boats else ""
        self.folder = self.path("Folder", beside, lambda old: QtWidgets.QFileDialog.getExistingDirectory(self.form, self.TITLE, old))
        self.parts = operations.of_kind(self.doc, objects.Fitted)
        self.drawn = QtWidgets.QComboBox()
        self.drawn.addItems(["the site that is advised"] + ["%s, as it is placed" % part.Label for part in self.parts])
        self.drawn.setCurrentIndex(len(self.parts))
        self.fields.addRow("Drawn is", self.drawn)
        self.list = QtWidgets.QListWidget()
        self.list.itemActivated.connect(self.reveal)
        self.layout.addWidget(QtWidgets.QLabel("Double-click a drawing to open it."))
        self.layout.addWidget(self.list)
        self.sheets = None

    def work(self):
        if not self.folder.text().strip():
            raise operations.Refused("No folder is named; choose one for the drawings.")
        chosen = self.drawn.currentIndex()
        return operations.make_sheets(self.doc, os.path.abspath(self.folder.text().strip()), self.parts[chosen - 1] if chosen > 0 else None)

    def show(self, sheets):
        self.sheets = sheets
        self.list.clear()
        self.list.addItems(list(sheets.Files))
        return "\n".join(sheets.Words)

    def reveal(self, item):
        QtGui.QDesktopServices.openUrl(QtCore.QUrl.fromLocalFile(os.path.join(self.sheets.Folder, item.text())))


class RefreshPanel(Panel):
    TITLE = "Read the files again"
    DO = "Read"

    def work(self):
        return operations.refresh(self.doc)

    def show(self, count):
        return "Hull and placed parts (%d) are as job and table stand now." % count


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
