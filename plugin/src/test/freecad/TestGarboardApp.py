"""Garboard in FreeCAD without a window, by FreeCAD's own test framework: `freecadcmd -t TestGarboardApp -M <add-on> -M <this folder>`.

GARBOARD_DEMO names the demo folder. Every command is run on a demo job, and what the kernel holds is measured against the core.
"""
import os
import shutil
import tempfile
import time
import unittest

import FreeCAD
import Part
from FreeCAD import Vector

import kernel_pocket
from garboard_wb import core, document, files, fitting, java, objects, operations, shapes

DEMO = os.environ["GARBOARD_DEMO"]
BOATS = ("outboard-22", "stepped-38", "outboard-39", "inboard-58", "displacement-30")
MM = 1000.0


def core_time():
    """Processor time of the core so far [s]; 0 where the system does not tell."""
    try:
        with open("/proc/%d/stat" % core.session().process_id(), encoding="ascii") as file:
            told = file.read().rsplit(")", 1)[1].split()
        return (int(told[11]) + int(told[12])) / os.sysconf("SC_CLK_TCK")
    except OSError:
        return 0


def job(boat):
    return os.path.join(DEMO, boat, "job.xml")


class Document(unittest.TestCase):
    """A document and a folder of its own for each test."""

    def setUp(self):
        self.doc = FreeCAD.newDocument("Test")
        self.folder = tempfile.mkdtemp()

    def tearDown(self):
        for name in list(FreeCAD.listDocuments()):
            FreeCAD.closeDocument(name)
        shutil.rmtree(self.folder)

    def opened(self, boat="outboard-22"):
        core.run(operations.open_boat(self.doc, job(boat)))
        return self.doc

    def refused(self, steps, kind=core.CoreFault):
        """The words of a refusal, which must leave the document as it was."""
        before = [obj.Name for obj in self.doc.Objects]
        with self.assertRaises(kind) as caught:
            core.run(steps)
        self.assertEqual(before, [obj.Name for obj in self.doc.Objects])
        return str(caught.exception)


class HullFaces(Document):

    def test_faces_hold_the_points_of_the_core(self):
        """Places of the bottom all over each demo boat: the core's height stands on one of the kernel's faces, to 0.001 mm."""
        for boat in BOATS:
            with self.subTest(boat):
                self.doc = FreeCAD.newDocument()
                self.opened(boat)
                hull = document.hull_of(self.doc)
                self.assertTrue(hull.Shape.isValid())
                box = hull.Shape.BoundBox
                places = [(box.XMin + box.XLength * i / 12.0, box.YMax * k / 9.0) for i in range(1, 12) for k in range(-8, 9)]
                told = files.rows(core.ask(["probe", document.boat_of(self.doc).Table, "--at"] + [objects.place(*at) for at in places]).text())
                told = [Vector(*(float(row[c]) * MM for c in ("x_m", "y_m", "z_m"))) for row in told if row["z_m"]]
                self.assertGreater(len(told), 60)
                for point in told:
                    # a place at a micrometre is printed to half of one
                    self.assertLess(hull.Shape.distToShape(Part.Vertex(point))[0], 0.001, (boat, point))

    def test_faces_are_the_splines_that_were_told(self):
        self.opened()
        with tempfile.TemporaryDirectory() as folder:
            target = os.path.join(folder, "surface.xml")
            core.ask(["lines", document.boat_of(self.doc).Table, "--surface", target]).require()
            with open(target, encoding="utf-8") as file:
                surface = files.Surface(file.read())
        faces = document.hull_of(self.doc).Shape.Faces
        self.assertEqual(2 * len(surface.panels), len(faces))
        for panel, face in zip(surface.panels, faces):
            held = [[(p.x, p.y, p.z) for p in row] for row in face.Surface.getPoles()]
            self.assertEqual([[(p.x, p.y, p.z) for p in row] for row in panel.poles], held)

    def test_a_cut_panel_ends_at_its_edge(self):
        """The stepped boat's after length is drawn on past step and transom: no face of it reaches ahead of the step."""
        self.opened("stepped-38")
        hull = document.hull_of(self.doc)
        after = hull.Shape.Faces[4]
        for x, on in ((9250, False), (9350, True), (11500, True), (11650, False)):
            self.assertEqual(on, after.isInside(Vector(x, 0, after.Surface.value(x / MM, 0).z), 1e-3, True), x)
        self.assertTrue(after.isInside(after.Surface.value(9.05, 0.9), 1e-3, True))


