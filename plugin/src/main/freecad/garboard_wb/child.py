"""A FreeCAD without a window, begun for what would hold this one's window still."""
import os
import shutil
import subprocess
import tempfile

import FreeCAD

from garboard_wb import core, java


def program():
    """FreeCAD's program for scripts, of this very installation where it has one; empty where there is none."""
    own = [os.path.join(FreeCAD.getHomePath(), "bin", name) for name in ("freecadcmd", "FreeCADCmd", "FreeCADCmd.exe")]
    return next((path for path in own if os.access(path, os.X_OK)), None) or shutil.which("freecadcmd") or shutil.which("FreeCADCmd") or ""


class Script:
    """One of the scripts beside this file, asked like the core: what went wrong it writes into the file that GARBOARD_SAID names."""

    def __init__(self, name, **variables):
        self.words = [program(), os.path.join(os.path.dirname(os.path.abspath(__file__)), name)]
        self._folder = tempfile.TemporaryDirectory()
        self._said = os.path.join(self._folder.name, "said.txt")
        self._environment = dict(java.environment(), GARBOARD_SAID=self._said, QT_QPA_PLATFORM="offscreen",
                                 **{"GARBOARD_" + key.upper(): value for key, value in variables.items()})
        self._process = None
        self._cancelled = False

    def wait(self):
        """Carries it out, for FreeCAD without a window."""
        done = subprocess.run(self.words, stdin=subprocess.DEVNULL, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL,
                              env=self._environment, check=False)
        return self._answer(done.returncode)

    def start(self, done):
        """Begins it; done(answer) is called when it has ended."""
        from PySide import QtCore
        process = QtCore.QProcess()
        environment = QtCore.QProcessEnvironment()
        for name, value in self._environment.items():
            environment.insert(name, value)
        process.setProcessEnvironment(environment)
        process.setStandardInputFile(QtCore.QProcess.nullDevice())
        process.setStandardOutputFile(QtCore.QProcess.nullDevice())
        process.setStandardErrorFile(QtCore.QProcess.nullDevice())
        process.finished.connect(lambda code, *ignored: done(self._answer(core.CANCELLED if self._cancelled else code)))
        process.errorOccurred.connect(lambda error: done(self._answer(1)) if error == QtCore.QProcess.FailedToStart else None)
        process.start(self.words[0], self.words[1:])
        self._process = process
        return self

    def cancel(self):
        self._cancelled = True
        self._process.kill()

    def _answer(self, code):
        answer = core.Answer()
        answer.code = code
        if os.path.exists(self._said):
            with open(self._said, encoding="utf-8") as said:
                answer.err = said.read().splitlines()
        if code and not answer.err:
            answer.err = ["%s ended with %s and said nothing" % (self.words[0], code)]
        return answer
