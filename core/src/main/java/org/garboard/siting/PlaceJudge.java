package org.garboard.siting;

import java.util.Arrays;
import org.garboard.mount.Demand;

/**
 * Holds one place after another to all that is asked, no further than the question needs: what settles a place ends it. Demands of
 * the place alone come before the skin is measured, those that follow rays last, and of each kind the one that settled a place before
 * comes first, since neighbours fail alike. The order changes the work, never the answer. One for each thread; owns its arrays.
 */
final class PlaceJudge {
    /** Shortfall of a place without a seat, or of what fails outright: finite, and so large that a region ends at the node before it. */
    static final double WORST = 1e6;
    static final short NOTHING = -1;
    /** How much is missed by what fails outright, or cannot be read where it must be, in limits: our choice, more than any figure misses. */
    private static final double OUTRIGHT = 1000;

    private final MeasuredBed bed;
    private final Asked asked;
    /** Numbers of the demands: those of the place alone, then those of the bed, then those by rays. */
    private final int[] order;
    private final int ofPlace;
    private final int ofBed;
    private final double[] readings;
    private double usedSoFar;
    private double missedSoFar;

    private double utilisation;
    private double shortfall;
    private double missed;
    private short governing;

    /** How far a place is looked at. */
    private enum Goal { ALL, WHETHER_IT_SERVES, NEAREST }

    PlaceJudge(MeasuredBed bed, Asked asked) {
        this.bed = bed;
        this.asked = asked;
        this.order = new int[asked.count()];
        this.readings = new double[asked.count()];
        int count = 0;
        for (Demand.Reads reads : Demand.Reads.values()) {
            for (int i = 0; i < asked.count(); i++) {
                if (asked.demand(i).reads() == reads) {
                    order[count++] = i;
                }
            }
        }
        this.ofPlace = (int) Arrays.stream(order).filter(i -> asked.demand(i).reads() == Demand.Reads.PLACE).count();
        this.ofBed = (int) Arrays.stream(order).filter(i -> asked.demand(i).reads() != Demand.Reads.RAYS).count();
    }

    /** Whether every demand that can be made is met at the starboard place (x, y) [m]; then its figures are known too. */
    boolean serves(double x, double y) {
        return !asked.refused() && readings(x, y, Goal.WHETHER_IT_SERVES, null);
    }

    /** Every figure of a place; false where the footprint finds no seat. */
    boolean judge(double x, double y) {
        return readings(x, y, Goal.ALL, null);
    }

    /** Every figure of a place that may be as good as the best so far; false where it is not, or finds no seat. */
    boolean judge(double x, double y, NearestSoFar best) {
        return readings(x, y, Goal.NEAREST, best);
    }

    /** Takes every reading; false as soon as one settles the place, or the footprint leaves the skin. */
    private boolean readings(double x, double y, Goal goal, NearestSoFar best) {
        bed.moveTo(x, y);
        usedSoFar = asked.refused() ? Double.POSITIVE_INFINITY : 0;
        missedSoFar = 0;
        if (read(0, ofPlace, goal, best) && bed.lay() && read(ofPlace, ofBed, goal, best) && read(ofBed, order.length, goal, best)) {
            figures();
            return true;
        }
        return false;
    }

    private boolean read(int from, int to, Goal goal, NearestSoFar best) {
        for (int k = from; k < to; k++) {
            int i = order[k];
            Demand demand = asked.demand(i);
            double value = demand.reading().applyAsDouble(bed);
            readings[i] = value;
            if (goal != Goal.ALL && isSettledBy(demand, value, best)) {
                System.arraycopy(order, from, order, from + 1, k - from);
                order[from] = i;
                return false;
            }
        }
        return true;
    }

    /** Of what serves, by the first demand that is not met; of the nearest, by being no better than one that is known. */
    private boolean isSettledBy(Demand demand, double value, NearestSoFar best) {
        if (isOpen(demand, value)) {
            return false;
        }
        double lacking = lacking(demand, value);
        if (best == null) {
            return lacking > 0;
        }
        usedSoFar = Math.max(usedSoFar, used(demand, value));
        missedSoFar += Math.max(0, Math.min(OUTRIGHT, lacking));
        return best.isBetterThan(usedSoFar, missedSoFar);
    }

    /** Whether it could not be read, and a site may be there nevertheless. */
    private static boolean isOpen(Demand demand, double value) {
        return Double.isNaN(value) && demand.unread() == Demand.Unread.LEAVES_OPEN;
    }

    /** What must be read and cannot be fails outright. */
    private static double lacking(Demand demand, double value) {
        return Double.isNaN(value) ? WORST : Math.min(WORST, demand.shortfallOf(value));
    }

    private static double used(Demand demand, double value) {
        return Double.isNaN(value) ? Double.POSITIVE_INFINITY : demand.utilisationOf(value);
    }

    /** Of the readings, in the order in which they are asked. */
    private void figures() {
        utilisation = asked.refused() ? Double.POSITIVE_INFINITY : 0;
        shortfall = asked.refused() ? 1 : Double.NEGATIVE_INFINITY;
        double sum = 0;
        short most = NOTHING;
        for (int i = 0; i < readings.length; i++) {
            Demand demand = asked.demand(i);
            if (!isOpen(demand, readings[i])) {
                double used = used(demand, readings[i]);
                double lacking = lacking(demand, readings[i]);
                most = used > utilisation || most < 0 ? (short) i : most;
                utilisation = Math.max(utilisation, used);
                shortfall = Math.max(shortfall, lacking);
                sum += Math.max(0, Math.min(OUTRIGHT, lacking));
            }
        }
        missed = sum;
        governing = asked.refused() ? NOTHING : most;
    }

    /** Governing utilisation of the place last judged. */
    double utilisation() {
        return utilisation;
    }

    /** Largest shortfall there: at most zero where every demand is met; always finite. */
    double shortfall() {
        return shortfall;
    }

    /** Sum there of the shortfalls of all demands that are not met. */
    double missed() {
        return missed;
    }

    /** Number of the demand with the governing utilisation; -1 where there is none. */
    short governing() {
        return governing;
    }
}
