package org.garboard.hull;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.garboard.offsets.Entry;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.Measure;
import org.garboard.offsets.OffsetTable;
import org.garboard.offsets.TableLine;
import org.junit.jupiter.api.Test;

/** The faired surface against closed-form bottoms whose tables were rounded, in eight phases each. */
class FairingTest {
    private static final double EIGHTH = 0.0254 / 8;
    private static final int PHASES = 8;
    /** The bow, forward of a tenth of the length, is told apart. */
    private static final double BOW = 0.1;

    private static double[] errors(double leastCount, java.util.function.Function<OffsetTable, Hull> draw) {
        List<Bottoms> forms = Bottoms.all();
        double[] errors = new double[forms.size() * PHASES];
        for (int i = 0; i < errors.length; i++) {
            Bottoms form = forms.get(i / PHASES);
            Hull hull = draw.apply(form.table(leastCount, (i % PHASES) / (double) PHASES));
            errors[i] = BottomErrors.of(hull, form, BOW, 1).deadriseDegrees();
        }
        return errors;
    }

    private static double share(double[] values, double part) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        double at = part * (sorted.length - 1);
        int below = (int) at;
        int above = Math.min(sorted.length - 1, below + 1);
        return sorted[below] + (at - below) * (sorted[above] - sorted[below]);
    }

    @Test
    void exact_deadriseFromEighths() {
        double[] errors = errors(EIGHTH, Hull::faired);
        assertTrue(share(errors, 0.5) <= 0.08, "median " + share(errors, 0.5));
        assertTrue(share(errors, 0.95) <= 0.15, "95th percentile " + share(errors, 0.95));
        assertTrue(share(errors, 1) <= 0.25, "worst " + share(errors, 1));
    }

    @Test
    void exact_deadriseFromMillimetres() {
        double worst = share(errors(1e-3, Hull::faired), 1);
        assertTrue(worst <= 0.08, "worst " + worst);
    }

    @Test
    void law_tenthsOfMillimetresNeverWorseThanThroughThePoints() {
        double[] faired = errors(1e-4, Hull::faired);
        double[] exact = errors(1e-4, Hull::through);
        for (int i = 0; i < faired.length; i++) {
            assertTrue(faired[i] <= exact[i], Bottoms.all().get(i / PHASES).name() + ": " + faired[i]
                    + " against " + exact[i]);
        }
    }

    /** Every reading lies within half the least count of the surface, up or out as it is read. */
    @Test
    void law_withinRoundingOfEveryReading() {
        for (Bottoms form : Bottoms.all()) {
            for (double leastCount : new double[] {EIGHTH, 1e-3, 1e-4}) {
                OffsetTable table = form.table(leastCount, 0.375);
                double worst = worstResidual(Hull.faired(table), table);
                assertTrue(worst <= leastCount / 2, form.name() + " at " + leastCount + ": " + worst);
                assertTrue(worst > leastCount / 5, "the bound is used: " + worst);
            }
        }
    }

    private static double worstResidual(Hull hull, OffsetTable table) {
        double worst = 0;
        for (TableLine line : table.lines()) {
            for (Entry entry : line.entries()) {
                double x = table.stations().get(entry.station()).x();
                worst = Math.max(worst, Math.abs(entry.value() - drawn(hull, line, x)));
            }
        }
        return worst;
    }

    private static double drawn(Hull hull, TableLine line, double x) {
        if (line.kind() == LineKind.BUTTOCK) {
            return hull.height(x, line.level());
        }
        if (line.kind() == LineKind.WATERLINE) {
            return hull.halfBreadth(x, line.level()).orElseThrow();
        }
        HullLine drawn = hull.lines().stream().filter(one -> one.name().equals(line.name())).findFirst().orElseThrow();
        return line.measure() == Measure.HEIGHT ? drawn.z(x) : drawn.y(x);
    }

    /** A table without rounding is drawn through its points, whichever way is asked. */
    @Test
    void law_noRoundingNoFairing() {
        OffsetTable table = Bottoms.all().get(1).table(0, 0);
        Hull faired = Hull.faired(table);
        Hull exact = Hull.through(table);
        for (double y = 0; y < 1.3; y += 0.1) {
            assertEquals(exact.height(7, y), faired.height(7, y));
        }
    }

    /** Two stations say nothing of how fair the lines between them run. */
    @Test
    void law_twoStationsNoFairing() {
        OffsetTable whole = Bottoms.all().get(1).table(EIGHTH, 0.25);
        OffsetTable ends = new OffsetTable("ends", whole.surface(), EIGHTH, whole.stations().subList(0, 2), whole.lines().stream()
            .map(line -> new TableLine(line.kind(), line.name(), line.level(), line.measure(),
                line.entries().stream().filter(entry -> entry.station() < 2).toList()))
            .toList());
        assertEquals(0, worstResidual(Hull.faired(ends), ends), 1e-9);
        assertEquals(0, Hull.faired(ends).within());
    }

    /** The panels still meet, and the keel stays on the centreline. */
    @Test
    void law_panelsMeet() {
        Hull hull = Hull.faired(Bottoms.all().get(3).table(EIGHTH, 0.25));
        double[] one = new double[Panel.POINT_SIZE];
        double[] other = new double[Panel.POINT_SIZE];
        for (double x = 0; x < Bottoms.LENGTH; x += 0.31) {
            hull.panels().get(0).evaluate(x, 1, one, 0);
            hull.panels().get(1).evaluate(x, 0, other, 0);
            assertEquals(one[Panel.Y], other[Panel.Y], 1e-12);
            assertEquals(one[Panel.Z], other[Panel.Z], 1e-12);
            assertEquals(0, hull.keel().y(x), 1e-12);
        }
    }
}
