package org.garboard.slips.boat;

import java.util.Arrays;
import java.util.Optional;
import org.garboard.offsets.TableLine;
import org.garboard.slips.fit.Across;
import org.garboard.slips.fit.Reading;

/** Cells of the table as readings, linear around the skin as it is. */
final class Sight {
    /** Slope against the level beyond which a point's place is found by dropping it on the straight line. */
    private static final double STEEP = 1.5;
    /** Slope beyond which a reading tells nothing. */
    private static final double ALONG_SKIN = 33;
    /** How much less sure a reading is for its slope, for then the curve within the error counts; our choice. */
    private static final double BLUNTING = 0.15;
    private static final double OVERHANG = 0.02;

    private final Rows rows;
    private final Skin skin;

    Sight(Rows rows, Skin skin) {
        this.rows = rows;
        this.skin = skin;
    }

    /** How a point's place across its panel is found. */
    enum Look {
        /** Where its row's level crosses the skin, unless the skin runs steeply there. */
        BY_LEVEL,
        /** By dropping it on the straight line across: steady even if the skin is not yet known. */
        DROPPED
    }

    /** By cell; null where a cell runs along the skin. */
    Reading[] readings(Look look) {
        Reading[] readings = new Reading[rows.cells().size()];
        for (int c = 0; c < readings.length; c++) {
            Cell cell = rows.cells().get(c);
            readings[c] = rows.isPoint(cell)
                    ? reading(cell, place(cell, look)).orElse(null)
                    : Reading.of(cell.station(), rows.columnOf(cell), cell.written());
        }
        return readings;
    }

    /** A point seen where its row's level crosses the skin, whatever the slope there; none if nowhere. */
    Optional<Reading> atLevel(Cell cell) {
        return skin.crossing(rows.row(cell), cell.station(), cell.written()).flatMap(place -> reading(cell, place));
    }

    /** The panel in which a point is seen. */
    int panelOf(Cell cell) {
        return place(cell, Look.BY_LEVEL).panel();
    }

    private Skin.Place place(Cell cell, Look look) {
        TableLine row = rows.row(cell);
        int level = Skin.levelOf(row);
        double y = level == Skin.Y ? row.level() : cell.written();
        double z = level == Skin.Y ? cell.written() : row.level();
        int station = cell.station();
        Optional<Skin.Place> crossing = skin.crossing(row, station, cell.written());
        if (crossing.isEmpty()) {
            return skin.nearest(station, y, z);
        }
        Skin.Place place = crossing.get();
        if (look == Look.DROPPED || Math.abs(slope(place, station, level)) > STEEP) {
            double v = skin.drop(place.panel(), station, y, z);
            if (v > -OVERHANG && v < 1 + OVERHANG) {
                return new Skin.Place(place.panel(), Math.max(0, Math.min(1, v)));
            }
        }
        return place;
    }

    /** Change of the reading with its level, along the skin. */
    private double slope(Skin.Place place, int station, int level) {
        return skin.slope(place.panel(), station, place.v(), 1 - level)
                / skin.slope(place.panel(), station, place.v(), level);
    }

    /** Reading less slope times level is what moves with the skin there, to first order. */
    private Optional<Reading> reading(Cell cell, Skin.Place place) {
        TableLine row = rows.row(cell);
        int station = cell.station();
        int level = Skin.levelOf(row);
        double slope = slope(place, station, level);
        if (!(Math.abs(slope) < ALONG_SKIN)) {
            return Optional.empty();
        }
        double[] share = new double[2];
        share[1 - level] = 1;
        share[level] = -slope;
        Felt felt = new Felt(station);
        for (int side = 0; side < 2; side++) {
            int line = place.panel() + side;
            double weight = side == 0 ? 1 - place.v() : place.v();
            if (rows.columnOfY(line) >= 0) {
                felt.add(rows.columnOfY(line), weight * share[Skin.Y], skin.line(line, station, Skin.Y));
            }
            felt.add(rows.columnOfZ(line), weight * share[Skin.Z], skin.line(line, station, Skin.Z));
        }
        bulge(place, station, share, felt);
        double off = share[1 - level] * (cell.written() - skin.at(place.panel(), station, place.v(), 1 - level))
                + share[level] * (row.level() - skin.at(place.panel(), station, place.v(), level));
        return Optional.of(felt.reading(off, Math.sqrt(1 + Math.pow(BLUNTING * slope, 2))));
    }

    private void bulge(Skin.Place place, int station, double[] share, Felt felt) {
        Across across = skin.across(place.panel());
        if (across == null) {
            return;
        }
        double square = share[Skin.Y] * skin.square(place.panel(), station, Skin.Y)
                + share[Skin.Z] * skin.square(place.panel(), station, Skin.Z);
        double[] basis = new double[16];
        across.basis(place.v(), basis);
        int first = across.firstColumn(place.v());
        for (int k = 0; k < 4; k++) {
            if (first + k >= 0 && first + k < across.columns()) {
                felt.add(skin.firstColumn(place.panel()) + first + k, square * basis[k],
                        skin.bulge(place.panel(), station, first + k));
            }
        }
    }

    /** Gathers the columns that a reading feels. */
    private static final class Felt {
        private static final int MOST = 8;

        private final int station;
        private final int[] columns = new int[MOST];
        private final double[] factors = new double[MOST];
        private int count;
        private double here;

        Felt(int station) {
            this.station = station;
        }

        void add(int column, double factor, double value) {
            columns[count] = column;
            factors[count++] = factor;
            here += factor * value;
        }

        Reading reading(double off, double bluntness) {
            return new Reading(station, Arrays.copyOf(columns, count), Arrays.copyOf(factors, count),
                    here + off, bluntness);
        }
    }
}
