package org.garboard.cutout.transom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import org.garboard.craft.BottomFeatures;
import org.garboard.craft.BottomFeatures.FeatureList;
import org.garboard.craft.Drive;
import org.garboard.craft.LaidFeature;
import org.garboard.craft.Sides;
import org.garboard.craft.Transducer;
import org.garboard.cutout.CannotBeBuilt;
import org.garboard.cutout.part.BodyOutline;
import org.garboard.cutout.part.NamedSolid;
import org.garboard.cutout.template.Template;
import org.garboard.cutout.transom.BracketWish.Screw;
import org.garboard.geometry.Quad;
import org.garboard.hull.Hull;
import org.garboard.siting.Boats;
import org.garboard.skin.SkinMaterial;
import org.garboard.solid.Solid;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;

/** Brackets on plumb and raked transoms of a wedge against closed forms. */
class BracketCutTest {
    private static final Transducer BODY = new Transducer("test body", 0.160, 0.060, 0.035, 0.010, 0, Angle.ofDegrees(0));
    private static final BracketWish WISH = BracketWish.of(Optional.empty());

    private static TransomBracket cut(Hull hull, BracketWish wish, double y) throws CannotBeBuilt {
        return BracketCut.cut(hull, BODY, wish, BottomFeatures.NOT_LISTED, Optional.empty(), y);
    }

    private static Solid solid(TransomBracket bracket, String name) {
        return bracket.solids().stream().filter(part -> part.name().equals(name)).map(NamedSolid::solid).findFirst().orElseThrow();
    }

    /** On a V of 20 deg the bottom comes lowest inboard: 3 mm there, half the width by the tangent more at the middle. */
    @Test
    void exact_heightsBelowAV() throws CannotBeBuilt {
        double half = 0.030 * Math.tan(Math.toRadians(20));
        for (double y : new double[] {0.4, -0.4}) {
            TransomBracket bracket = cut(Boats.prismaticV(20), WISH, y);
            assertEquals(0.003, bracket.belowInboard(), 1e-9);
            assertEquals(0.003 + half, bracket.belowMiddle(), 1e-9);
            assertEquals(0.003 + 2 * half, bracket.belowOutboard(), 1e-9);
            assertEquals(6, bracket.edge().getX(), 1e-9);
            assertEquals(0.4 * Math.tan(Math.toRadians(20)), bracket.edge().getZ(), 1e-9);
            assertEquals(0, bracket.rake().degrees(), 1e-9);
            assertEquals(0, bracket.round(), 1e-9);
            assertEquals(0.010 + 0.012, bracket.ahead(), 1e-9);
            // own choice: 40 mm over the body, level with each other
            for (TransomBracket.ScrewPlace screw : bracket.screws()) {
                assertEquals(0.075 - bracket.belowMiddle(), screw.up(), 1e-9);
                assertEquals(0.020, Math.abs(screw.across()), 1e-9);
            }
        }
        assertEquals(0.010, cut(Boats.prismaticV(20), BracketWish.of(Optional.of(SkinMaterial.ALUMINIUM)), 0.4).belowInboard(), 1e-9);
    }

    /** Board: its width by the mean of its height, by its thickness, less two holes; body: its outline by its height. */
    @Test
    void exact_volumes() throws CannotBeBuilt {
        for (double rake : new double[] {0, 12}) {
            Hull hull = rake == 0 ? Boats.prismaticV(20) : Boats.rakedV(20, rake);
            TransomBracket bracket = cut(hull, WISH, 0.4);
            double wide = 2 * (0.020 + 0.002 + 0.020);
            assertEquals(wide, bracket.boardWidth(), 1e-12);
            double board = (wide * (bracket.boardTop() - 0.010) - 2 * Math.PI * 0.002 * 0.002) * 0.012;
            assertEquals(board, solid(bracket, "transom-board").volume(), 1e-4 * board);
            assertEquals(-2, solid(bracket, "transom-board").eulerCharacteristic());
            double body = new BodyOutline(0.160, 0.060, 0.010).area() * 0.035;
            assertEquals(body, solid(bracket, "transducer-body").volume(), 1e-6 * body);
        }
    }

