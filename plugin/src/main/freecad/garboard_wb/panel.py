"""The task panel that all commands share: a form, a bar, a table, and messages that leave it open."""
import inspect
import traceback

import FreeCAD
import FreeCADGui
from PySide import QtCore, QtGui

from garboard_wb import core, document, files, java

try:
    from PySide import QtWidgets
except ImportError:
    QtWidgets = QtGui

OURS = (core.CoreFault, document.Refused, files.Unreadable, java.NoCore, OSError)


class Panel:
    """One command's panel. Subclasses fill `form` and say what is done in `work`."""

    TITLE = ""
    DO = "Do it"

    def __init__(self):
        self.doc = FreeCAD.ActiveDocument or FreeCAD.newDocument()
        self.request = None
        self.steps = None
        self.box = None
        self.form = QtWidgets.QWidget()
        self.form.setWindowTitle(self.TITLE)
        self.layout = QtWidgets.QVBoxLayout(self.form)
        self.fields = QtWidgets.QFormLayout()
        self.fields.setRowWrapPolicy(QtWidgets.QFormLayout.WrapLongRows)
        self.layout.addLayout(self.fields)
        self.fill()
        self.do = QtWidgets.QPushButton(self.DO)
        self.do.clicked.connect(self.begin)
        self.stop = QtWidgets.QPushButton("Cancel what runs")
        self.stop.clicked.connect(self.cancel)
        self.stop.setEnabled(False)
        buttons = QtWidgets.QHBoxLayout()
        buttons.addWidget(self.do)
        buttons.addWidget(self.stop)
        self.layout.addLayout(buttons)
        self.bar = QtWidgets.QProgressBar()
        self.bar.setTextVisible(True)
        self.bar.hide()
        self.layout.addWidget(self.bar)
        self.said = QtWidgets.QPlainTextEdit()
        self.said.setReadOnly(True)
        self.said.setMinimumHeight(90)
        self.said.setMaximumHeight(180)
        self.layout.addWidget(self.said)

    # what a command adds

    def fill(self):
        """Puts the command's fields on the form."""

    def work(self):
        """The operation, a generator or a plain result."""
        raise NotImplementedError

    def show(self, result):
        """What is to be said and shown of the result."""
        return ""

    # what FreeCAD asks

    def getStandardButtons(self):
        close = QtWidgets.QDialogButtonBox.Close
        # FreeCAD with Qt 5 asks for a number, with Qt 6 for the button itself
        return int(close) if int(QtCore.qVersion().split(".")[0]) < 6 else close

    def reject(self):
        self.cancel()
        self.close()
        FreeCADGui.Control.closeDialog()

    def close(self):
        """Lets go of what the panel listens to."""

    # carrying out

    def begin(self):
        if self.steps is not None:
            return
        self.say("")
        try:
            work = self.work()
            if inspect.isgenerator(work):
                self.steps = work
                self.busy(True)
                self.advance(None)
            else:
                self.finish(work)
        except Exception as fault:
            self.fail(fault)

    def advance(self, answer):
        """Sends the core's answer to the operation and asks what it wants next."""
        try:
            words = self.steps.send(answer)
        except StopIteration as done:
            self.end()
            self.finish(done.value)
            return
        except Exception as fault:
            self.end()
            self.fail(fault)
            return
        self.request = core.session().start(words, self.answered, self.progress) if isinstance(words, list) else words.start(self.answered)

    def answered(self, answer):
        self.request = None
        if self.steps is None:
            return
        if answer.code is None or answer.code == core.CANCELLED:
            self.end()
            self.fail(core.CoreFault("Cancelled; nothing more was changed." if answer.code else answer.words()))
        else:
            # out of the reader's own call: it may be asked again from here
            QtCore.QTimer.singleShot(0, lambda: self.advance(answer))

    def progress(self, text):
        self.bar.setFormat(text)

    def cancel(self):
        if self.request is not None:
            self.request.cancel()

    def busy(self, working):
        self.do.setEnabled(not working)
        self.stop.setEnabled(working)
        self.bar.setRange(0, 0 if working else 1)
        self.bar.setVisible(working)

    def end(self):
        self.steps = None
        self.busy(False)

    def finish(self, result):
        self.say(self.show(result))

    def fail(self, fault):
        """The panel stays open with the words in it, to be mended and tried again."""
        words = str(fault) or fault.__class__.__name__
        self.say(words)
        FreeCAD.Console.PrintError("Garboard: %s\n" % words)
        if not isinstance(fault, OURS):
            FreeCAD.Console.PrintLog(traceback.format_exc())
        self.message(words)

    def message(self, words):
        if self.box is not None:
            self.box.close()
        self.box = QtWidgets.QMessageBox(QtWidgets.QMessageBox.Warning, "Garboard", words, QtWidgets.QMessageBox.Ok, FreeCADGui.getMainWindow())
        self.box.setModal(False)
        self.box.show()

    def say(self, words):
        self.said.setPlainText(words)

    # fields

    def number(self, label, value, least, most, suffix=" mm", decimals=1):
        box = QtWidgets.QDoubleSpinBox()
        box.setRange(least, most)
        box.setDecimals(decimals)
        box.setSuffix(suffix)
        box.setValue(value)
        self.fields.addRow(label, box)
        return box

    def wish(self, label, value, most, suffix=" mm"):
        """A number that may be left to the job."""
        box = self.number(label, -1, -1, most, suffix)
        box.setSpecialValueText("as the job says")
        return box

    def path(self, label, value, ask):
        line = QtWidgets.QLineEdit(value)
        button = QtWidgets.QToolButton()
        button.setText("…")
        row = QtWidgets.QHBoxLayout()
        row.addWidget(line)
        row.addWidget(button)
        self.fields.addRow(label, row)

        def choose():
            chosen = ask(line.text())
            if chosen:
                line.setText(chosen)
        button.clicked.connect(choose)
        return line

    def table(self, headings, height):
        table = QtWidgets.QTableWidget(0, len(headings))
        table.setHorizontalHeaderLabels(headings)
        table.verticalHeader().hide()
        table.setEditTriggers(QtWidgets.QAbstractItemView.NoEditTriggers)
        table.setFixedHeight(height)
        # what was found stands beside the check without scrolling; the whole name is in its tip
        table.horizontalHeader().setMaximumSectionSize(210)
        table.setSelectionBehavior(QtWidgets.QAbstractItemView.SelectRows)
        table.verticalHeader().setDefaultSectionSize(table.fontMetrics().height() + 6)
        table.verticalHeader().setMinimumSectionSize(table.fontMetrics().height() + 2)
        self.layout.addWidget(table)
        return table


