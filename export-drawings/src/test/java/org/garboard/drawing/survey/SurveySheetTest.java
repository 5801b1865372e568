package org.garboard.drawing.survey;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.garboard.craft.BottomFeatures;
import org.garboard.craft.LaidFeature;
import org.garboard.craft.Sides;
import org.garboard.drawing.Circle;
import org.garboard.drawing.DrawnFiles;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Flattened;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Leader;
import org.garboard.drawing.Line;
import org.garboard.drawing.Point;
import org.garboard.drawing.Scale;
import org.garboard.drawing.Sheet;
import org.garboard.drawing.SheetClearance;
import org.garboard.drawing.Text;
import org.garboard.drawing.View;
import org.garboard.drawing.lines.LinesBoats;
import org.garboard.drawing.pdf.SheetPdf;
import org.garboard.drawing.sheets.Provenance;
import org.garboard.drawing.sheets.SheetFormat;
import org.garboard.drawing.sheets.SheetSubject;
import org.garboard.geometry.Quad;
import org.garboard.hull.Hull;
import org.garboard.job.DrawingWish;
import org.garboard.job.DrawingWish.Orientation;
import org.garboard.job.DrawingWish.Paper;
import org.garboard.job.DrawingWish.Projection;
import org.garboard.job.DrawingWish.Units;
import org.garboard.job.Issue;
import org.garboard.job.RecordedSet;
import org.garboard.offsets.OffsetTable;
import org.garboard.reader.OutsideReader;
import org.garboard.survey.HullSurvey;
import org.garboard.survey.SurveyFinding;
import org.garboard.survey.SurveyPlace;
import org.garboard.survey.SurveyPlace.Side;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class SurveySheetTest {
    private static final String HASH = "9f86d081884c7d659a2feaa0c55ad015a3bf4f1b2b0b822cd15d6c15b0f00a08";
    private static final OffsetTable TABLE = LinesBoats.chine();
    private static final Hull HULL = Hull.through(TABLE);
    private static final BottomFeatures FEATURES = new BottomFeatures(
        List.of(new LaidFeature("Intake", "intake", Sides.PORT, List.of(Quad.of(3, 0.2, 3.4, 0.2, 3.4, 0.4, 3, 0.4)), Optional.empty())), BottomFeatures.FeatureList.GIVEN);

    private static Annotated annotated(List<SurveyFinding> findings, Units units, Paper paper, Projection projection) {
        return annotated(findings, units, paper, Orientation.LANDSCAPE, projection);
    }

    private static Annotated annotated(List<SurveyFinding> findings, Units units, Paper paper, Orientation orientation, Projection projection) {
        RecordedSet set = new RecordedSet("1.0", "Boat", "7", "offsets.csv", HASH, 0.4, FEATURES,
            new DrawingWish(units, paper, orientation, projection, "N-1", "Owner", "Loft", "", "2026-03-14", "B",
                List.of(new Issue("A", "2026-02-01", "Loft", "First issue"), new Issue("B", "2026-03-14", "Loft", "Place moved aft, off the weld that was found there, and the set drawn anew"))),
            List.of(), List.of());
        HullSurvey survey = HullSurvey.lay(findings, HULL, TABLE, FEATURES.laid());
        assertEquals(List.of(), survey.faults());
        return new Annotated(set, TABLE, HULL, survey.findings(), "findings.csv", new Provenance("Garboard test", HASH));
    }

    private static SurveyFinding finding(String number, SurveyPlace.Along along, SurveyPlace.Out out, Side side) {
        return new SurveyFinding(number, new SurveyPlace(Optional.ofNullable(along), out, Optional.ofNullable(side)),
            "Blister, gelcoat lifted over a palm's breadth", "B: before launch", "Grind out, dry, fill and seal", "P-" + number, "2026-04-0" + (1 + number.length()));
    }

    /** Some on bottom and topsides of either side, some of them at a station, some on top of each other. */
    private static List<SurveyFinding> byLot(Random lot, int count) {
        List<SurveyFinding> findings = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double x = 0.4 + 5.5 * lot.nextDouble();
            double girth = 1.25 * HULL.girth(x, HULL.bottomEdge().y(x)) * Math.pow(lot.nextDouble(), lot.nextBoolean() ? 1 : 3);
            SurveyPlace.Along along = lot.nextInt(3) == 0 ? new SurveyPlace.AtStation(String.valueOf(1 + lot.nextInt(5))) : new SurveyPlace.AftOfOrigin(x);
            boolean again = i > 0 && lot.nextInt(12) == 0;
            findings.add(again ? finding(String.valueOf(i + 1), findings.get(i - 1).place().along().orElseThrow(), findings.get(i - 1).place().out(),
                findings.get(i - 1).place().side().orElseThrow())
                : finding(String.valueOf(i + 1), along, new SurveyPlace.Girth(Math.min(girth, 0.3 + 0.6 * lot.nextDouble())), lot.nextBoolean() ? Side.PORT : Side.STARBOARD));
        }
        return findings;
    }

    /** Fifty sets of 1 to 60 findings: read off what is drawn, not off what drew it. */
    @Test
    void law_noBalloonAndNoLeaderMeetsAnother() {
        Random lot = new Random(20260401);
        for (int set = 0; set < 50; set++) {
            int count = set == 0 ? 1 : set == 1 ? 60 : 1 + lot.nextInt(60);
            SurveyTask task = new SurveyTask(annotated(byLot(lot, count), Units.MILLIMETRES, set % 2 == 0 ? Paper.A2 : Paper.A4, Projection.FIRST_ANGLE));
            Scale scale = new Scale(set % 2 == 0 ? 15 : 25);
            int balloons = 0;
            List<View> views = new ArrayList<>(List.of(SurveyPlan.of(task, scale), SurveyProfile.of(task, scale)));
            SurveyBodyPlan.of(task, scale).ifPresent(views::add);
            for (View view : views) {
                List<Drawn> drawn = Drawn.in(view);
                balloons += view.name().startsWith("SECTIONS") ? 0 : drawn.size();
                for (int i = 0; i < drawn.size(); i++) {
                    for (int k = i + 1; k < drawn.size(); k++) {
                        assertEquals("", drawn.get(i).meets(drawn.get(k)), "set " + set + " of " + count + ", " + view.name());
                    }
                }
            }
            assertEquals(count, balloons);
        }
    }

    /** A balloon with its leader as three or more points, from the dot to the circle. */
    private record Drawn(String number, Circle circle, List<Point> leader) {

        static List<Drawn> in(View view) {
            List<Drawn> drawn = new ArrayList<>();
            List<Entity> entities = view.entities();
            for (int i = 1; i < entities.size(); i++) {
                if (entities.get(i) instanceof Text text && entities.get(i - 1) instanceof Circle circle && text.layer() == Layer.DIM) {
                    drawn.add(new Drawn(text.words(), circle, entities.get(i + 1) instanceof Leader leader ? leader.path()
                        : List.of(((Circle) entities.get(i + 1)).centre(), ((Line) entities.get(i + 2)).to(), ((Line) entities.get(i + 3)).to())));
                }
            }
            return drawn;
        }

        String meets(Drawn other) {
            if (circle.centre().distanceTo(other.circle.centre()) < circle.radius() + other.circle.radius() + 0.5) {
                return "balloons " + number + " and " + other.number;
            }
            boolean one = leader.get(0).distanceTo(other.leader.get(0)) < Leaders.ONE;
            for (int i = 1; i < leader.size(); i++) {
                if (from(other.circle.centre(), leader.get(i - 1), leader.get(i)) < circle.radius() + 0.3) {
                    return "leader " + number + " and balloon " + other.number;
                }
                if (!one && from(other.leader.get(0), leader.get(i - 1), leader.get(i)) < 0.6) {
                    return "leader " + number + " and dot " + other.number;
                }
                for (int k = 1; k < other.leader.size(); k++) {
                    if (cross(leader.get(i - 1), leader.get(i), other.leader.get(k - 1), other.leader.get(k))) {
                        return "leaders " + number + " and " + other.number;
                    }
                }
            }
            for (int k = 1; k < other.leader.size(); k++) {
                if (from(circle.centre(), other.leader.get(k - 1), other.leader.get(k)) < circle.radius() + 0.3) {
                    return "leader " + other.number + " and balloon " + number;
                }
                if (!one && from(leader.get(0), other.leader.get(k - 1), other.leader.get(k)) < 0.6) {
                    return "leader " + other.number + " and dot " + number;
                }
            }
            return "";
        }

        private static double from(Point p, Point a, Point b) {
            double way = a.distanceTo(b);
            double along = Math.max(0, Math.min(way, ((p.x() - a.x()) * (b.x() - a.x()) + (p.y() - a.y()) * (b.y() - a.y())) / way));
            return p.distanceTo(a.towards(a.directionTo(b), along));
        }

        /** Whether two stretches cross otherwise than at a common end. */
        private static boolean cross(Point a, Point b, Point c, Point d) {
            double cut = (b.x() - a.x()) * (d.y() - c.y()) - (b.y() - a.y()) * (d.x() - c.x());
            double s = ((c.x() - a.x()) * (d.y() - c.y()) - (c.y() - a.y()) * (d.x() - c.x())) / cut;
            double t = ((c.x() - a.x()) * (b.y() - a.y()) - (c.y() - a.y()) * (b.x() - a.x())) / cut;
            return Math.abs(cut) > 1e-9 && s > 1e-9 && s < 1 - 1e-9 && t > 1e-9 && t < 1 - 1e-9;
        }
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void law_nothingOverlapsAndEveryFindingStandsInTheScheduleOnce(Paper paper) {
        for (Orientation orientation : paper == Paper.A4 || paper == Paper.ANSI_A ? List.of(Orientation.values()) : List.of(Orientation.values()[paper.ordinal() % 2])) {
            assertReadable(paper, orientation);
        }
    }

    private static void assertReadable(Paper paper, Orientation orientation) {
        Random lot = new Random(paper.ordinal());
        Units units = paper.name().startsWith("ANSI") ? Units.FEET_INCHES_EIGHTHS : Units.MILLIMETRES;
        int count = 3 + 5 * paper.ordinal();
        List<Sheet> sheets = SurveyDrawing.of(annotated(byLot(lot, count), units, paper, orientation,
            paper.ordinal() % 2 == 0 ? Projection.FIRST_ANGLE : Projection.THIRD_ANGLE));
        List<String> photos = new ArrayList<>();
        for (Sheet sheet : sheets) {
            assertEquals(List.of(), SheetClearance.faults(sheet, SheetSubject.paper(paper, orientation).frame()), paper + " " + orientation);
            Flattened.of(sheet).texts().stream().map(Text::words).filter(words -> words.matches("P-[0-9]+")).forEach(photos::add);
        }
        assertEquals(count, photos.size());
        assertEquals(count, photos.stream().distinct().count());
    }

    /** A station never stands alone. */
    @Test
    void exact_placesInTheScheduleHaveTheirDatum() {
        List<Sheet> sheets = SurveyDrawing.of(annotated(List.of(
            finding("1", new SurveyPlace.AtStation("4"), new SurveyPlace.Girth(0.25), Side.PORT),
            finding("2", new SurveyPlace.AheadOfAfterEnd(1.25), new SurveyPlace.NotTold(), Side.STARBOARD),
            finding("3", null, new SurveyPlace.InRegion("Intake"), Side.PORT),
            finding("4", null, new SurveyPlace.InRegion("general"), null)), Units.MILLIMETRES, Paper.A2, Projection.FIRST_ANGLE));
        String words = String.join(" ", sheets.stream().flatMap(sheet -> Flattened.of(sheet).texts().stream()).map(Text::words).toList()).replaceAll("\\s+", " ");
        for (String wanted : List.of("station 4: 4000 aft of station 0 of the table, PLAN; 250 from keel line, SKIN; port",
                "1250 forward of after end of table (station 6), PLAN; how far out is not told; starboard", "Intake; port", "2026-04-02")) {
            assertTrue(words.contains(wanted), words);
        }
    }

    /** Starboard is up, and what is on the far side has a ring. */
    @Test
    void law_sidesAreDrawnWhereTheyAre() {
        SurveyTask task = new SurveyTask(annotated(List.of(
            finding("1", new SurveyPlace.AftOfOrigin(4), new SurveyPlace.Girth(0.4), Side.STARBOARD),
            finding("2", new SurveyPlace.AftOfOrigin(4), new SurveyPlace.Girth(0.4), Side.PORT),
            finding("3", new SurveyPlace.AftOfOrigin(4), new SurveyPlace.InRegion("sheer"), Side.BOTH)), Units.MILLIMETRES, Paper.A2, Projection.FIRST_ANGLE));
        List<Drawn> plan = Drawn.in(SurveyPlan.of(task, new Scale(20)));
        assertEquals(HULL.afterEnd() * 50 - 4 * 50, plan.get(0).leader().get(0).x(), 1e-9);
        assertTrue(plan.get(0).leader().get(0).y() > 0 && plan.get(1).leader().get(0).y() < 0);
        assertEquals(plan.get(0).leader().get(0).y(), -plan.get(1).leader().get(0).y(), 1e-12);
        View profile = SurveyProfile.of(task, new Scale(20));
        assertEquals(2, Drawn.in(profile).size());
        assertEquals(1, profile.entities().stream().filter(entity -> entity instanceof Leader).count());
        List<Drawn> sections = Drawn.in(SurveyBodyPlan.of(task, new Scale(20)).orElseThrow());
        assertEquals(2, sections.size());
        double half = HULL.lines().get(HULL.lines().size() - 1).y(4) * 50;
        assertArrayEquals(new double[] {-half, half}, sections.stream().mapToDouble(balloon -> balloon.leader().get(0).x()).sorted().toArray(), 1e-9);
    }

    @Test
    void exact_filesKeepEveryRuleAndOutsideReadersTakeThem(@TempDir Path folder) throws IOException {
        List<Sheet> sheets = SurveyDrawing.of(annotated(byLot(new Random(1), 25), Units.MILLIMETRES, Paper.A3, Projection.FIRST_ANGLE));
        assertTrue(sheets.size() > 1);
        for (int page = 1; page <= sheets.size(); page++) {
            DrawnFiles.assertTaken(folder, SurveyDrawing.fileName(page), "Survey findings", SheetFormat.DXF.drawing("s", sheets.get(page - 1)).content(),
                SheetFormat.SVG.drawing("s", sheets.get(page - 1)).content());
        }
        byte[] first = SheetPdf.write(sheets.subList(0, 1));
        byte[] all = SheetPdf.append(first, 1, sheets.subList(1, sheets.size()), "2026-05-02");
        assertArrayEquals(all, SheetPdf.append(first, 1, sheets.subList(1, sheets.size()), "2026-05-02"));
        try (PDDocument document = Loader.loadPDF(all)) {
            assertEquals(sheets.size(), document.getNumberOfPages());
            List<String> bookmarks = new ArrayList<>();
            document.getDocumentCatalog().getDocumentOutline().children().forEach(item -> bookmarks.add(item.getTitle()));
            assertEquals(sheets.stream().map(Sheet::title).toList(), bookmarks);
        }
        // drawn again in place of the later pages
        assertEquals(2, SheetPdf.pages(SheetPdf.append(all, 1, sheets.subList(1, 2), "2026-05-02")));
        OutsideReader.POPPLER.require();
        Path file = folder.resolve("set.pdf");
        Files.write(file, all);
        for (int page = 1; page <= sheets.size(); page++) {
            // A3, 420 mm by 297 mm: at 254 dots to the inch a dot is a tenth of a millimetre, and a part of one counts whole
            Path picture = folder.resolve("page" + page);
            assertEquals(new OutsideReader.Answer(0, ""), OutsideReader.POPPLER.run(List.of("-r", "254", "-gray", "-f", String.valueOf(page), "-l",
                String.valueOf(page), "-singlefile", file.toString(), picture.toString())));
            String[] size = new String(Files.readAllBytes(folder.resolve("page" + page + ".pgm")), 3, 9, StandardCharsets.US_ASCII).split(" ");
            assertEquals(4200, Integer.parseInt(size[0]), 1);
            assertEquals(2970, Integer.parseInt(size[1]), 1);
        }
    }

    @Test
    void law_sameSheetsOnAnyLocale() {
        Annotated annotated = annotated(byLot(new Random(5), 12), Units.FEET_INCHES_EIGHTHS, Paper.ANSI_C, Projection.THIRD_ANGLE);
        byte[] first = SheetFormat.DXF.drawing("s", SurveyDrawing.of(annotated).get(0)).content();
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertArrayEquals(first, SheetFormat.DXF.drawing("s", SurveyDrawing.of(annotated).get(0)).content());
        } finally {
            Locale.setDefault(before);
        }
    }
}
