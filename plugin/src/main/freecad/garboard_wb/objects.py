"""Objects of a document that know how to work themselves out again.

Each keeps in `Answered` what it was last worked out from: while that is unchanged, a recompute leaves the shape as it is
and needs no core, so a document opens and recomputes where Garboard's jars are missing.
"""
import os
import tempfile

import FreeCAD
import Mesh
import Part

from garboard_wb import core, files, shapes

AS_THE_JOB = -1.0
POCKET = "keel-pocket"
FLUSH = "flush-through-hull"
BLOCK = "through-hull-with-fairing-block"
LABELS = {POCKET: "Keel pocket", FLUSH: "Flush through-hull", BLOCK: "Fairing block", "in-hull": "In-hull bath", "transom-mount": "Transom bracket"}


class _Proxy:
    """What all of them share: properties by name, and being saved as nothing but them."""

    PROPERTIES = ()

    def __init__(self, obj):
        obj.Proxy = self
        self.complete(obj)

    def complete(self, obj):
        """Adds the properties that are missing, as in a document of an earlier version or edited by hand."""
        for kind, name, words, hidden in self.PROPERTIES:
            if not hasattr(obj, name):
                obj.addProperty(kind, name, "Garboard", words)
                obj.setEditorMode(name, hidden)

    def onDocumentRestored(self, obj):
        self.complete(obj)

    def dumps(self):
        return None

    def loads(self, state):
        return None

    def __getstate__(self):
        return None

    def __setstate__(self, state):
        return None


SHOWN, READ_ONLY, HIDDEN = 0, 1, 2


def require(obj, *links):
    """Links that somebody took away are told by name."""
    for link in links:
        if not getattr(obj, link):
            raise core.CoreFault("%s is not set; choose one in the properties of %s" % (link, obj.Label))


class Boat(_Proxy):
    """The files that everything else comes from."""

    PROPERTIES = (
        ("App::PropertyFile", "File", "Job or table of offsets", SHOWN),
        ("App::PropertyFile", "Table", "Table of offsets that the hull is drawn from", READ_ONLY),
        ("App::PropertyBool", "Exact", "The hull goes through every value of the table", READ_ONLY),
        ("App::PropertyBool", "IsJob", "The file is a job, with transducer and mounts", READ_ONLY))

    def execute(self, obj):
        if obj.File and not os.path.isfile(obj.File):
            raise core.CoreFault("%s: there is no such file; where it moved to, set File of %s to its new place" % (obj.File, obj.Label))


def surface_words(table, exact, target):
    return ["lines", table, "--surface", target] + (["--exact"] if exact else [])


class Hull(_Proxy):
    """The skin as exact B-spline faces, starboard first, then port."""

    PROPERTIES = (
        ("App::PropertyLink", "Boat", "Whose skin it is", SHOWN),
        ("App::PropertyStringList", "Between", "Between which lines of the table each face lies, starboard first", READ_ONLY),
        ("App::PropertyString", "Answered", "", HIDDEN))

    def execute(self, obj):
        require(obj, "Boat")
        if self.words(obj) == obj.Answered and not obj.Shape.isNull():
            return
        with tempfile.TemporaryDirectory() as folder:
            target = os.path.join(folder, "surface.xml")
            core.ask(surface_words(obj.Boat.Table, obj.Boat.Exact, target)).require()
            with open(target, encoding="utf-8") as file:
                self.take(obj, files.Surface(file.read()))

    @staticmethod
    def words(obj):
        """The request that its shape came from."""
        return "\n".join(surface_words(obj.Boat.Table, obj.Boat.Exact, "-"))

    @staticmethod
    def take(obj, surface):
        obj.Shape = shapes.hull(surface)
        obj.Between = 2 * ["%s, %s" % panel.lines for panel in surface.panels]
        obj.Answered = Hull.words(obj)