def write(table, rows, colours=None):
    """Fills a table; a row's colour by its number."""
    table.setRowCount(len(rows))
    for i, row in enumerate(rows):
        for k, text in enumerate(row):
            item = QtWidgets.QTableWidgetItem(text)
            item.setToolTip(text)
            if colours:
                item.setBackground(QtGui.QColor(*colours[i]))
                # whatever the theme: on a light ground
                item.setForeground(QtGui.QColor(0, 0, 0))
            table.setItem(i, k, item)
    table.resizeColumnsToContents()


VERDICTS = {"met": (222, 242, 224), "not met": (250, 214, 210), "NOT KNOWN": (253, 240, 200)}
CHECK_HEADINGS = ["verdict", "check", "found", "limit", "use", "mount", "source"]


def _figure(row, name):
    return (row[name] + " " + row["unit"]).strip() if row[name] else ""


def check_rows(rows):
    """Rows of the core's CSV of checks, and their colours."""
    texts = [[row["verdict"], ("» " if row["governing"] == "yes" else "") + row["check"], _figure(row, "demand"), _figure(row, "limit"),
              row["utilisation"], row["mount"], row["source"]] for row in rows]
    return texts, [VERDICTS.get(row["verdict"], (255, 255, 255)) for row in rows]


def site_rows(site):
    """The same of a site in a record."""
    rows = [{"mount": site.mount, "check": check.name, "verdict": check.verdict, "demand": check.demand or "", "limit": check.limit or "",
             "unit": check.unit or "", "utilisation": check.utilisation or "", "governing": "yes" if check.governing else "", "source": check.source or ""}
            for check in site.checks]
    return check_rows(rows)