class Pockets(Document):

    def pocket(self, boat, x, **wishes):
        self.opened(boat)
        return core.run(fitting.place_part(self.doc, objects.POCKET, x, 0, **wishes))

    def sound(self, part):
        """Closed, and by the mesh's own triangles of the volume that is told."""
        self.assertTrue(part.Mesh.isSolid())
        self.assertFalse(part.Mesh.hasSelfIntersections())
        self.assertLess(abs(part.Mesh.Volume / 1e6 / part.Litres - 1), 0.001, (part.Mesh.Volume / 1e6, part.Litres))

    def test_is_sound_and_of_the_volume_that_the_core_tells(self):
        for boat, x, wishes in (("outboard-22", 5000, {}), ("outboard-22", 5000, {"ramp": 0.0, "depth": 60}), ("outboard-22", 4500, {"ramp": 4.0, "depth": 60}),
                                ("outboard-39", 8000, {}), ("outboard-39", 9000, {"ramp": 8.0})):
            with self.subTest((boat, wishes)):
                self.doc = FreeCAD.newDocument()
                self.sound(self.pocket(boat, x, **wishes))

    def test_the_kernel_takes_out_of_its_own_skin_what_the_core_tells(self):
        """What the opening has in common with the hull's exact faces, less the plug, is the pocket."""
        part = self.pocket("outboard-22", 5000)
        cut = kernel_pocket.PocketCut(files.Part(part.Told))
        whole = kernel_pocket.closed_hull(document.hull_of(self.doc).Shape)
        plug = cut.plug()
        self.assertTrue(plug.isValid() and plug.isClosed())
        litres = (whole.common(cut.opening()).Volume - plug.Volume) / 1e6
        self.assertLess(abs(litres / part.Litres - 1), 0.001, (litres, part.Litres))

    def test_a_changed_depth_is_worked_out_again(self):
        part = self.pocket("outboard-22", 5000, depth=50)
        figures = []
        for depth in (52, 54, 56, 58, 60):
            before = part.Litres
            part.Depth = depth
            begun, worked = time.time(), time.process_time() + core_time()
            self.doc.recompute()
            figures.append("%.3f (%.2f)" % (time.time() - begun, time.process_time() + core_time() - worked))
            self.assertGreater(part.Litres, before)
        FreeCAD.Console.PrintMessage("pocket recomputed in %s s, of the processor in brackets\n" % ", ".join(figures))
        self.sound(part)
        part.X = 4800
        part.Ramp = 5
        self.doc.recompute()
        self.sound(part)

    def test_what_cannot_be_built_is_told_and_the_shape_stays(self):
        part = self.pocket("outboard-22", 5000, depth=50)
        volume = part.Mesh.Volume
        part.Depth = 20
        self.doc.recompute()
        self.assertFalse(part.isValid())
        self.assertIn("keel pocket cannot be built: at a depth of 20.0 mm the face stands", part.getStatusString())
        self.assertEqual(volume, part.Mesh.Volume)
        part.Depth = 50
        self.doc.recompute()
        self.assertTrue(part.isValid())

    def test_parts_of_through_hulls_are_solids_of_the_core_volume(self):
        for mount, boat in ((objects.FLUSH, "outboard-22"), (objects.BLOCK, "outboard-39"), ("in-hull", "outboard-22")):
            self.doc = FreeCAD.newDocument()
            self.opened(boat)
            part = core.run(fitting.place_part(self.doc, mount, 5000, 350))
            self.assertGreater(len(part.Parts), 1)
            self.assertTrue(part.Mesh.isSolid(), mount)
            for solid in files.Part(part.Told).solids:
                mesh = shapes.mesh(solid)
                self.assertTrue(mesh.isSolid(), solid.name)
                self.assertAlmostEqual(solid.litres, mesh.Volume / 1e6, delta=1e-3 * solid.litres, msg=solid.name)
            self.assertAlmostEqual(part.Litres, part.Mesh.Volume / 1e6, delta=1e-3 * part.Litres)

    def cut_skin(self, part):
        """One valid body, its faces on the kernel's own skin and as far inside it as the job tells, and made at once."""
        begun = time.time()
        cut = fitting.cut_hull(self.doc)
        FreeCAD.Console.PrintMessage("skin cut in %.3f s, %d triangles\n" % (time.time() - begun, cut.Mesh.CountFacets))
        self.sound(cut)
        self.assertEqual(1, len(cut.Mesh.getSeparateComponents()))
        skin = document.hull_of(self.doc).Shape
        away = [skin.distToShape(Part.Vertex(point.Vector))[0] for point in cut.Mesh.Points[::max(1, len(cut.Mesh.Points) // 150)]]
        for each in away:
            self.assertLess(min(each, abs(each - 11)), 0.1)
        self.assertGreater(sum(each > 10 for each in away), 20)
        self.assertGreater(sum(each < 1 for each in away), 20)
        return cut

    def test_the_skin_round_a_pocket_is_cut_through(self):
        """One body with a hole; the files read back."""
        part = self.pocket("outboard-22", 5000)
        cut = self.cut_skin(part)
        self.assertFalse(cut.Mesh.foraminate((5000, 0, 0), (0, 0, 1)))
        beside = cut.Mesh.BoundBox
        self.assertTrue(cut.Mesh.foraminate((beside.XMin + 20, 30, 0), (0, 0, 1)))
        step = core.run(fitting.export(cut, os.path.join(self.folder, "cut.step")))
        read = Part.Shape()
        read.read(step)
        self.assertTrue(read.isValid())
        self.assertEqual([True], [solid.Shells[0].isClosed() for solid in read.Solids])
        # a mesh sums in single precision
        self.assertAlmostEqual(1, read.Volume / cut.Mesh.Volume, delta=1e-5)
        import Mesh
        mesh = Mesh.Mesh(core.run(fitting.export(cut, os.path.join(self.folder, "cut.stl"))))
        self.assertTrue(mesh.isSolid())
        self.assertAlmostEqual(1, mesh.Volume / cut.Mesh.Volume, delta=1e-5)
        for path, words in (("cut.obj", "name a file that ends in"), ("no folder/cut.step", "cannot be written")):
            with self.assertRaises(document.Refused) as caught:
                core.run(fitting.export(cut, os.path.join(self.folder, path)))
            self.assertIn(words, str(caught.exception))

    def test_one_of_several_transducers_is_placed(self):
        """The first unless another is named; opening asks nothing that a job of several would be refused for."""
        path = os.path.join(shutil.copytree(os.path.join(DEMO, "outboard-22"), os.path.join(self.folder, "boat")), "job.xml")
        with open(path, encoding="utf-8") as file:
            text = file.read()
        begin, end = text.index("<transducer "), text.index("</transducer>") + len("</transducer>")
        second = text[begin:end].replace('name="', 'name="Second ', 1)
        at = text.index("<drawing")
        with open(path, "w", encoding="utf-8") as file:
            file.write(text[:at] + "<further-transducers><further>%s<mounts><flush-through-hull/></mounts></further></further-transducers>\n  " % second + text[at:])
        core.run(operations.open_boat(self.doc, path))
        names = files.transducers(path)
        self.assertEqual(2, len(names))
        self.assertEqual(names[0], core.run(fitting.place_part(self.doc, objects.FLUSH, 5000, 350)).Transducer)
        self.assertEqual(names[1], core.run(fitting.place_part(self.doc, objects.FLUSH, 5000, -350, transducer=names[1])).Transducer)
        self.assertIn("did you mean", self.refused(fitting.place_part(self.doc, objects.FLUSH, 5000, 350, transducer=names[1] + "x")))

    def test_the_skin_under_a_through_hull_is_cut_through(self):
        self.opened()
        self.cut_skin(core.run(fitting.place_part(self.doc, objects.FLUSH, 5000, 350)))

    def test_a_skin_that_is_not_told_is_not_guessed(self):
        shutil.copytree(os.path.join(DEMO, "outboard-22"), os.path.join(self.folder, "untold"))
        path = os.path.join(self.folder, "untold", "job.xml")
        with open(path, encoding="utf-8") as file:
            text = file.read()
        with open(path, "w", encoding="utf-8") as file:
            file.write(text[:text.index("<skin ")] + text[text.index("</skin>") + len("</skin>"):])
        core.run(operations.open_boat(self.doc, path))
        core.run(fitting.place_part(self.doc, objects.POCKET, 5000, 0))
        with self.assertRaises(document.Refused) as caught:
            fitting.cut_hull(self.doc)
        self.assertIn("its thickness here is not told; what works: tell it as skin in the job", str(caught.exception))


class Commands(Document):

    def test_lines_stand_on_the_skin(self):
        self.opened()
        core.run(operations.show_lines(self.doc, (1000, 300, 300)))
        skin = document.hull_of(self.doc).Shape
        for name in ("Sections", "Buttocks", "Waterlines"):
            members = self.doc.getObject(name).Group
            self.assertGreater(len(members), 1, name)
            for line in members:
                self.assertLess(max(skin.distToShape(vertex)[0] for vertex in line.Shape.Vertexes[::9]), 0.01, line.Label)

    def test_attitude_shows_water_and_flow(self):
        self.opened()
        rows, said = core.run(operations.show_attitude(self.doc))
        self.assertEqual({"drift", "troll", "cruise", "top"}, {row["speed"] for row in rows})
        labels = [obj.Label for obj in self.doc.getObject("Attitude").Group]
        for words in ("Water at 1.00 kn", "Streamlines at 24.00 kn", "Stagnation lines at 28.00 kn", "Boundary layer at 5.00 kn"):
            self.assertIn(words, labels)
        draught = [float(row["draught_m"]) for row in rows if row["speed"] == "drift" and row["load"] == "middle"][0]
        water = self.doc.getObjectsByLabel("Water at 1.00 kn")[0].Shape
        self.assertTrue(0 < draught * MM < water.BoundBox.ZMax + 100)

    def test_sites_carry_every_check(self):
        self.opened()
        record = core.run(operations.find_sites(self.doc))
        self.assertTrue(record.answer.startswith("Advised: flush through-hull"), record.answer)
        places = document.of_kind(self.doc, objects.Places)[0]
        self.assertEqual(len(record.sites), len(places.Shape.Vertexes))
        skin = document.hull_of(self.doc).Shape
        for site in record.sites:
            self.assertLess(skin.distToShape(Part.Vertex(site.point))[0], 0.002)
            rows = core.run(operations.check_place(self.doc, site.point.x, site.point.y))
            self.assertEqual([check.name for check in site.checks], [row["check"] for row in rows if row["mount"].replace(" ", "-") == site.mount])
        bottom = self.doc.getObject("Bottom")
        self.assertEqual(len(bottom.Mesh.Points), len(bottom.VertexColors))
        self.assertGreater(len(set(bottom.VertexColors)), 1)

    def test_sheets_are_the_files_of_a_run(self):
        self.opened()
        target = os.path.join(self.folder, "drawings")
        sheets = core.run(fitting.make_sheets(self.doc, target))
        self.assertIn("record.xml", sheets.Files)
        self.assertIn("sheet-1-siting.svg", sheets.Files)
        self.assertTrue(sheets.Words[0].startswith("Advised: "), sheets.Words)

    def test_sheets_of_a_part_are_drawn_where_it_is_placed(self):
        self.opened()
        part = core.run(fitting.place_part(self.doc, objects.POCKET, 5000, 0, depth=60))
        sheets = core.run(fitting.make_sheets(self.doc, os.path.join(self.folder, "drawings"), part))
        self.assertIn("Given by the yard, not advised: keel pocket", sheets.Words[0])
        self.assertIn("NOT MET there: lean of the element", sheets.Words[2])
        with open(os.path.join(sheets.Folder, "record.xml"), encoding="utf-8") as file:
            record = files.Record(file.read())
        self.assertEqual((5000, 0), (record.sites[0].point.x, record.sites[0].point.y))
        part.X = 20000
        self.assertIn("keel pocket cannot be built", self.refused(fitting.make_sheets(self.doc, sheets.Folder, part)))

    def test_each_is_one_step_of_undo(self):
        self.doc.UndoMode = 1
        self.opened()
        opened = [obj.Name for obj in self.doc.Objects]
        core.run(operations.show_lines(self.doc, (2000, 500, 500)))
        core.run(fitting.place_part(self.doc, objects.POCKET, 5000, 0))
        self.assertEqual(3, self.doc.UndoCount)
        self.doc.undo()
        self.doc.undo()
        self.assertEqual(opened, [obj.Name for obj in self.doc.Objects])
        self.doc.undo()
        self.assertEqual([], self.doc.Objects)


class Kept(Document):

    def test_saved_opened_and_worked_out_without_a_core(self):
        self.opened()
        part = core.run(fitting.place_part(self.doc, objects.POCKET, 5000, 0))
        volumes = part.Mesh.Volume, fitting.cut_hull(self.doc).Mesh.Volume
        area = document.hull_of(self.doc).Shape.Area
        path = os.path.join(self.folder, "boat.FCStd")
        self.doc.saveAs(path)
        FreeCAD.closeDocument(self.doc.Name)
        core.session().close()
        home = os.environ.get("GARBOARD_HOME")
        os.environ["GARBOARD_HOME"] = self.folder
        try:
            self.doc = FreeCAD.openDocument(path)
            for obj in self.doc.Objects:
                obj.touch()
            self.doc.recompute()
            self.assertTrue(all(obj.isValid() for obj in self.doc.Objects), [obj.getStatusString() for obj in self.doc.Objects])
            part = document.of_kind(self.doc, objects.Fitted)[0]
            self.assertAlmostEqual(volumes[0], part.Mesh.Volume, delta=1e-6 * volumes[0])
            self.assertAlmostEqual(volumes[1], document.of_kind(self.doc, objects.Cut)[0].Mesh.Volume, delta=1e-6 * volumes[1])
            self.assertAlmostEqual(area, document.hull_of(self.doc).Shape.Area, delta=1e-9 * area)
            part.Depth = 70
            self.doc.recompute()
            self.assertIn("The core of Garboard is not in", part.getStatusString())
            self.assertAlmostEqual(volumes[0], part.Mesh.Volume, delta=1e-6 * volumes[0])
        finally:
            del os.environ["GARBOARD_HOME"]
            if home:
                os.environ["GARBOARD_HOME"] = home
        part.touch()
        self.doc.recompute()
        self.assertTrue(part.isValid())
        self.assertGreater(part.Mesh.Volume, volumes[0])


class BadInput(Document):

    def copied(self, boat="outboard-22"):
        target = os.path.join(self.folder, boat)
        shutil.copytree(os.path.join(DEMO, boat), target)
        return os.path.join(target, "job.xml")

    def test_wrong_kinds_of_file(self):
        for name, kind, words in (("boat.txt", document.Refused, "is neither a job (.xml) nor a table of offsets"),
                                  ("none.xml", core.CoreFault, "there is no such file"), ("none.csv", core.CoreFault, "there is no such file")):
            self.assertIn(words, self.refused(operations.open_boat(self.doc, os.path.join(self.folder, name)), kind))
        wrong = os.path.join(self.folder, "wrong.xml")
        with open(wrong, "w", encoding="ascii") as file:
            file.write("<svg/>")
        self.assertIn("wrong.xml:1:1", self.refused(operations.open_boat(self.doc, wrong)))
        shutil.copy(wrong, wrong[:-3] + "csv")
        self.assertIn("wrong.csv", self.refused(operations.open_boat(self.doc, wrong[:-3] + "csv")))

    def test_a_job_whose_table_moved(self):
        path = self.copied()
        core.run(operations.open_boat(self.doc, path))
        hull = document.hull_of(self.doc)
        area = hull.Shape.Area
        os.rename(os.path.join(os.path.dirname(path), "offsets.csv"), os.path.join(self.folder, "offsets.csv"))
        self.assertIn("the table file offsets.csv is not there", self.refused(fitting.place_part(self.doc, objects.POCKET, 5000, 0)))
        with self.assertRaises(core.CoreFault) as caught:
            core.run(operations.refresh(self.doc))
        self.assertIn("the table file offsets.csv is not there", str(caught.exception))
        self.assertEqual(area, document.hull_of(self.doc).Shape.Area)

    def test_files_that_changed_are_read_again(self):
        path = self.copied()
        core.run(operations.open_boat(self.doc, path))
        part = core.run(fitting.place_part(self.doc, objects.POCKET, 5000, 0))
        before = part.Litres
        with open(path, encoding="utf-8") as file:
            text = file.read()
        with open(path, "w", encoding="utf-8") as file:
            file.write(text.replace("<ramp-ratio>8<", "<ramp-ratio>4<"))
        self.doc.recompute()
        self.assertEqual(before, part.Litres)
        core.run(operations.refresh(self.doc))
        self.assertLess(part.Litres, before)
        self.assertLess(abs(part.Mesh.Volume / 1e6 / part.Litres - 1), 0.001)

    def test_a_document_edited_by_hand(self):
        self.assertIn("No boat is open", self.refused(operations.find_sites(self.doc), document.Refused))
        self.opened()
        part = core.run(fitting.place_part(self.doc, objects.POCKET, 5000, 0))
        part.Boat = None
        part.Depth = 55
        self.doc.recompute()
        self.assertFalse(part.isValid())
        self.assertIn("Boat is not set", part.getStatusString())
        self.doc.removeObject(document.hull_of(self.doc).Name)
        self.assertIn("The hull is not shown", self.refused(operations.show_lines(self.doc), document.Refused))

    def test_what_an_object_keeps_is_edited_by_hand(self):
        self.doc.UndoMode = 1
        self.opened()
        part = core.run(fitting.place_part(self.doc, objects.POCKET, 5000, 0))
        told, volume = part.Told, part.Mesh.Volume
        part.Told = "<part"
        with self.assertRaises((core.CoreFault, files.Unreadable)) as caught:
            fitting.cut_hull(self.doc)
        self.assertIn("what is kept in the document is not what Garboard wrote there", str(caught.exception))
        self.assertEqual([], document.of_kind(self.doc, objects.Cut))
        core.run(operations.refresh(self.doc))
        self.assertEqual((told, volume), (part.Told, part.Mesh.Volume))
        boat = document.boat_of(self.doc)
        boat.File = ""
        self.assertIn("File of outboard-22 is empty; set it", self.refused(operations.find_sites(self.doc), document.Refused))

    def test_a_table_alone_has_no_transducer(self):
        core.run(operations.open_boat(self.doc, os.path.join(DEMO, "outboard-22", "offsets.csv")))
        self.assertIn("is a table of offsets alone", self.refused(operations.find_sites(self.doc), document.Refused))

    def test_a_core_that_dies_is_begun_once_more(self):
        import signal
        self.opened()
        os.kill(core.session().process_id(), signal.SIGKILL)
        part = core.run(fitting.place_part(self.doc, objects.POCKET, 5000, 0))
        self.assertTrue(part.isValid())

    def test_no_java(self):
        saved = dict(os.environ)
        try:
            os.environ["JAVA_HOME"] = self.folder
            with self.assertRaises(java.NoCore) as caught:
                java.session()
            self.assertIn("Java was not found: JAVA_HOME is %s, but no program is there. Install a Java runtime" % self.folder, str(caught.exception))
            os.makedirs(os.path.join(self.folder, "bin"))
            program = os.path.join(self.folder, "bin", "java")
            with open(program, "w", encoding="ascii") as file:
                file.write("#!/bin/sh\necho 'openjdk version \"11.0.2\"' >&2\n")
            os.chmod(program, 0o755)
            with self.assertRaises(java.NoCore) as caught:
                java.session()
            self.assertIn("is Java 11.0.2; Garboard needs 17 or newer.", str(caught.exception))
        finally:
            os.environ.clear()
            os.environ.update(saved)