class Fitted(_Proxy):
    """A keel pocket, or the parts of another mount, at a place: change a property and it is worked out again by the core."""

    PROPERTIES = (
        ("App::PropertyLink", "Boat", "Whose job it is of", SHOWN),
        ("App::PropertyEnumeration", "Mount", "How the transducer goes in", SHOWN),
        ("App::PropertyString", "Transducer", "Which of a job with several, by its name there; empty of a job with one", SHOWN),
        ("App::PropertyDistance", "X", "Aft of the table's origin", SHOWN),
        ("App::PropertyDistance", "Y", "To starboard; 0 for a pocket athwart the keel", SHOWN),
        ("App::PropertyDistance", "Depth", "Of a pocket's floor above the keel line; -1 as the job says", SHOWN),
        ("App::PropertyFloat", "Ramp", "Length of a pocket's ramps to their height, 0 none; -1 as the job says", SHOWN),
        ("App::PropertyDistance", "Height", "Of a block's face below the skin; -1 as the job says", SHOWN),
        ("App::PropertyFloat", "Litres", "Volume by the core: of a pocket between cut and skin, else of all parts", READ_ONLY),
        ("App::PropertyStringList", "Parts", "The bodies that are shown; of a pocket what it takes out of the boat", READ_ONLY),
        ("App::PropertyString", "Told", "", HIDDEN),
        ("App::PropertyStringList", "Notes", "What the yard has to know", READ_ONLY),
        ("App::PropertyString", "Answered", "", HIDDEN))

    def complete(self, obj):
        fresh = not hasattr(obj, "Mount")
        super().complete(obj)
        if fresh:
            obj.Mount = list(LABELS)
            obj.Depth = obj.Height = obj.Ramp = AS_THE_JOB

    def execute(self, obj):
        require(obj, "Boat")
        words = cut_words(obj)
        if "\n".join(words) == obj.Answered and obj.Mesh.CountFacets:
            return
        self.take(obj, core.ask(words).require())

    @staticmethod
    def take(obj, answer):
        obj.Told = answer.text()
        part = files.Part(obj.Told)
        shown = part.solids[:1] if part.pocket else part.solids
        whole = Mesh.Mesh()
        for solid in shown:
            whole.addMesh(shapes.mesh(solid))
        obj.Mesh = whole
        obj.Parts = [solid.name for solid in shown]
        obj.Litres = part.pocket["volume_litres"] if part.pocket else sum(solid.litres for solid in part.solids)
        obj.Notes = part.notes
        obj.Answered = "\n".join(cut_words(obj))


def cut_words(obj):
    """The request that a fitted part stands for."""
    return ["cut", obj.Boat.File] + wish_words(obj)


def wish_words(obj):
    """What is to be made, and where: for `cut` as for `run`."""
    return placed_words(obj.Mount, obj.X.Value, obj.Y.Value, obj.Depth.Value, obj.Ramp, obj.Height.Value, obj.Transducer)


def placed_words(mount, x, y, depth=AS_THE_JOB, ramp=AS_THE_JOB, height=AS_THE_JOB, transducer=""):
    """Lengths in millimetres; what is below 0 is left to the job. A transducer is named where the job has several."""
    words = ["--mount", mount, "--at", place(x, y)] + (["--transducer", transducer] if transducer else [])
    if mount == POCKET:
        words += ["--depth", "%.4fmm" % depth] if depth >= 0 else []
        words += ["--ramp", "%.4f" % ramp] if ramp >= 0 else []
    if mount == BLOCK and height >= 0:
        words += ["--height", "%.4fmm" % height]
    return words


def place(x, y):
    """A place of the bottom as the command line takes it, from millimetres."""
    return "%.6f,%.6f" % (x / 1000, y / 1000)


class Cut(_Proxy):
    """The hull's skin with what is cut in it: of each part that has one the body that the core made, as a mesh."""

    PROPERTIES = (
        ("App::PropertyLinkList", "Cuts", "The parts that it is cut for", SHOWN),
        ("App::PropertyFloat", "Litres", "Volume by the core", READ_ONLY))

    def execute(self, obj):
        require(obj, "Cuts")
        whole, litres = Mesh.Mesh(), 0.0
        for fitted in obj.Cuts:
            part = files.Part(fitted.Told)
            if part.skin is None:
                raise core.CoreFault("%s has no skin to be cut: %s" % (fitted.Label, " ".join(part.notes)))
            whole.addMesh(shapes.mesh(part.skin))
            litres += part.skin.litres
        obj.Mesh = whole
        obj.Litres = litres


class Places(_Proxy):
    """The sites that a search found, with their checks, as the core wrote them."""

    PROPERTIES = (
        ("App::PropertyLink", "Boat", "Whose bottom was searched", SHOWN),
        ("App::PropertyString", "Answer", "The answer in words", READ_ONLY),
        ("App::PropertyString", "Record", "All that was found, XML", HIDDEN))

    def execute(self, obj):
        if obj.Record:
            record = files.Record(obj.Record)
            obj.Shape = Part.makeCompound([Part.Vertex(site.point) for site in record.sites])


class Sheets(_Proxy):
    """A folder of drawings and the record that lists them."""

    PROPERTIES = (
        ("App::PropertyPath", "Folder", "Where the drawings are", SHOWN),
        ("App::PropertyStringList", "Files", "What was written", READ_ONLY),
        ("App::PropertyStringList", "Words", "What was answered", READ_ONLY))

    def execute(self, obj):
        pass


def add(doc, kind, proxy, name, label):
    """An object of ours, dressed where there is a window."""
    obj = doc.addObject(kind, name)
    proxy(obj)
    obj.Label = label
    if FreeCAD.GuiUp:
        from garboard_wb import views
        views.dress(obj, name)
    return obj
