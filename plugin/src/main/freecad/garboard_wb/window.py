"""The core in FreeCAD with a window: by QProcess, so that the window stays alive while the core works."""
import itertools

import FreeCAD
import FreeCADGui
from PySide import QtCore

from garboard_wb import java
from garboard_wb.core import CANCELLED, Answer, CoreFault, crashed, line

PATIENCE_MS = 5000


class Request:
    """Asked and not yet answered."""

    def __init__(self, session, name, words, done, progress):
        self._session = session
        self.name = name
        self.words = words
        self.done = done
        self.progress = progress
        self.answer = Answer()
        self.tries = 0
        self.cancelled = False

    def cancel(self):
        self._session.cancel(self)


class WindowSession(QtCore.QObject):
    """One QProcess for all panels; it goes when the window goes."""

    def __init__(self):
        super().__init__(FreeCADGui.getMainWindow())
        self._process = None
        self._names = itertools.count(1)
        self._asked = {}
        self._begun = b""
        QtCore.QCoreApplication.instance().aboutToQuit.connect(self.close)

    def start(self, words, done, progress=None):
        """Asks; done(answer) is called when it is answered, also when the core cannot be had: then code is None."""
        request = Request(self, str(next(self._names)), words, done, progress)
        self._asked[request.name] = request
        self._send(request)
        return request

    def cancel(self, request):
        """A request that does not give up soon is ended with its process; the next one begins another."""
        if request.name in self._asked:
            request.cancelled = True
            self._write(line(request.name + ".c", ["cancel", request.name]))
            QtCore.QTimer.singleShot(PATIENCE_MS, lambda: self._end_if_running(request))

    def ask(self, words, progress=None):
        """Asks and waits, with the window still: for short requests."""
        answers = []
        request = self.start(words, answers.append, progress)
        while not answers:
            process = self._process
            if process is None or not process.waitForReadyRead(200):
                if process is None or process.state() == QtCore.QProcess.NotRunning:
                    self._finished()
            else:
                self._read()
        if request.answer.code is None:
            raise CoreFault(answers[0].words())
        return answers[0]

    def process_id(self):
        return self._process.processId() if self._process else 0

    def _send(self, request):
        request.tries += 1
        try:
            self._begin()
        except java.NoCore as none:
            self._fail(request, str(none))
            return
        self._write(line(request.name, request.words))

    def _begin(self):
        if self._process is not None and self._process.state() != QtCore.QProcess.NotRunning:
            return
        words = java.session()
        process = QtCore.QProcess(self)
        environment = QtCore.QProcessEnvironment()
        for name, value in java.environment().items():
            environment.insert(name, value)
        process.setProcessEnvironment(environment)
        process.readyReadStandardOutput.connect(self._read)
        process.finished.connect(lambda *ignored: self._finished(process))
        process.start(words[0], words[1:])
        self._process = process
        self._begun = b""
        if not process.waitForStarted(20000):
            self._process = None
            raise java.NoCore("%s cannot be started: %s. %s" % (words[0], process.errorString(), java.REMEDY))

    def _write(self, text):
        if self._process is not None:
            self._process.write(QtCore.QByteArray(text.encode("utf-8")))

    def _read(self):
        if self._process is None:
            return
        self._begun += bytes(self._process.readAllStandardOutput())
        *lines, self._begun = self._begun.split(b"\n")
        for raw in lines:
            name, kind, text = raw.decode("utf-8", "replace").split("\t", 2)
            request = self._asked.get(name)
            if request is None:
                continue
            if kind == "progress" and request.progress:
                request.progress(text)
            if request.answer.take(kind, text):
                del self._asked[name]
                request.done(request.answer)

    def _finished(self, process=None):
        """Every request that was not answered is asked once more, of another process; a cancelled one is not."""
        if process is not None and process is not self._process:
            return
        self._read()
        detail = bytes(self._process.readAllStandardError()).decode("utf-8", "replace").strip()[-500:] if self._process else ""
        self._process = None
        for request in list(self._asked.values()):
            if request.cancelled:
                request.answer.code = CANCELLED
                del self._asked[request.name]
                request.done(request.answer)
            elif request.tries > 1:
                self._fail(request, crashed(detail) + ", twice; nothing was changed")
            else:
                FreeCAD.Console.PrintWarning("Garboard: %s; it is begun once more.\n" % crashed(detail))
                request.answer = Answer()
                self._send(request)

    def _fail(self, request, words):
        self._asked.pop(request.name, None)
        request.answer = Answer()
        request.answer.err.append(words)
        request.done(request.answer)

    def _end_if_running(self, request):
        if request.name in self._asked and self._process is not None:
            self._process.kill()

    def close(self):
        process, self._process = self._process, None
        self._asked.clear()
        if process is not None:
            process.closeWriteChannel()
            if not process.waitForFinished(1000):
                process.kill()
                process.waitForFinished(1000)
