package org.garboard.siting;

import java.util.Arrays;
import java.util.List;
import java.util.function.Supplier;
import org.garboard.mount.Demand;

/**
 * How well every node of a grid serves a mount: its governing utilisation, for ranking; its largest
 * shortfall, whose zero bounds the feasible regions; and how much it misses in all, where none serves.
 */
final class Suitability {
    /** Shortfall of a node that cannot be measured: finite, and so large that a region ends at the node before it. */
    private static final double WORST = 1e6;

    private static final short NOTHING = -1;

    private final int columns;
    private final double[] utilisation;
    private final double[] shortfall;
    private final double[] missed;
    private final short[] governing;

    private Suitability(int rows, int columns) {
        this.columns = columns;
        this.utilisation = new double[rows * columns];
        this.shortfall = new double[rows * columns];
        this.missed = new double[rows * columns];
        this.governing = new short[rows * columns];
        Arrays.fill(governing, NOTHING);
        Arrays.fill(utilisation, Double.POSITIVE_INFINITY);
        Arrays.fill(shortfall, WORST);
        Arrays.fill(missed, WORST);
    }

    /** Every node of the bottom. */
    static Suitability ofBottom(BottomGrid grid, Supplier<MeasuredBed> beds, Asked asked, int threads) {
        return measured(grid, grid.columns(), beds, asked, threads);
    }

    /** The nodes on the keel line alone. */
    static Suitability ofKeelLine(BottomGrid grid, Supplier<MeasuredBed> beds, Asked asked, int threads) {
        return measured(grid, 1, beds, asked, threads);
    }

    /** One row of nodes along the lower edge of the transom. */
    static Suitability ofTransom(BottomGrid grid, MeasuredBed bed, Asked asked) {
        Suitability suitability = new Suitability(1, grid.columns());
        for (int j = 0; j < grid.columns(); j++) {
            if (bed.measure(Double.NaN, grid.y(j))) {
                suitability.judge(j, bed, asked);
            }
        }
        return suitability;
    }

    private static Suitability measured(BottomGrid grid, int columns, Supplier<MeasuredBed> beds,
                                        Asked asked, int threads) {
        Suitability suitability = new Suitability(grid.rows(), columns);
        Rows.each(grid.rows(), threads, (from, to) -> {
            MeasuredBed bed = beds.get();
            for (int i = from; i < to; i++) {
                for (int j = 0; j < columns; j++) {
                    if (grid.onSkin(i, j) && bed.measure(grid.x(i), grid.y(j))) {
                        suitability.judge(i * columns + j, bed, asked);
                    }
                }
            }
        });
        return suitability;
    }

    private void judge(int node, MeasuredBed bed, Asked asked) {
        double most = asked.refused() ? Double.POSITIVE_INFINITY : 0;
        double worst = asked.refused() ? 1 : Double.NEGATIVE_INFINITY;
        double sum = 0;
        short worstOf = NOTHING;
        for (int i = 0; i < asked.count(); i++) {
            Demand demand = asked.demand(i);
            double value = demand.reading().applyAsDouble(bed);
            double lacking = demand.shortfallOf(value);
            if (Double.isNaN(lacking) && demand.unread() == Demand.Unread.LEAVES_OPEN) {
                continue;
            }
            double used = demand.utilisationOf(value);
            worstOf = used > most || worstOf < 0 ? (short) i : worstOf;
            most = Math.max(most, used);
            worst = Math.max(worst, lacking);
            sum += Math.max(0, lacking);
        }
        if (!Double.isNaN(most)) {
            utilisation[node] = most;
            shortfall[node] = Math.min(WORST, worst);
            missed[node] = Math.min(WORST, sum);
            governing[node] = asked.refused() ? NOTHING : worstOf;
        }
    }

    int columns() {
        return columns;
    }

    int size() {
        return utilisation.length;
    }

    /** Governing utilisation; infinite where a node cannot be measured. */
    double utilisation(int node) {
        return utilisation[node];
    }

    /** Number of the demand with the governing utilisation; -1 where there is none. */
    int governing(int node) {
        return governing[node];
    }

    /** Largest shortfall: at most zero where every demand is met; always finite. */
    double shortfall(int node) {
        return shortfall[node];
    }

    /** Sum of the shortfalls of all demands that are not met. */
    double missed(int node) {
        return missed[node];
    }

    boolean measured(int node) {
        return shortfall[node] < WORST;
    }

    boolean serves(int node) {
        return shortfall[node] <= 0;
    }

    double[] shortfalls() {
        return shortfall.clone();
    }
}
