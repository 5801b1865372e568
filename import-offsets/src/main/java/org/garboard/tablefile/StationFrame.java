package org.garboard.tablefile;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * From distances as the file tells them, from forward or from aft, to x of the hull frame.
 *
 * <p>Distances from forward are x as they stand. Measured from aft, x runs aft from the forward-most station.
 * In both cases a heading may name another station as the origin.
 */
final class StationFrame {
    private final Layout layout;
    private final Headings headings;
    private final Problems problems;

    StationFrame(Layout layout, Headings headings, Problems problems) {
        this.layout = layout;
        this.headings = headings;
        this.problems = problems;
    }

    /** @param told distance of each station, in the order of the file [m] */
    StationOrder of(double[] told) {
        boolean fromAft = measured() == Measured.FROM_AFT;
        if (told.length < 2 || !fromAft && headings.origin().isEmpty()) {
            return StationOrder.of(layout, told, ToldFrame.FROM_FORWARD);
        }
        double[] x = Arrays.stream(told).map(distance -> fromAft ? -distance : distance).toArray();
        boolean inOrder = requireOrder(x, fromAft);
        OptionalDouble origin = origin(x, fromAft);
        if (!inOrder || origin.isEmpty()) {
            return StationOrder.unknown(layout);
        }
        StationOrder order = StationOrder.of(layout, told, new ToldFrame(fromAft ? -1 : 1, origin.getAsDouble()));
        return isReversed(x, fromAft) ? order.turned() : order;
    }

    /** The label of the distances says it, or else the heading; a note in passing is not enough. */
    private Measured measured() {
        Optional<Measured> label = layout.distances().flatMap(distances -> Measured.distance(distances.label().text()));
        Optional<Measured> told = label.or(headings::measured);
        if (told.isEmpty()) {
            headings.asidesFromAft().forEach(note -> problems.inCell(note, "", "", "says in passing that something is"
                + " measured from aft; write a row of its own, Stations from and in the next cell aft or forward"));
        }
        return told.orElse(Measured.FROM_FORWARD);
    }

    /** Stations measured from aft may stand in the file from aft forward or from forward aft. */
    private boolean requireOrder(double[] x, boolean fromAft) {
        boolean reversed = isReversed(x, fromAft);
        boolean inOrder = true;
        for (int i = 1; i < x.length; i++) {
            if (!(reversed ? x[i] < x[i - 1] : x[i] > x[i - 1]) && !isStep(x, i)) {
                inOrder = false;
                Cell name = layout.stations().get(i);
                Cell cell = layout.distances().isPresent() ? layout.distances().get().cells().get(i) : name;
                problems.inCell(cell, StationPlaces.place(name), "", "stands here: out of order behind "
                    + StationPlaces.place(layout.stations().get(i - 1))
                    + "; order the stations along the boat, each at its own place");
            }
        }
        return inOrder;
    }

    /** Two stations at one place, and no third, are the two faces of a step. */
    private boolean isStep(double[] x, int i) {
        return x[i] == x[i - 1] && !(i > 1 && x[i - 2] == x[i])
            && !layout.stations().get(i).text().equals(layout.stations().get(i - 1).text());
    }

    private static boolean isReversed(double[] x, boolean fromAft) {
        return fromAft && x[x.length - 1] < x[0];
    }

    private OptionalDouble origin(double[] x, boolean fromAft) {
        if (headings.origin().isEmpty()) {
            return fromAft ? Arrays.stream(x).min() : OptionalDouble.of(0);
        }
        Cell cell = headings.origin().get();
        List<String> names = layout.stations().stream().map(Cell::text).toList();
        int station = names.indexOf(cell.text().replaceFirst("^" + Labels.STATION + " +", ""));
        if (station < 0) {
            problems.inCell(cell, "", "", "is no station of this table; they are " + String.join(", ", names));
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(x[station]);
    }
}
