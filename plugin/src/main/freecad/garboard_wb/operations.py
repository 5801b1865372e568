"""What the commands do. Each is a generator: it yields requests, is sent the core's answers, and only then changes the document,
as one step that can be undone. `core.run` carries it out without a window, a panel with one.
"""
import os
import tempfile

import FreeCAD
import Mesh
import Part

from garboard_wb import core, files, objects, shapes
from garboard_wb.document import Refused, boat_of, group, hull_of, of_kind, step

GREEN, GREY, AMBER = (0.25, 0.65, 0.35), (0.72, 0.74, 0.78), (0.90, 0.62, 0.15)
# what is drawn on the bottom stands so far below it as to be seen [mm]; outlines below the colours
SEEN = 5
SPACINGS_MM = (500.0, 200.0, 200.0)


def open_boat(doc, path):
    """A job or a table of offsets into the document, with its hull."""
    path = os.path.abspath(path)
    table, exact, surface = yield from _read(path)
    with step(doc, "Open boat"):
        old = of_kind(doc, objects.Boat)
        boat = old[0] if old else objects.add(doc, "App::FeaturePython", objects.Boat, "Boat", os.path.basename(os.path.dirname(path)) or "Boat")
        boat.File, boat.Table, boat.Exact, boat.IsJob = path, table, exact, _is_job(path)
        hulls = of_kind(doc, objects.Hull)
        hull = hulls[0] if hulls else objects.add(doc, "Part::FeaturePython", objects.Hull, "Hull", "Hull")
        hull.Boat = boat
        objects.Hull.take(hull, surface)
    return boat


def _is_job(path):
    return os.path.splitext(path)[1].lower() == ".xml"


def _read(path):
    """Table, whether the hull goes through all its values, and surface, of a job or a table as they stand."""
    if not _is_job(path) and os.path.splitext(path)[1].lower() not in (".csv", ".xlsx"):
        raise Refused("%s is neither a job (.xml) nor a table of offsets (.csv, .xlsx)." % path)
    table, exact = path, False
    if _is_job(path):
        # whether a job is sound is told by any question that reads the whole of it; the answer itself is not wanted
        named = files.transducers(path)
        asked = objects.placed_words(objects.POCKET, 0, 0, transducer=named[0] if len(named) > 1 else "")
        (yield ["cut", path] + asked).require(0, 4)
        name, exact = files.job_table(path)
        table = os.path.join(os.path.dirname(path), name)
    with tempfile.TemporaryDirectory() as folder:
        target = os.path.join(folder, "surface.xml")
        (yield objects.surface_words(table, exact, target)).require()
        with open(target, encoding="utf-8") as file:
            return table, exact, files.Surface(file.read())


