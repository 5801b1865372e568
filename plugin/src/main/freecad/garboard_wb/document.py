"""What the operations find in a document, and how they change it: in one step that can be undone."""
import contextlib

from garboard_wb import core, objects


class Refused(Exception):
    """What was asked cannot be done here; the words say why and what would work."""


@contextlib.contextmanager
def step(doc, words):
    """One step of undo; what fails in it leaves the document as it was."""
    doc.openTransaction(words)
    try:
        yield
        doc.recompute()
        failed = [obj for obj in doc.Objects if not obj.isValid() and "Invalid" in obj.State]
        if failed:
            raise core.CoreFault("\n".join("%s: %s" % (obj.Label, obj.getStatusString()) for obj in failed))
    except BaseException:
        doc.abortTransaction()
        raise
    doc.commitTransaction()


def of_kind(doc, proxy):
    return [obj for obj in doc.Objects if isinstance(getattr(obj, "Proxy", None), proxy)]


def boat_of(doc, job=False):
    """The one boat of a document."""
    boats = of_kind(doc, objects.Boat) if doc else []
    if not boats:
        raise Refused("No boat is open in this document; open a job or a table first.")
    if not boats[0].File:
        raise Refused("File of %s is empty; set it to a job or a table in its properties, or open one." % boats[0].Label)
    if job and not boats[0].IsJob:
        raise Refused("%s is a table of offsets alone; this needs a job, which tells the transducer too. Open a job.xml." % boats[0].File)
    return boats[0]


def hull_of(doc):
    hulls = of_kind(doc, objects.Hull)
    if not hulls:
        raise Refused("The hull is not shown in this document; show it first.")
    return hulls[0]


def group(doc, name, label):
    """A group of ours, made anew: what an earlier run put there goes."""
    old = doc.getObject(name)
    if old is not None:
        for child in list(old.Group):
            doc.removeObject(child.Name)
        return old
    made = doc.addObject("App::DocumentObjectGroup", name)
    made.Label = label
    return made
