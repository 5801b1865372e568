package org.garboard.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.garboard.hull.Fit;
import org.garboard.hull.Hull;
import org.garboard.hull.Panel;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;

/** A boat in closed form, measured as she stands blocked, comes back upright and level. */
class TakeOffLawTest {
    private static final double[] HEELS = {-5, -1.3, 0, 2.2, 5};
    private static final double[] TRIMS = {-3, 0, 0.7, 3};
    private static final double[] PLANES = {1, 2, 3, 4.2, 5.5, 6.7};

    /** As finely read as no yard does: what is left is how the loft draws between points. */
    @Test
    void exact_aBoatMeasuredToAHundredthOfAMillimetreComesBack() {
        for (YardBoat boat : YardBoat.all()) {
            // eight points on 75 degrees of an ellipse leave a cubic so far out between them
            double between = boat.name().equals("round bilge") ? 4e-4 : 0;
            for (double heel : HEELS) {
                for (double trim : TRIMS) {
                    Errors errors = errors(boat, heel, trim, 1e-5);
                    assertEquals(heel, errors.heel(), 2e-4, errors::toString);
                    assertEquals(trim, errors.trim(), 2e-4, errors::toString);
                    assertTrue(errors.worst() < 2e-5 + between, errors::toString);
                }
            }
        }
    }

    /** Half a count either way, up and out, is what a reading may be off: 0.7 of a count square to the skin. */
    @Test
    void law_aBoatMeasuredToTheMillimetreComesBackWithinItsRounding() {
        for (YardBoat boat : YardBoat.all()) {
            for (double heel : HEELS) {
                for (double trim : TRIMS) {
                    Errors errors = errors(boat, heel, trim, 1e-3);
                    assertEquals(heel, errors.heel(), 0.01, errors::toString);
                    assertEquals(trim, errors.trim(), 0.01, errors::toString);
                    assertTrue(errors.rootMeanSquare() < 0.7e-3, errors::toString);
                    assertTrue(errors.worst() < 1.7e-3, errors::toString);
                }
            }
        }
    }

    /** Turned on its side by the level alone: mirrored readings give the mirrored heel and the same hull. */
    @Test
    void law_portAndStarboardChangedTurnTheHeel() {
        TakeOff taken = YardBoat.warped().new Yard(Angle.ofDegrees(1.2), Angle.ofDegrees(2.4), 1e-3).takeOff(PLANES);
        List<TakenPoint> mirrored = taken.points().stream().map(point -> new TakenPoint(point.row(), point.station(),
            point.side() == Side.CENTRE ? Side.CENTRE : point.side() == Side.PORT ? Side.STARBOARD : Side.PORT,
            -point.y(), point.z(), point.mark())).toList();
        List<FloatMark> marks = taken.floatMarks().stream().map(mark -> new FloatMark(mark.row(), mark.x(), -mark.y(), mark.z())).toList();
        TakeOff other = new TakeOff(taken.title(), taken.leastCount(), taken.datum(), taken.stations(), mirrored, marks,
            taken.trimFrom(), taken.symmetricWithin(), taken.openEnds());
        LevelledOffsets one = levelled(taken);
        LevelledOffsets two = levelled(other);
        assertEquals(one.asBlocked().heel().radians(), -two.asBlocked().heel().radians(), 1e-9);
        assertEquals(one.asBlocked().trim().radians(), two.asBlocked().trim().radians(), 1e-9);
        Hull hull = Fit.WITHIN_ROUNDING.draw(one);
        Hull same = Fit.WITHIN_ROUNDING.draw(two);
        assertEquals(hull.height(-3, 0.5), same.height(-3, 0.5), 1e-6);
    }

    /** How far off what comes back is: angles [deg], lengths [m]. */
    private record Errors(String boat, double heel, double trim, double rootMeanSquare, double worst) {
    }

    private static LevelledOffsets levelled(TakeOff taken) {
        Levelling levelling = Levelling.of(taken);
        assertTrue(levelling instanceof Levelling.Levelled, levelling::toString);
        return ((Levelling.Levelled) levelling).offsets();
    }

    private static Errors errors(YardBoat boat, double heel, double trim, double count) {
        YardBoat.Yard yard = boat.new Yard(Angle.ofDegrees(trim), Angle.ofDegrees(heel), count);
        LevelledOffsets offsets = levelled(yard.takeOff(PLANES));
        Hull hull = Fit.WITHIN_ROUNDING.draw(offsets);
        double worst = 0;
        double squares = 0;
        int looks = 0;
        double[] out = new double[Panel.POINT_SIZE];
        for (int i = 0; i <= 40; i++) {
            double x = Math.min(hull.afterEnd(), hull.forwardEnd() + (hull.afterEnd() - hull.forwardEnd()) * i / 40);
            for (int k = 1; k < 30; k++) {
                double[] at = boat.at(x + yard.datum(), k / 30.0);
                // a side all but plumb begins a little farther in or out
                if (!hull.evaluate(x, at[0], out, 0)) {
                    assertTrue(k > 27, "not covered at share " + k / 30.0);
                    continue;
                }
                double off = Math.abs(out[Panel.Z] - at[1]) * Math.abs(out[Panel.NZ]);
                worst = Math.max(worst, off);
                squares += off * off;
                looks++;
            }
        }
        return new Errors(boat.name(), offsets.asBlocked().heel().degrees(), offsets.asBlocked().trim().degrees(),
            Math.sqrt(squares / looks), worst);
    }
}
