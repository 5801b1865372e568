"""The panels of the commands, one class each."""
import os

from PySide import QtCore

from garboard_wb import document, objects, operations
from garboard_wb.looking import ListeningPanel, hide_lines, look
from garboard_wb.panel import CHECK_HEADINGS, Panel, QtWidgets, check_rows, site_rows, write


class OpenPanel(Panel):
    TITLE = "Open a job or a table"
    DO = "Open"

    def fill(self):
        boats = document.of_kind(self.doc, objects.Boat)
        self.file = self.path("File", boats[0].File if boats else "", lambda old: QtWidgets.QFileDialog.getOpenFileName(
            self.form, self.TITLE, os.path.dirname(old), "Jobs and tables of offsets (*.xml *.csv *.xlsx);;All files (*)")[0])

    def work(self):
        if not self.file.text().strip():
            raise document.Refused("No file is named; choose a job (.xml) or a table of offsets (.csv, .xlsx).")
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


class RefreshPanel(Panel):
    TITLE = "Read the files again"
    DO = "Read"

    def work(self):
        return operations.refresh(self.doc)

    def show(self, count):
        return "Hull and placed parts (%d) are as job and table stand now." % count
