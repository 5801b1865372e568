package org.garboard.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.cli.files.JobSource;
import org.garboard.cutout.made.PartsMade;
import org.garboard.decision.Decision;
import org.garboard.drawing.sheets.DrawnSet;
import org.garboard.drawing.sheets.NamedDrawing;
import org.garboard.drawing.sheets.Provenance;
import org.garboard.drawing.sheets.SheetSet;
import org.garboard.exchange.TablePlace;
import org.garboard.hull.Hull;
import org.garboard.job.DrawingWish;
import org.garboard.job.DrawingWish.Orientation;
import org.garboard.job.DrawingWish.Paper;
import org.garboard.job.DrawingWish.Projection;
import org.garboard.job.DrawingWish.Units;
import org.garboard.job.Issue;
import org.garboard.job.Job;
import org.garboard.job.SitingRecord;
import org.garboard.marking.MarkedLength;
import org.garboard.marking.MarkingOut;
import org.garboard.marking.MarkingPlan;
import org.garboard.mount.water.BottomWater;
import org.garboard.mount.water.RunningWater;
import org.garboard.offsets.HullOffsets;
import org.garboard.reader.OutsideReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every sheet of every demo boat, on papers large and small, upright and level: all of it is drawn and can be read. */
class DemoSheetsTest {
    private static final Path DEMO = Path.of("src/main/demo");
    /** The smallest both ways, of the others one. */
    private static final List<String> LYING = List.of("A4 LANDSCAPE", "A4 PORTRAIT", "A3 LANDSCAPE", "A2 PORTRAIT", "A1 LANDSCAPE",
        "ANSI_A LANDSCAPE", "ANSI_A PORTRAIT", "ANSI_B PORTRAIT", "ANSI_C LANDSCAPE", "ANSI_D PORTRAIT");
    private static final List<String> BOATS = List.of("outboard-22", "outboard-39", "stepped-38", "inboard-58", "displacement-30");
    private static final List<Issue> ISSUES = List.of(new Issue("A", "2026-02-01", "Loft", "First issue"),
        new Issue("B", "2026-03-14", "Loft", "Place moved 120 mm aft, clear of the weld that the surveyor found; template and cut files drawn anew"));
    private static final Provenance PROVENANCE = new Provenance("Garboard test",
        "9f86d081884c7d659a2feaa0c55ad015a3bf4f1b2b0b822cd15d6c15b0f00a08");

    private static final Map<String, Demo> DEMOS = new TreeMap<>();

    /** A demo boat and what was decided for her. */
    private record Demo(HullOffsets table, Hull hull, SitingRecord decided, PartsMade made, BottomWater water) {
        static Demo of(String boat) throws Exception {
            if (!DEMOS.containsKey(boat)) {
                JobSource source = JobSource.read(DEMO.resolve(boat).resolve("job.xml"), TablePlace.BELOW_JOB);
                Hull hull = source.table().hull(source.job().fit());
                RunningWater running = source.running(hull);
                SitingRecord decided = Decision.of(hull, running, source.jobs(), source.features(hull)).get(0);
                DEMOS.put(boat, new Demo(source.table().table(), hull, decided, PartsAtSite.of(hull, decided, running).made(),
                    running.over(decided.features().laid())));
            }
            return DEMOS.get(boat);
        }

        DrawnSet set(SitingRecord record) {
            return SheetSet.draw(record, table, hull, PROVENANCE, made, water);
        }
    }

    /** How a set is asked for. */
    private record Asked(Paper paper, Orientation orientation, Units units, Projection projection) {
        /** Feet on ANSI sheets; upright in first angle. */
        static Asked usual(String lying) {
            Paper paper = Paper.valueOf(lying.split(" ")[0]);
            Orientation orientation = Orientation.valueOf(lying.split(" ")[1]);
            return new Asked(paper, orientation, paper.name().startsWith("ANSI") ? Units.FEET_INCHES_EIGHTHS : Units.MILLIMETRES,
                orientation == Orientation.PORTRAIT ? Projection.FIRST_ANGLE : Projection.THIRD_ANGLE);
        }

        static List<Asked> every() {
            List<Asked> all = new ArrayList<>();
            for (Paper paper : Paper.values()) {
                for (Orientation orientation : Orientation.values()) {
                    for (Units units : Units.values()) {
                        for (Projection projection : Projection.values()) {
                            all.add(new Asked(paper, orientation, units, projection));
                        }
                    }
                }
            }
            return all;
        }
    }

    /** Ten ways in every build, all 64 with {@code -Dsheets.everyPaper=true}. */
    @ParameterizedTest
    @ValueSource(strings = {"outboard-22", "outboard-39", "stepped-38", "inboard-58", "displacement-30"})
    void law_everySheetCanBeRead(String boat) throws Exception {
        Demo demo = Demo.of(boat);
        List<String> faults = new ArrayList<>();
        for (Asked asked : Boolean.getBoolean("sheets.everyPaper") ? Asked.every() : LYING.stream().map(Asked::usual).toList()) {
            DrawnSet set = demo.set(drawnAs(demo.decided(), asked));
            String where = boat + ", " + asked + ", ";
            set.refusals().forEach(refusal -> faults.add(where + refusal.message()));
            List<NamedDrawing> sheets = set.drawings().stream().filter(drawing -> drawing.fileName().endsWith(".svg")).toList();
            assertTrue(sheets.size() >= 3, where);
            sheets.forEach(sheet -> SvgLegibility.faults(sheet.content()).forEach(fault -> faults.add(where + sheet.fileName() + ": " + fault)));
        }
        assertEquals("", String.join("\n", faults));
    }

