"""Asks the core. One session of it is kept, by QProcess where there is a window and by plain pipes where there is none.

A request is a list of words as on the command line; its answer an Answer. A session that ends by itself is begun once
more and the request asked again, which is told.
"""
import atexit
import itertools
import subprocess
import tempfile

import FreeCAD

from garboard_wb import java

CANCELLED = 130
_ESCAPED = {'"': '\\"', "\\": "\\\\", "\t": "\\t", "\n": "\\n"}


class CoreFault(Exception):
    """The core's own words on why it did not do what it was asked."""


class Answer:
    """What came of a request: exit code, lines on standard output and on standard error."""

    def __init__(self):
        self.code = None
        self.out = []
        self.err = []

    def take(self, kind, text):
        """One reply; true when it was the last."""
        if kind == "exit":
            self.code = int(text)
        elif kind in ("out", "err"):
            getattr(self, kind).append(text)
        return kind == "exit"

    def words(self):
        return "\n".join(self.err) or "the core ended with %s and said nothing" % self.code

    def require(self, *codes):
        if self.code not in (codes or (0,)):
            raise CoreFault(self.words())
        return self

    def text(self):
        return "\n".join(self.out) + "\n"


def line(name, words):
    """The request as the session reads it."""
    return name + "\t" + " ".join('"%s"' % "".join(_ESCAPED.get(c, c) for c in str(word)) for word in words) + "\n"


def crashed(detail):
    return "the core ended unexpectedly%s" % (": " + detail if detail else "")


class PlainSession:
    """By pipes, waiting for each answer: for FreeCAD without a window."""

    def __init__(self):
        self._process = None
        self._said = None
        self._names = itertools.count(1)
        atexit.register(self.close)

    def ask(self, words, progress=None):
        for attempt in (1, 2):
            try:
                return self._ask(words, progress)
            except EOFError as end:
                self.close()
                if attempt == 2:
                    raise CoreFault(crashed(str(end)) + ", twice; nothing was changed") from None
                FreeCAD.Console.PrintWarning("Garboard: %s; it is begun once more.\n" % crashed(str(end)))

    def _ask(self, words, progress):
        if self._process is None or self._process.poll() is not None:
            self._said = tempfile.TemporaryFile()
            self._process = subprocess.Popen(java.session(), stdin=subprocess.PIPE, stdout=subprocess.PIPE, stderr=self._said,
                                             env=java.environment())
        name = str(next(self._names))
        answer = Answer()
        try:
            self._process.stdin.write(line(name, words).encode("utf-8"))
            self._process.stdin.flush()
        except OSError:
            raise EOFError(self._last_words()) from None
        for raw in self._process.stdout:
            to, kind, text = raw.decode("utf-8", "replace").rstrip("\n").split("\t", 2)
            if to != name:
                continue
            if kind == "progress" and progress:
                progress(text)
            if answer.take(kind, text):
                return answer
        raise EOFError(self._last_words())

    def _last_words(self):
        self._process.wait()
        self._said.seek(0)
        return self._said.read().decode("utf-8", "replace").strip()[-500:]

    def process_id(self):
        return self._process.pid if self._process else 0

    def close(self):
        if self._process is not None:
            self._process.stdin.close()
            try:
                self._process.wait(2)
            except subprocess.TimeoutExpired:
                self._process.kill()
                self._process.wait()
            self._process.stdout.close()
            self._said.close()
            self._process = None


_session = None


def session():
    """The one session of this FreeCAD."""
    global _session
    if _session is None:
        if FreeCAD.GuiUp:
            from garboard_wb import window
            _session = window.WindowSession()
        else:
            _session = PlainSession()
    return _session


def ask(words, progress=None):
    """Asks and waits; in a window for short requests only, such as a pocket that changes."""
    return session().ask(words, progress)


def run(steps, progress=None):
    """Carries out an operation: a generator that yields requests (words to the core, or a script of `child`), is sent their answers,
    and returns a result.
    """
    answer = None
    try:
        while True:
            request = steps.send(answer)
            answer = ask(request, progress) if isinstance(request, list) else request.wait()
    except StopIteration as done:
        return done.value