def show_lines(doc, spacings=SPACINGS_MM):
    """Sections, buttocks and waterlines, each in a group of its own; spacings in millimetres."""
    boat, hull = boat_of(doc), hull_of(doc)
    if min(spacings) < 10:
        raise Refused("Lines every %g mm are closer than can be told apart; give 10 mm or more." % min(spacings))
    box = hull.Shape.BoundBox
    kinds = (("section", "Sections", box.XMin, box.XMax), ("buttock", "Buttocks", 0, box.YMax), ("waterline", "Waterlines", box.ZMin, box.ZMax))
    words = ["lines", boat.Table] + (["--exact"] if boat.Exact else [])
    for (kind, _, least, most), spacing in zip(kinds, spacings):
        first = int(least // spacing) + 1
        positions = ["%.6f" % (i * spacing / 1000) for i in range(first, int(most // spacing) + 1) if least < i * spacing < most]
        words += ["--" + kind] + positions if positions else []
    # a position that misses the skin, as between two ends, is told by 3 and the others are printed all the same
    answer = (yield words).require(0, 3)
    curves = files.curves(answer.text(), "curve", "position_m", "branch")
    if not curves:
        raise core.CoreFault(answer.words())
    with step(doc, "Show lines"):
        for kind, label, _, _ in kinds:
            made = group(doc, label, label)
            for position in dict.fromkeys(key[1] for key in curves if key[0] == kind):
                own = [points for key, points in curves.items() if key[:2] == (kind, position)]
                _both_sides(doc, made, "Line", "%s %s m" % (kind.capitalize(), position.rstrip("0").rstrip(".")), own, (0.1, 0.2, 0.45))
    return len(curves)


def _both_sides(doc, made, name, label, lines, colour):
    shape = shapes.wires(lines)
    obj = doc.addObject("Part::Feature", name)
    obj.Label = label
    obj.Shape = Part.makeCompound([shape, shapes.mirrored(shape)])
    made.addObject(obj)
    _colour(obj, colour)
    return obj


def _colour(obj, colour, width=1.5, transparency=0):
    if FreeCAD.GuiUp:
        obj.ViewObject.LineColor = colour
        obj.ViewObject.LineWidth = width
        obj.ViewObject.PointColor = colour
        if hasattr(obj.ViewObject, "ShapeColor"):
            obj.ViewObject.ShapeColor = colour
        obj.ViewObject.Transparency = transparency


def show_attitude(doc):
    """Water, stagnation lines, streamlines and layer at every speed of the job; returns the rows and what is to be said of them."""
    boat, hull = boat_of(doc, job=True), hull_of(doc)
    table = (yield ["trim", boat.File]).require(0, 4)
    if not table.out:
        raise core.CoreFault(table.words())
    traced = (yield ["trim", boat.File, "--curves"]).require(0, 4)
    curves = files.curves(traced.text(), "speed_kn", "curve", "load", "branch", "layer_mm")
    looks = (("stagnation line", "Stagnation lines", (0.80, 0.10, 0.10)), ("streamline", "Streamlines", (0.10, 0.40, 0.80)),
             ("layer", "Boundary layer", (0.45, 0.30, 0.65)))
    box = hull.Shape.BoundBox
    with step(doc, "Show attitude"):
        made = group(doc, "Attitude", "Attitude")
        for speed in dict.fromkeys(key[0] for key in curves):
            for key, ends in curves.items():
                if key[:2] == (speed, "water") and len(ends) == 2:
                    corners = [FreeCAD.Vector(end.x, side * 1.1 * box.YMax, end.z) for end, side in
                               ((ends[0], -1), (ends[1], -1), (ends[1], 1), (ends[0], 1))]
                    water = doc.addObject("Part::Feature", "Water")
                    water.Label = "Water at %s kn" % speed
                    water.Shape = Part.Face(Part.makePolygon(corners + corners[:1]))
                    made.addObject(water)
                    _colour(water, (0.55, 0.75, 0.95), transparency=75)
            for curve, label, colour in looks:
                own = [points for key, points in curves.items() if key[:2] == (speed, curve) and len(points) > 1]
                if own:
                    _both_sides(doc, made, "Flow", "%s at %s kn" % (label, speed), own, colour)
    return files.rows(table.text()), table.err


def find_sites(doc):
    """Regions, sites and a coloured bottom; returns what was found."""
    boat, hull = boat_of(doc, job=True), hull_of(doc)
    answer = (yield ["site", boat.File, "--xml"]).require(0, 4)
    text = answer.text()
    record = files.Record(text)
    outlines = []
    rings = [(region, ring) for region in record.regions for ring in [region.outline] + region.holes]
    if rings:
        with tempfile.TemporaryDirectory() as folder:
            target = os.path.join(folder, "places.csv")
            with open(target, "w", encoding="ascii") as file:
                file.write("x_m,y_m\n" + "".join("%.6f,%.6f\n" % place for _, ring in rings for place in ring))
            # the outlines lie on the skin's edge here and there; what is off it has no height and is left out
            on = (yield ["probe", boat.Table, "--points", target] + (["--exact"] if boat.Exact else [])).require(0, 3)
        heights = iter(files.rows(on.text()))
        for region, ring in rings:
            told = [next(heights) for _ in ring]
            outlines.append((region, [FreeCAD.Vector(*(1000 * float(row[c]) for c in ("x_m", "y_m", "z_m"))) for row in told if row["z_m"]]))
    with step(doc, "Find sites"):
        made = group(doc, "Siting", "Sites")
        _bottom(doc, made, hull, record)
        for region, points in outlines:
            if len(points) > 2:
                obj = doc.addObject("Part::Feature", "Region")
                obj.Label = "Region for %s" % region.mount
                wire = shapes.wires([points + points[:1]])
                obj.Shape = Part.makeCompound([wire, shapes.mirrored(wire)]) if region.side == "both" else wire
                obj.Placement.Base.z = -SEEN
                made.addObject(obj)
                _colour(obj, (0.05, 0.45, 0.15), width=3)
        places = objects.add(doc, "Part::FeaturePython", objects.Places, "Places", "Places")
        places.Boat, places.Answer, places.Record = boat, record.answer, text
        made.addObject(places)
    if FreeCAD.GuiUp:
        from garboard_wb import views
        views.colour(doc)
    return record


def _bottom(doc, made, hull, record):
    """The skin below the topsides as a mesh, coloured by whether a mount passes there every check that can be made."""
    facets, colours = [], []
    faces = list(zip(hull.Shape.Faces, hull.Between))
    below = [face for face, lines in faces if not lines.lower().endswith(", sheer")] or [face for face, _ in faces]
    for face in below:
        vertices, triangles = _grid(face)
        for triangle in triangles:
            facets.append([vertices[corner] for corner in triangle])
    mesh = Mesh.Mesh(facets)
    for point in mesh.Points:
        regions = [region for region in record.regions if region.holds(point.x / 1000, point.y / 1000)]
        best = any(region.mount == record.advised for region in regions)
        colours.append((GREEN if best else AMBER if regions else GREY) + (0.0,))
    obj = doc.addObject("Mesh::Feature", "Bottom")
    obj.Label = "Bottom"
    obj.Mesh = mesh
    obj.addProperty("App::PropertyColorList", "VertexColors")
    obj.VertexColors = colours
    made.addObject(obj)


def _grid(face, along=140, across=22):
    """Points of a face at even parameters, a little below the skin so that they are seen, and triangles between those on it."""
    u1, u2, v1, v2 = face.ParameterRange
    down = FreeCAD.Vector(0, 0, -SEEN / 2)
    vertices = [face.valueAt(u1 + (u2 - u1) * i / along, v1 + (v2 - v1) * k / across) + down
                for i in range(along + 1) for k in range(across + 1)]
    triangles = []
    for i in range(along):
        for k in range(across):
            a = i * (across + 1) + k
            b, c, d = a + 1, a + across + 1, a + across + 2
            triangles += [(a, b, c), (b, d, c)]
    return vertices, [_outward(vertices, triangle) for triangle in triangles]


def _outward(vertices, triangle):
    """Seen from below against the clock, as light and shade want it."""
    a, b, c = (vertices[corner] for corner in triangle)
    return triangle if (b - a).cross(c - a).z < 0 else triangle[::-1]


def check_place(doc, x, y):
    """Every check of every mount of the job at a place, in millimetres; changes nothing."""
    boat = boat_of(doc, job=True)
    answer = (yield ["site", boat.File, "--at", objects.place(x, y), "--csv"]).require(0, 4)
    return files.rows(answer.text())


def refresh(doc):
    """Hull and parts worked out again from job and table as they stand now; returns how many parts."""
    boat = boat_of(doc)
    table, exact, surface = yield from _read(boat.File)
    answers = []
    for part in of_kind(doc, objects.Fitted):
        objects.require(part, "Boat")
        answers.append((part, (yield objects.cut_words(part)).require()))
    with step(doc, "Read the files again"):
        boat.Table, boat.Exact = table, exact
        for hull in of_kind(doc, objects.Hull):
            objects.Hull.take(hull, surface)
        for part, answer in answers:
            objects.Fitted.take(part, answer)
    return len(answers)
