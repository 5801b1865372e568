package org.garboard.slips.boat;

import java.util.Optional;
import org.garboard.slips.fit.Fit;
import org.garboard.slips.fit.Reading;

/** A first skin, near and not exact, that gross slips do not pull along. */
final class FirstSkin {
    /** How near the points are to be followed [m]; our choice. */
    private static final double NEAR = 0.005;
    private static final int ROUNDS = 8;
    /** Residual beyond which a point counts ever less (Cauchy weights), and is a suspect; our choice [NEAR]. */
    private static final double ODD = 3;
    private static final double SUSPECT = 10;

    private final Rows rows;
    private final Skin skin;
    private final double[] odds;

    /**
     * @param named the named rows at the stations, by column [m]
     * @param out cells left out
     */
    FirstSkin(Rows rows, double[][] named, BoatFairness fairness, boolean[] out, double scatter) {
        this.rows = rows;
        this.skin = new Skin(rows, named, mostPoints(new Skin(rows, named, new int[rows.panels()])));
        this.odds = new double[out.length];
        Sight sight = new Sight(rows, skin);
        double[] penalty = fairness.penalty(skin);
        for (int round = 0; round < ROUNDS; round++) {
            Reading[] readings = sight.readings(Sight.Look.DROPPED);
            Fit fit = new Fit(skin.net(), blunted(readings, scatter), out, penalty, scatter);
            for (int c = 0; c < odds.length; c++) {
                if (readings[c] != null && rows.isPoint(rows.cells().get(c))) {
                    odds[c] = fit.residual(c) / (NEAR * readings[c].bluntness());
                }
            }
            skin.take(fit.solution());
        }
    }

    private int[] mostPoints(Skin straight) {
        int[][] count = new int[rows.panels()][rows.stations()];
        int[] most = new int[rows.panels()];
        for (Cell cell : rows.cells()) {
            if (rows.isPoint(cell)) {
                Optional<Skin.Place> place = straight.crossing(rows.row(cell), cell.station(), cell.written());
                if (place.isPresent()) {
                    int panel = place.get().panel();
                    most[panel] = Math.max(most[panel], ++count[panel][cell.station()]);
                }
            }
        }
        return most;
    }

    private Reading[] blunted(Reading[] readings, double scatter) {
        Reading[] blunted = readings.clone();
        for (int c = 0; c < readings.length; c++) {
            if (readings[c] != null && rows.isPoint(rows.cells().get(c))) {
                blunted[c] = readings[c].blunted(NEAR / scatter * Math.hypot(1, odds[c] / ODD));
            }
        }
        return blunted;
    }

    Skin skin() {
        return skin;
    }

    /** Whether a point stands far off. */
    boolean isOdd(int cell) {
        return Math.abs(odds[cell]) > SUSPECT;
    }
}
