package org.garboard.siting;

import java.util.Arrays;
import org.garboard.processors.Rows;

/**
 * How well every node of a grid serves a mount: its governing utilisation, for ranking; its largest
 * shortfall, whose zero bounds the feasible regions; and how much it misses in all, where none serves.
 * Figures of nodes that were not asked about are as of those where the mount finds no seat.
 */
final class Suitability {
    /** Rows and columns from one node to the next of the first look for what is nearest (our choice: figures there vary little over so much). */
    private static final int FIRST_LOOK = 8;

    private final Nodes nodes;
    private final Asked asked;
    private final int columns;
    private final double[] utilisation;
    private final double[] shortfall;
    private final double[] missed;
    private final short[] governing;
    private final boolean[] seated;

    private Suitability(Nodes nodes, Asked asked) {
        this.nodes = nodes;
        this.asked = asked;
        this.columns = nodes.columns();
        this.utilisation = new double[nodes.size()];
        this.shortfall = new double[nodes.size()];
        this.missed = new double[nodes.size()];
        this.governing = new short[nodes.size()];
        this.seated = new boolean[nodes.size()];
        Arrays.fill(governing, PlaceJudge.NOTHING);
        Arrays.fill(utilisation, Double.POSITIVE_INFINITY);
        Arrays.fill(shortfall, PlaceJudge.WORST);
        Arrays.fill(missed, PlaceJudge.WORST);
    }

    /** Of every node. */
    static Suitability everywhere(Nodes nodes, Asked asked) {
        Suitability whole = new Suitability(nodes, asked);
        whole.each(1, (judge, row, column) -> judge.judge(nodes.x(row), nodes.y(column)));
        return whole;
    }

    /** Of nodes that serve and of those beside them: what regions and the best sites in them are found by. */
    static Suitability whereItServes(Nodes nodes, Asked asked) {
        Suitability serving = new Suitability(nodes, asked);
        if (!asked.refused()) {
            serving.each(1, (judge, row, column) -> judge.serves(nodes.x(row), nodes.y(column)));
            boolean[] serves = new boolean[nodes.size()];
            for (int node = 0; node < serves.length; node++) {
                serves[node] = serving.serves(node);
            }
            serving.each(1, (judge, row, column) -> serving.isRim(serves, row, column) && judge.judge(nodes.x(row), nodes.y(column)));
        }
        return serving;
    }

    private boolean isRim(boolean[] serves, int row, int column) {
        int node = row * columns + column;
        return !serves[node] && (row > 0 && serves[node - columns] || node + columns < serves.length && serves[node + columns]
            || column > 0 && serves[node - 1] || column + 1 < columns && serves[node + 1]);
    }

    /** Of nodes that may be the nearest to serving, where none does: a few all over the bottom first, which rule out most others. */
    static Suitability nearest(Nodes nodes, Asked asked) {
        Suitability near = new Suitability(nodes, asked);
        NearestSoFar best = new NearestSoFar();
        for (int stride : new int[] {FIRST_LOOK, 1}) {
            near.each(stride, (judge, row, column) -> {
                boolean judged = judge.judge(nodes.x(row), nodes.y(column), best);
                if (judged) {
                    best.add(judge.utilisation(), judge.missed());
                }
                return judged;
            });
        }
        return near;
    }

    /** Asks about one node; whether its figures are to be kept. */
    private interface Question {
        boolean ask(PlaceJudge judge, int row, int column);
    }

    /** Asks about every node of the skin, or every so manieth row and column. */
    private void each(int stride, Question question) {
        int rows = (nodes.rows() + stride - 1) / stride;
        Rows.each(rows, (from, to) -> {
            PlaceJudge judge = new PlaceJudge(nodes.beds().get(), asked);
            for (int row = from * stride; row < Math.min(nodes.rows(), to * stride); row += stride) {
                for (int column = 0; column < columns; column += stride) {
                    if (nodes.onSkin(row, column) && question.ask(judge, row, column)) {
                        keep(row * columns + column, judge);
                    }
                }
            }
        });
    }

    private void keep(int node, PlaceJudge judge) {
        utilisation[node] = judge.utilisation();
        shortfall[node] = judge.shortfall();
        missed[node] = judge.missed();
        governing[node] = judge.governing();
        seated[node] = true;
    }

    int columns() {
        return columns;
    }

    int size() {
        return utilisation.length;
    }

    /** Governing utilisation; infinite where something fails outright, and where a node has no seat. */
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

    /** Whether it has figures of its own. */
    boolean measured(int node) {
        return seated[node];
    }

    boolean serves(int node) {
        return shortfall[node] <= 0;
    }

    double[] shortfalls() {
        return shortfall.clone();
    }
}
