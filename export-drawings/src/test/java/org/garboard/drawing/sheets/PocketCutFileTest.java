package org.garboard.drawing.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.garboard.craft.Transducer;
import org.garboard.cutout.KeelPocketCut;
import org.garboard.cutout.Pocket;
import org.garboard.cutout.PocketOutcome;
import org.garboard.drawing.Box;
import org.garboard.drawing.Point;
import org.garboard.drawing.dxf.CutDrawing;
import org.garboard.drawing.dxf.CutDrawing.Stroke;
import org.garboard.drawing.dxf.CutDxf;
import org.garboard.drawing.dxf.CutDxfRules;
import org.garboard.drawing.dxf.CutLayer;
import org.garboard.drawing.dxf.EzdxfAudit;
import org.garboard.hull.Hull;
import org.garboard.job.DrawingWish.Paper;
import org.garboard.job.DrawingWish.Units;
import org.garboard.marking.MarkedLength;
import org.garboard.marking.MarkingOut;
import org.garboard.marking.MarkingPlan;
import org.garboard.mount.PocketWish;
import org.garboard.mount.pocket.PocketLayup;
import org.garboard.mount.pocket.PocketMake;
import org.garboard.reader.OutsideReader;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PocketCutFileTest {

    private static final SampleBoat BOAT = new SampleBoat(6.706, 11);

    private static Pocket pocket() {
        return BOAT.record(Units.MILLIMETRES, Paper.A3).pocket().orElseThrow();
    }

    /** One let into an existing boat: its hull is cut outside the finished edge. */
    private static Pocket tray(Hull hull) {
        Transducer body = new Transducer("test body", 0.3, 0.15, 0.05, 0, 0.02, Angle.ofDegrees(0));
        PocketMake make = PocketMake.USUAL.with(new PocketLayup(0.0005, List.of(new PocketLayup.Layer("glass", 0.0095)), 12, 0.003));
        PocketOutcome outcome = KeelPocketCut.cut(hull, body, new PocketWish(OptionalDouble.empty(), 0.0025, 8, make), pocket().site().getX());
        Pocket tray = assertInstanceOf(PocketOutcome.Built.class, outcome, outcome.toString()).pocket();
        assertTrue(CutOutline.of(tray).extents().width() > CutOutline.finishedEdge(tray).extents().width() + 20);
        return tray;
    }

    private static byte[] written(CutDrawing drawing) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        CutDxf.write(drawing, out);
        return out.toByteArray();
    }

    @Test
    void exact_keepsEveryRule() throws IOException {
        assertEquals(List.of(), CutDxfRules.broken(written(PocketCutFile.of(pocket()))));
    }

    @Test
    void exact_outsideReaderFindsNothingToMend(@TempDir Path folder) throws IOException {
        OutsideReader.EZDXF.require();
        Path file = folder.resolve("pocket-outside-up_mm_1to1.dxf");
        Files.write(file, written(PocketCutFile.of(pocket())));
        EzdxfAudit.assertClean(file);
    }

    /** A V of 20 deg lies flat 1 / cos 20 deg wider; ramps reach as far as on the boat. */
    @Test
    void exact_outlineIsTrueMillimetres() {
        assertEquals(CutLayer.CUT_OUTER, PocketCutFile.of(pocket()).contours().get(0).layer());
        Box box = Box.around(PocketCutFile.of(pocket()).contours().get(0).corners());
        double widest = pocket().opening().stream().mapToDouble(place -> 2000 * place.getY()).max().orElseThrow();
        assertEquals(widest / Math.cos(Math.toRadians(20)), box.height(), 0.05);
        // the outline is measured along the skin, the ramps along the floor; the keel line bends by less than a micrometre, and laying
        // flat what bends both ways takes what is stated
        assertTrue(pocket().developmentStretch() < 1e-5, "stretch " + pocket().developmentStretch());
        assertEquals(1000 * (pocket().length() + pocket().foreRamp() + pocket().aftRamp()), box.width(), 1e-3 + 1000 * pocket().developmentStretch());
    }

    /** Bow to the right and starboard up, as the skin is seen from below: u aft becomes -x, v to starboard y. */
    @Test
    void exact_bowIsRightAndStarboardIsUp() {
        CutOutline outline = CutOutline.of(pocket());
        Point first = outline.corners().get(0);
        assertEquals(-1000 * pocket().developedOpening().get(0).u(), first.x(), 1e-9);
        assertTrue(first.x() > 0, "the ring starts forward");
        assertTrue(outline.corners().get(5).y() > 0, "and goes round to starboard first");
    }

    /** The notch is a closed triangle forward of the middle and to starboard; nothing like it to port. */
    @Test
    void exact_notchMarksStarboard() {
        List<Stroke> strokes = PocketCutFile.of(pocket()).strokes();
        List<Stroke> slanting = strokes.stream().filter(stroke -> Math.abs(stroke.from().directionTo(stroke.to()) + 45) < 1e-6)
                .filter(stroke -> stroke.from().distanceTo(stroke.to()) > 10).toList();
        assertEquals(1, slanting.size());
        assertTrue(slanting.get(0).from().x() > 0 && slanting.get(0).from().y() > 0 && slanting.get(0).to().y() > 0);
    }

    /** Marks lie on the piece that is cut out, none beyond the outline's extents. */
    @Test
    void law_marksStayInsideTheOutline() {
        Box box = CutOutline.of(pocket()).extents().grownBy(0.1);
        for (Stroke stroke : PocketCutFile.of(pocket()).strokes()) {
            assertEquals(CutLayer.MARK, stroke.layer());
            assertTrue(box.contains(Box.around(List.of(stroke.from(), stroke.to()))), stroke.toString());
        }
    }

    /** The ticks stand where sheet 2's marks 1 to 4 stand: a tape along the skin from the place is the distance on the flat from the cross. */
    @Test
    void law_ticksAreTheMarksOfSheet2() {
        Hull hull = Hull.through(BOAT.table());
        for (Pocket pocket : List.of(pocket(), tray(hull))) {
            MarkingOut plan = MarkingPlan.of(hull, BOAT.table(), pocket, 0.1);
            List<Point> marks = PocketCutFile.marks(pocket);
            int compared = 0;
            for (MarkedLength length : plan.lengths()) {
                if (length.tape().touches() && length.to().letter().matches("[1-4]") && length.from().letter().matches("[E1-4]")) {
                    Point to = marks.get(length.to().letter().charAt(0) - '1');
                    Point from = length.from().letter().equals("E") ? new Point(0, 0) : marks.get(length.from().letter().charAt(0) - '1');
                    assertEquals(1000 * length.metres(), from.distanceTo(to), 1, length.from().letter() + length.to().letter());
                    compared++;
                }
            }
            assertEquals(6, compared);
        }
    }

    /** A rectangle of 40 x 30: diagonals 50, way round 140. */
    @Test
    void exact_checkLengthsOfARectangle() {
        CutOutline rectangle = new CutOutline(List.of(new Point(-20, -15), new Point(20, -15), new Point(20, 15), new Point(-20, 15)));
        assertEquals(50, rectangle.diagonalFromStarboard(), 1e-12);
        assertEquals(50, rectangle.diagonalFromPort(), 1e-12);
        assertEquals(140, rectangle.perimeter(), 1e-12);
        assertEquals(5, rectangle.distance(new Point(0, 10)), 1e-12);
    }

    /** Pointed ramps are no corners: the diagonals stay those of the parallel part. */
    @Test
    void exact_cornersOfAPointedOutline() {
        CutOutline pointed = new CutOutline(List.of(new Point(100, 0), new Point(20, 15), new Point(-20, 15), new Point(-100, 0),
                new Point(-20, -15), new Point(20, -15)));
        assertEquals(new Point(20, 15), pointed.corner(1, 1));
        assertEquals(50, pointed.diagonalFromStarboard(), 1e-12);
    }
}
