"""Drives the workbench in a window as a user does, from a table to the sheets: `freecad drive_window.py -M <add-on>` under Xvfb.

GARBOARD_DEMO is the demo folder, GARBOARD_SCREENS where the pictures and `result.txt` go. The result is "passed", or what went wrong.
"""
import importlib
import os
import shutil
import time
import traceback

import FreeCAD
import FreeCADGui
from PySide import QtCore, QtGui

DEMO = os.environ["GARBOARD_DEMO"]
SCREENS = os.environ["GARBOARD_SCREENS"]
LIMIT = 240


def wait(until, words, limit=LIMIT):
    """Lets the window work until something holds; the longest time that it stood still is returned."""
    end, still, last = time.time() + limit, 0.0, time.time()
    while not until():
        QtGui.QApplication.processEvents(QtCore.QEventLoop.AllEvents, 20)
        still, last = max(still, time.time() - last), time.time()
        if time.time() > end:
            raise AssertionError("waited %d s for %s" % (limit, words))
        time.sleep(0.005)
    return still


def settle(seconds=0.6):
    end = time.time() + seconds
    wait(lambda: time.time() > end, "a moment")


def screen(name):
    for dock in FreeCADGui.getMainWindow().findChildren(QtGui.QDockWidget):
        if dock.objectName() in ("Report view", "Python console", "Selection view"):
            dock.hide()
    settle()
    QtGui.QApplication.primaryScreen().grabWindow(0).save(os.path.join(SCREENS, name + ".png"))


def check(holds, words):
    if not holds:
        raise AssertionError(words)