    /** On a raked transom heights run up it: longer by 1 / cos of the rake; the body stays clear of board and transom. */
    @Test
    void exact_rake() throws CannotBeBuilt {
        TransomBracket bracket = cut(Boats.rakedV(20, 12), WISH, 0.4);
        double cos = Math.cos(Math.toRadians(12));
        assertEquals(12, bracket.rake().degrees(), 1e-6);
        assertEquals(5.6 + bracket.edge().getZ() * Math.tan(Math.toRadians(12)), bracket.edge().getX(), 1e-6);
        assertEquals(0.075 - bracket.belowMiddle() / cos, bracket.screws().get(0).up(), 1e-9);
        double over = Math.max(0, 0.035 - bracket.belowMiddle()) * Math.tan(Math.toRadians(12));
        assertEquals(over + 0.012 / cos + 0.010, bracket.ahead(), 1e-6);
        Template template = bracket.templates().get(0);
        Template.Mark edge = template.marks().stream().filter(mark -> mark.kind() == Template.Kind.TRANSOM_EDGE).findFirst().orElseThrow();
        // outboard the edge rises by the tangent of the deadrise, up the transom by 1 / cos more
        assertEquals(bracket.boardWidth() * Math.tan(Math.toRadians(20)) / cos,
            edge.line().get(edge.line().size() - 1).v() - edge.line().get(0).v(), 1e-9);
    }

    /** A strake to 1.15 ft and a propeller on the centreline, as the yard tapes them. */
    @Test
    void exact_beside() throws CannotBeBuilt {
        BottomFeatures features = new BottomFeatures(List.of(
            new LaidFeature("Inner strake", "lifting strake", Sides.BOTH, List.of(Quad.of(2, 0.25, 5.9, 0.25, 5.9, 0.31, 2, 0.31)), Optional.empty()),
            new LaidFeature("Tab", "trim tab", Sides.PORT, List.of(Quad.of(5.8, 0.5, 6, 0.5, 6, 0.8, 5.8, 0.8)), Optional.empty()),
            new LaidFeature("Far strake", "lifting strake", Sides.BOTH, List.of(Quad.of(2, 0.4, 4, 0.4, 4, 0.5, 2, 0.5)), Optional.empty())), FeatureList.GIVEN);
        Drive drive = new Drive(Drive.Kind.OUTBOARD, 1, Optional.empty(), Optional.empty(), Optional.empty());
        TransomBracket starboard = BracketCut.cut(Boats.prismaticV(20), BODY, WISH, features, Optional.of(drive), 0.4);
        assertEquals(1, starboard.beside().size());
        assertEquals(0.4 - 0.03 - 0.31, starboard.beside().get(0).gap(), 1e-12);
        assertEquals(0.4, starboard.fromPropeller().orElseThrow(), 1e-12);
        TransomBracket port = BracketCut.cut(Boats.prismaticV(20), BODY, WISH, features, Optional.empty(), -0.4);
        assertEquals(List.of("Inner strake", "Tab"), port.beside().stream().map(TransomBracket.Neighbour::name).toList());
        assertEquals(0.5 - 0.43, port.beside().get(1).gap(), 1e-12);
    }

    @Test
    void refusalsSayWhatWouldWork() {
        refused("the board, 84.0 mm wide, reaches over the keel line from 20.0 mm off the centreline; what works: 42.0 mm off the centreline", WISH, 0.02);
        refused("the board, 84.0 mm wide, reaches over the corner of the transom from 980.0 mm off the centreline; what works: 958.0 mm off the centreline",
            WISH, -0.98);
        refused("a face 80.0 mm below the bottom; what works: 50.0 mm; from 0.0 mm to 50.0 mm", new BracketWish(0.08, List.of(), 0.012, 1e-4), 0.4);
        refused("a screw 20.0 mm over the face comes 6.1 mm over the transom's edge; what works: a screw 36 mm or more over the face",
            new BracketWish(0.003, List.of(new Screw(0, 0.020, 0.004)), 0.012, 1e-4), 0.4);
        refused("two screws of the bracket stand 5.0 mm apart; what works: 12 mm or more",
            new BracketWish(0.003, List.of(new Screw(0, 0.08, 0.004), new Screw(0.005, 0.08, 0.004)), 0.012, 1e-4), 0.4);
    }

    private static void refused(String message, BracketWish wish, double y) {
        assertEquals(message, assertThrows(CannotBeBuilt.class, () -> cut(Boats.prismaticV(20), wish, y)).getMessage());
    }
}