    /** All five sets as their jobs want them: FreeCAD, LibreCAD, a mill's program and a checker of SVG. */
    @Test
    void exact_otherProgramsReadEveryFile(@TempDir Path folder) throws Exception {
        List<Path> sheets = new ArrayList<>();
        List<Path> pictures = new ArrayList<>();
        List<SvgDrawing> drawn = new ArrayList<>();
        List<Integer> scales = new ArrayList<>();
        List<Path> cutFiles = new ArrayList<>();
        List<String> contours = new ArrayList<>();
        for (String boat : BOATS) {
            Demo demo = Demo.of(boat);
            List<NamedDrawing> set = demo.set(demo.decided()).drawings();
            for (NamedDrawing drawing : set) {
                Path file = Files.write(folder.resolve(boat + "-" + drawing.fileName()), drawing.content());
                if (drawing.fileName().matches("sheet-.*\\.dxf")) {
                    sheets.add(file);
                } else if (drawing.fileName().endsWith(".svg")) {
                    pictures.add(file);
                    drawn.add(SvgDrawing.of(drawing.content()));
                    String words = new String(drawing.content(), StandardCharsets.UTF_8);
                    scales.add(words.contains("Scale 1:") ? Integer.parseInt(words.replaceAll("(?s).*?Scale 1:(\\d+) on.*", "$1")) : 1);
                }
            }
            cutFiles.addAll(CutContours.written(folder, boat, demo.decided(), demo.made(), set, contours));
        }
        OtherPrograms others = new OtherPrograms(folder);
        assertLengths(others.lengths(sheets), sheets, drawn, scales);
        for (int i = 0; i < sheets.size(); i++) {
            BufferedImage page = others.picture(sheets.get(i));
            assertEquals(List.of(), new InkOnPage(page, drawn.get(i)).lacking(), sheets.get(i).toString());
        }
        CutContours.assertSame(contours, others.contours(cutFiles));
        OutsideReader.VNU.require();
        List<String> asked = new ArrayList<>(List.of("--svg", "--errors-only"));
        pictures.forEach(picture -> asked.add(picture.toString()));
        assertEquals(new OutsideReader.Answer(0, ""), OutsideReader.VNU.run(asked));
    }

    /** What a CAD program makes of the layers of outlines is as long as what is drawn, within a ten thousandth. */
    private static void assertLengths(Map<String, Map<String, Double>> found, List<Path> sheets, List<SvgDrawing> drawn, List<Integer> scales) {
        for (int i = 0; i < sheets.size(); i++) {
            String name = sheets.get(i).getFileName().toString();
            for (String layer : List.of("HULL", "CUT", "POCKET", "BORDER", "GRID")) {
                double expected = drawn.get(i).length(layer) * scales.get(i);
                assertEquals(expected, found.get(name).getOrDefault(layer, 0.0), 1e-4 * expected, name + ", " + layer);
            }
        }
    }

    /**
     * A length from the heel to a point of the rabbet is the same as she stood blocked, tilted in both ways: there it follows
     * from the numbers that were read, 2 m forward and 704 mm above the heel, as far to starboard within 2 mm.
     */
    @Test
    void exact_takenOffBoatIsMarkedFromHerHeel() throws Exception {
        JobSource source = JobSource.read(DEMO.resolve("displacement-30").resolve("job.xml"), TablePlace.BELOW_JOB);
        Hull hull = source.table().hull(source.job().fit());
        MarkingOut plan = MarkingPlan.of(hull, source.table().table(), Vector3D.of(-2.0 - 0.704 * Math.sin(Math.toRadians(0.85)), 0.29, 0.8), 0.1);
        assertEquals(MarkingOut.Datum.HEEL, plan.datum());
        MarkedLength first = plan.lengths().get(0);
        assertEquals(List.of("A", "B"), List.of(first.from().letter(), first.to().letter()));
        assertEquals(Math.hypot(2.0, 0.704), first.metres(), 0.004);
    }

    private static SitingRecord drawnAs(SitingRecord decided, Asked asked) {
        Job job = decided.job();
        DrawingWish wish = job.drawing();
        DrawingWish other = new DrawingWish(asked.units(), asked.paper(), asked.orientation(), asked.projection(), wish.number(), wish.owner(), wish.creator(),
            wish.approver(), wish.date(), wish.revision(), asked.orientation() == Orientation.LANDSCAPE ? List.of() : ISSUES);
        return new SitingRecord(new Job(job.boat(), job.hullNumber(), job.tableFile(), job.fit(), job.draught(), job.transducer(), job.mounts(),
            job.features(), job.pocket(), other, job.particulars()), decided.features(), decided.sitings(), decided.advised(),
            decided.pocket(), decided.refusal());
    }
}
