package org.garboard.hull;

import java.util.List;
import java.util.Optional;
import org.garboard.offsets.HullOffsets;
import org.garboard.offsets.PanelOffsets;
import org.garboard.offsets.SectionPoint;

/** How a hull is drawn from its table. */
public enum Fit {
    /** The fairest surface within half the table's least count of every reading. */
    WITHIN_ROUNDING(6e7) {
        @Override
        public Hull draw(HullOffsets table) {
            return Hull.faired(table);
        }

        /** Work of one factorisation: unknowns times the square of the band. */
        @Override
        double load(double stations, double points) {
            return stations * points * Math.pow(3 * points, 2);
        }
    },
    /** Through every point of the table, ripples of its rounding and all. */
    EXACT(6e6) {
        @Override
        public Hull draw(HullOffsets table) {
            return Hull.through(table);
        }

        /** Size of the band. */
        @Override
        double load(double stations, double points) {
            return stations * points * 3 * points;
        }
    };

    /** Most that is taken on: our choice, some ten seconds, or 50 MB. */
    private final double limit;

    Fit(double limit) {
        this.limit = limit;
    }

    /**
     * The outside of the skin, of a table that has no {@link #obstacle}.
     *
     * @throws IllegalArgumentException if the table has faults that its checks would have named
     * @throws HullNotDrawn if the skin is too thick for its shape, or no surface keeps to the table
     */
    public abstract Hull draw(HullOffsets table);

    abstract double load(double stations, double points);

    /** Why a sound table cannot be drawn, and what would work; empty when it can. */
    public Optional<String> obstacle(HullOffsets table) {
        for (PanelOffsets panel : table.panels()) {
            int stations = panel.stations().size();
            int most = panel.stations().stream().mapToInt(List<SectionPoint>::size).max().orElse(0);
            if (load(stations, most) > limit) {
                int works = most;
                while (works > 2 && load(stations, works) > limit) {
                    works--;
                }
                return Optional.of(stations + " stations with up to " + most + " points from " + panel.lower()
                        + " to " + panel.upper() + " are more than can be drawn " + words() + "; with that many stations "
                        + works + " points work: leave out every other station, or waterlines and buttocks"
                        + (this == WITHIN_ROUNDING && EXACT.load(stations, most) <= EXACT.limit
                        ? ", or ask for exact" : ""));
            }
        }
        return Optional.empty();
    }

    private String words() {
        return this == EXACT ? "through every value" : "within rounding";
    }
}
