package org.garboard.mistaken;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.garboard.craft.BottomFeatures;
import org.garboard.craft.Transducer;
import org.garboard.cutout.CannotBeBuilt;
import org.garboard.cutout.fairing.Planform;
import org.garboard.cutout.flush.ElementLean.Towards;
import org.garboard.cutout.flush.FlushCut;
import org.garboard.cutout.flush.FlushCutout;
import org.garboard.cutout.part.SawCut;
import org.garboard.cutout.part.SawPlane;
import org.garboard.cutout.part.ThroughHullWish;
import org.garboard.cutout.transom.BracketCut;
import org.garboard.cutout.transom.BracketWish;
import org.garboard.cutout.transom.TransomBracket;
import org.garboard.hull.Hull;
import org.garboard.siting.Boats;
import org.garboard.units.Angle;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is cut, sawn and screwed on. The right values are closed forms. */
class MistakenCutTest {
    private static final double TAN = Math.tan(Math.toRadians(20));

    static List<Formula> formulas() {
        return List.of(
            Formula.of("athwartships lean of a flush hole to starboard", -Math.sin(Math.toRadians(20)), 1e-9, () -> flush(20, 0.5).axis().getY())
                .slip("to port", () -> flush(20, -0.5).axis().getY())
                .slip("into the water", () -> -flush(20, 0.5).axis().getY())
                .slip("deadrise from plumb", () -> flush(70, 0.5).axis().getY()),
            Formula.of("what an element's lean leaves", 0, 1e-9, () -> flush(20, 0.5).lean().left().degrees())
                .slip("turned round", () -> flush(20, 0.5).lean().turnedRound().degrees())
                .slip("another deadrise", () -> flush(15, 0.5).lean().left().degrees()),
            Formula.of("side to which an element leans, starboard 1", -1, 0.1, () -> side(flush(20, 0.5)))
                .slip("from the other side of the keel", () -> side(flush(20, -0.5))),
            Formula.of("half-breadth of an ellipse ahead of its middle [m]", 0.05 * 0.8, 1e-9, () -> Planform.HALF_ELLIPSES.halfBreadth(0.4, 0.1, -0.4 * 0.4 * 0.6))
                .slip("aft for ahead", () -> Planform.HALF_ELLIPSES.halfBreadth(0.4, 0.1, 0.4 * 0.4 * 0.6))
                .slip("width and length changed", () -> Planform.HALF_ELLIPSES.halfBreadth(0.1, 0.4, -0.4 * 0.4 * 0.6))
                .slip("half the width for the whole", () -> Planform.HALF_ELLIPSES.halfBreadth(0.4, 0.05, -0.4 * 0.4 * 0.6)),
            Formula.of("high side of a wedge", 0.06 + 0.05 * TAN, 1e-9, () -> wedge(TAN, 1).starboard())
                .slip("the other side", () -> wedge(TAN, 1).port())
                .slip("the skin below it", () -> wedge(TAN, -1).starboard())
                .slip("degrees for the tangent", () -> wedge(20, 1).starboard()),
            Formula.of("how far a bracket's face hangs below the bottom's edge", 0.003 + 0.03 * TAN, 1e-9, () -> bracket(20, 0.4).belowMiddle())
                .slip("at its inboard edge", () -> bracket(20, 0.4).belowInboard())
                .slip("at its outboard edge", () -> bracket(20, 0.4).belowOutboard())
                .slip("above it", () -> -bracket(20, 0.4).belowMiddle())
                .slip("deadrise from plumb", () -> bracket(70, 0.4).belowMiddle()));
    }

    @ParameterizedTest
    @MethodSource("formulas")
    void law_aSlipIsSeen(Formula formula) {
        formula.seesThem();
    }

    private static FlushCutout flush(double deadrise, double y) {
        Transducer body = new Transducer("test body", 0.096, 0.076, 0.028, 0.020, 0.020, Angle.ofDegrees(20));
        Hull hull = Boats.prismaticV(deadrise);
        try {
            return FlushCut.cut(hull, body, ThroughHullWish.of(Optional.empty()), 3, y);
        } catch (CannotBeBuilt refused) {
            throw new IllegalArgumentException(refused.getMessage());
        }
    }

    private static double side(FlushCutout cutout) {
        return cutout.lean().towards() == Towards.STARBOARD ? 1 : -1;
    }

    /** 60 mm high over its middle, 100 mm wide, the skin rising to starboard. */
    private static SawCut wedge(double rise, int looks) {
        return SawCut.of(new SawPlane(0, rise, 0.06, 0), 0, -0.2, 0.2, 0.05, looks, OptionalDouble.empty());
    }

    private static TransomBracket bracket(double deadrise, double y) {
        Transducer body = new Transducer("test body", 0.160, 0.060, 0.035, 0.010, 0, Angle.ofDegrees(0));
        try {
            return BracketCut.cut(Boats.prismaticV(deadrise), body, BracketWish.of(Optional.empty()), BottomFeatures.NOT_LISTED, Optional.empty(), y);
        } catch (CannotBeBuilt refused) {
            throw new IllegalArgumentException(refused.getMessage());
        }
    }
}
