"""The panels for parts at a place of the user's."""
import os

import FreeCAD
from PySide import QtCore, QtGui

from garboard_wb import document, files, fitting, objects
from garboard_wb.looking import ListeningPanel, hide_lines, look
from garboard_wb.panel import Panel, QtWidgets


class PartPanel(ListeningPanel):
    TITLE = "Place a pocket or a block"
    DO = "Place"

    def fill(self):
        self.mount = QtWidgets.QComboBox()
        for mount, label in objects.LABELS.items():
            self.mount.addItem(label, mount)
        self.fields.addRow("Mount", self.mount)
        boats = document.of_kind(self.doc, objects.Boat)
        self.transducer = QtWidgets.QComboBox()
        self.transducer.addItems(files.transducers(boats[0].File) if boats and boats[0].IsJob else [])
        if self.transducer.count() > 1:
            self.fields.addRow("Transducer", self.transducer)
        self.x = self.number("x aft", 0, -100000, 100000)
        self.y = self.number("y to starboard", 0, -20000, 20000)
        self.depth = self.wish("Depth", -1, 2000)
        self.ramp = self.wish("Ramp 1 :", -1, 100, "")
        self.height = self.wish("Height", -1, 2000)
        self.mount.currentIndexChanged.connect(lambda ignored: self.suit(self.mount.currentData()))
        self.suit(self.mount.currentData())
        self.suggest()

    def suit(self, mount):
        for box, mounts in ((self.depth, (objects.POCKET,)),
                            (self.ramp, (objects.POCKET,)), (self.height, (objects.BLOCK,))):
            box.setEnabled(mount in mounts)
        if mount == objects.POCKET:
            self.y.setValue(0)

    def suggest(self):
        """The best site that the last search found, where there is one."""
        for places in document.of_kind(self.doc, objects.Places):
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
        # nobody clicks on the keel line to the millimetre
        if self.mount.currentData() != objects.POCKET:
            self.y.setValue(point.y)

    def work(self):
        return fitting.place_part(self.doc, self.mount.currentData(), self.x.value(), self.y.value(),
                                     self.depth.value(), self.ramp.value(), self.height.value(),
                                     self.transducer.currentText() if self.transducer.count() > 1 else "")

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
        cut = fitting.cut_hull(self.doc)
        name = self.file.text().strip()
        if name:
            self.progress("writing %s" % os.path.basename(name))
            yield from fitting.export(cut, name)
        return cut, name

    def show(self, result):
        cut, written = result
        look(self.doc, below=True)
        return "%d closed, %.4f litres: the skin round each part, with what is cut in it." % (len(cut.Cuts), cut.Litres) \
            + ("\nWritten: %s" % written if written else "")


class SheetsPanel(Panel):
    TITLE = "Make the sheets"
    DO = "Draw"

    def fill(self):
        boats = document.of_kind(self.doc, objects.Boat)
        beside = os.path.join(os.path.dirname(boats[0].File), "drawings") if boats else ""
        self.folder = self.path("Folder", beside, lambda old: QtWidgets.QFileDialog.getExistingDirectory(self.form, self.TITLE, old))
        self.parts = document.of_kind(self.doc, objects.Fitted)
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
            raise document.Refused("No folder is named; choose one for the drawings.")
        chosen = self.drawn.currentIndex()
        return fitting.make_sheets(self.doc, os.path.abspath(self.folder.text().strip()), self.parts[chosen - 1] if chosen > 0 else None)

    def show(self, sheets):
        self.sheets = sheets
        self.list.clear()
        self.list.addItems(list(sheets.Files))
        return "\n".join(sheets.Words)

    def reveal(self, item):
        QtGui.QDesktopServices.openUrl(QtCore.QUrl.fromLocalFile(os.path.join(self.sheets.Folder, item.text())))