class Drive:
    """One pass; `panel` is the one that is open."""

    def __init__(self):
        self.panel = None
        self.figures = []

    def open(self, command):
        """By its command, as the toolbar does; the panel that it shows is caught on the way."""
        from garboard_wb import commands
        shown = []
        kind = commands.COMMANDS[command].panel
        panels = importlib.import_module("garboard_wb." + commands.COMMANDS[command].module)
        made = getattr(panels, kind)

        class Kept(made):
            def __init__(self):
                super().__init__()
                shown.append(self)
        setattr(panels, kind, Kept)
        try:
            FreeCADGui.runCommand(command)
        finally:
            setattr(panels, kind, made)
        check(shown, "%s opens no panel" % command)
        self.panel = shown[0]
        return self.panel

    def work(self, words):
        """Presses the panel's button and waits; how long the window stood still is written down."""
        begun = time.time()
        self.panel.do.click()
        still = wait(lambda: self.panel.steps is None, words)
        self.figures.append("%s: %.1f s, window still for %.2f s at most" % (words, time.time() - begun, still))

    def close(self):
        self.panel.reject()
        settle(0.2)
        check(not FreeCADGui.Control.activeDialog(), "the panel did not close")

    def run(self):
        window = FreeCADGui.getMainWindow()
        window.resize(1580, 980)
        FreeCADGui.activateWorkbench("GarboardWorkbench")
        check(FreeCADGui.activeWorkbench().name() == "GarboardWorkbench", "the workbench does not activate")
        for dock in window.findChildren(QtGui.QDockWidget):
            if dock.objectName() in ("Combo View", "Model", "Tasks"):
                window.resizeDocks([dock], [520], QtCore.Qt.Horizontal)
        folder = os.path.join(SCREENS, "outboard-22")
        shutil.rmtree(folder, ignore_errors=True)
        shutil.copytree(os.path.join(DEMO, "outboard-22"), folder)
        doc = FreeCAD.newDocument("Outboard22")
        doc.UndoMode = 1
        self.fault(doc)
        self.boat(doc, folder)
        self.lines(doc)
        self.attitude(doc)
        self.sites(doc)
        self.part(doc)
        self.read_again(doc)
        self.cut(doc, folder)
        self.sheets(doc, folder)
        self.cancelled(doc)
        self.preferences()

    def fault(self, doc):
        """A file of the wrong kind, and one that is not there: words, and the panel stays open."""
        panel = self.open("Garboard_Open")
        for name, words in (("boat.txt", "is neither a job"), ("none.xml", "there is no such file")):
            panel.file.setText(os.path.join(SCREENS, name))
            self.work("a file that will not do")
            check(words in panel.said.toPlainText(), panel.said.toPlainText())
            check(FreeCADGui.Control.activeDialog() and not doc.Objects, "the panel closed, or the document changed")
        screen("1-fault")
        for box in QtGui.QApplication.topLevelWidgets():
            if isinstance(box, QtGui.QMessageBox):
                box.close()

    def boat(self, doc, folder):
        self.panel.file.setText(os.path.join(folder, "job.xml"))
        self.work("open")
        check(doc.getObject("Hull") is not None, self.panel.said.toPlainText())
        check(doc.UndoCount == 1, "%d steps of undo after opening" % doc.UndoCount)
        screen("2-hull")
        self.close()

    def lines(self, doc):
        self.open("Garboard_Lines")
        self.work("lines")
        check(doc.getObject("Sections") is not None, self.panel.said.toPlainText())
        screen("3-lines")
        self.close()
        doc.undo()
        check(doc.getObject("Sections") is None and doc.getObject("Hull") is not None, "lines are not one step of undo")

    def attitude(self, doc):
        self.open("Garboard_Attitude")
        self.work("attitude")
        check(doc.getObject("Attitude") is not None and self.panel.rows.rowCount() > 3, self.panel.said.toPlainText())
        shown = {obj.Label.rsplit(" at ", 1)[1] for obj in doc.getObject("Attitude").Group if obj.ViewObject.Visibility}
        check(shown == {"28.00 kn"}, "shown is the water at %s, not at the highest speed alone" % shown)
        from garboard_wb import looking
        looking.look(doc, below=True)
        screen("4-attitude")
        doc.getObject("Attitude").ViewObject.Visibility = False
        for obj in doc.getObject("Attitude").Group:
            obj.ViewObject.Visibility = False
        self.close()

    def sites(self, doc):
        panel = self.open("Garboard_Sites")
        self.work("sites")
        check(panel.sites.rowCount() > 0 and panel.checks.rowCount() > 5, panel.said.toPlainText())
        screen("5-sites")
        check(doc.getObject("Bottom").ViewObject.Coloring, "the bottom shows no colours")
        # a click on the bottom tells every check there
        FreeCADGui.Selection.clearSelection()
        FreeCADGui.Selection.addSelection(doc.Name, "Hull", "Face1", 5200.0, 250.0, 92.0)
        settle(0.2)
        wait(lambda: panel.steps is None and "5.200" in panel.heading.text(), "the checks of a click")
        screen("6-place")
        self.close()

    def part(self, doc):
        panel = self.open("Garboard_Place")
        screen("7-place-suggested")
        panel.choose("keel-pocket")
        panel.x.setValue(5000)
        panel.depth.setValue(20)
        self.work("a pocket that cannot be")
        check("cannot be built" in panel.said.toPlainText() and doc.getObject("Part") is None, panel.said.toPlainText())
        panel.depth.setValue(60)
        self.work("a pocket")
        part = doc.getObject("Part")
        check(part is not None and part.Mesh.isSolid(), panel.said.toPlainText())
        for box in QtGui.QApplication.topLevelWidgets():
            if isinstance(box, QtGui.QMessageBox):
                box.close()
        self.close()
        times = []
        for depth in (62, 64, 66, 68, 70):
            before = part.Litres
            begun = time.time()
            part.Depth = depth
            doc.recompute()
            times.append(time.time() - begun)
            check(part.isValid() and part.Litres > before, "a deeper pocket: %s" % part.getStatusString())
        self.figures.append("pocket recomputed in %s s" % ", ".join("%.3f" % each for each in times))
        screen("8-pocket")

    def read_again(self, doc):
        steps = doc.UndoCount
        self.open("Garboard_Refresh")
        self.work("files read again")
        check("placed parts (1)" in self.panel.said.toPlainText() and doc.UndoCount == steps + 1, self.panel.said.toPlainText())
        self.close()

    def cut(self, doc, folder):
        panel = self.open("Garboard_Cut")
        panel.file.setText(os.path.join(folder, "cut.step"))
        self.work("cut")
        check(os.path.getsize(os.path.join(folder, "cut.step")) > 10000 and doc.getObject("CutHull").Mesh.isSolid(), panel.said.toPlainText())
        bottom = doc.getObject("Bottom")
        bottom.ViewObject.Visibility = False
        screen("9-cut")
        self.close()

    def sheets(self, doc, folder):
        panel = self.open("Garboard_Sheets")
        panel.folder.setText(os.path.join(folder, "drawings"))
        self.work("sheets")
        check("record.xml" in doc.getObject("Sheets").Files and panel.list.count() > 5, panel.said.toPlainText())
        # what is placed is drawn, unless another is chosen
        check(panel.said.toPlainText().startswith("Given by the yard, not advised: keel pocket"), panel.said.toPlainText())
        screen("10-sheets")
        self.close()
        doc.saveAs(os.path.join(folder, "boat.FCStd"))

    def cancelled(self, doc):
        """A search is stopped; the document stays, and the next request is answered."""
        objects = len(doc.Objects)
        panel = self.open("Garboard_Sites")
        panel.do.click()
        settle(0.1)
        panel.stop.click()
        wait(lambda: panel.steps is None, "the cancelled search")
        check("Cancelled" in panel.said.toPlainText() and len(doc.Objects) == objects, panel.said.toPlainText())
        # a core that is killed meanwhile is begun once more
        from garboard_wb import core
        panel.do.click()
        settle(0.2)
        os.kill(core.session().process_id(), 9)
        wait(lambda: panel.steps is None, "the search after a crash")
        check(panel.sites.rowCount() > 0, panel.said.toPlainText())
        self.close()

    def preferences(self):
        def look():
            dialog = QtGui.QApplication.activeModalWidget()
            screen("11-preferences")
            dialog.reject()
        QtCore.QTimer.singleShot(1500, look)
        FreeCADGui.showPreferences("Garboard")


def go():
    drive = Drive()
    try:
        drive.run()
        result = "passed"
    except BaseException:
        result = traceback.format_exc()
        try:
            screen("fault")
        except BaseException:
            pass
    with open(os.path.join(SCREENS, "result.txt.part"), "w", encoding="utf-8") as out:
        out.write("\n".join(drive.figures + [result]) + "\n")
    os.replace(os.path.join(SCREENS, "result.txt.part"), os.path.join(SCREENS, "result.txt"))
    for name in list(FreeCAD.listDocuments()):
        FreeCAD.closeDocument(name)
    QtCore.QTimer.singleShot(0, FreeCADGui.getMainWindow().close)


QtCore.QTimer.singleShot(1500, go)
