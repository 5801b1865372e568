package org.garboard.tablefile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Where the stations stand: by a row of distances, or by a spacing and their numbers. */
final class StationPlaces {
    private static final Pattern NUMBER = Pattern.compile("(-?[0-9]+)(?:[.,]([0-9]+))?");
    /** The faces of a step at 5 are 5 and 5 aft, or 5 fore and 5 aft. */
    private static final String FACE = "(?i)\\s+(?:aft|abaft|after|fore|forward|fwd)\\.?$";
    private static final Pattern FRACTION = Pattern.compile("(?:([0-9]+) +)?([0-9]+)/([1-9][0-9]*)");

    private final Layout layout;
    private final Headings headings;
    private final Lengths lengths;
    private final Problems problems;

    StationPlaces(Layout layout, Headings headings, Lengths lengths, Problems problems) {
        this.layout = layout;
        this.headings = headings;
        this.lengths = lengths;
        this.problems = problems;
    }

    static String place(Cell name) {
        return "station " + name.text();
    }

    /**
     * The stations from forward aft; where their places are unreadable, a metre apart in the order of the file,
     * so that other faults can still be seen.
     */
    StationOrder stations() {
        List<Optional<Double>> places = places();
        return places.stream().allMatch(Optional::isPresent)
            ? new StationFrame(layout, headings, problems).of(places.stream().mapToDouble(Optional::get).toArray())
            : StationOrder.unknown(layout);
    }

    private List<Optional<Double>> places() {
        if (layout.distances().isPresent() && headings.spacing().isPresent()) {
            Cell spacing = headings.spacing().get();
            problems.inCell(spacing, "", "spacing", "stands beside the distances of line "
                + layout.distances().get().label().row() + "; give one or the other");
        }
        if (layout.distances().isPresent()) {
            return byDistance(layout.distances().get());
        }
        if (headings.spacing().isPresent()) {
            return bySpacing(headings.spacing().get());
        }
        problems.inFile("nothing tells where the stations stand; add a row \"Distance from 0\", or a row \"Spacing\"");
        return layout.stations().stream().map(name -> Optional.<Double>empty()).toList();
    }

    private List<Optional<Double>> byDistance(Strip distances) {
        List<Optional<Double>> places = new ArrayList<>();
        for (int i = 0; i < layout.stations().size(); i++) {
            if (i >= distances.cells().size()) {
                places.add(Optional.empty());
                continue;
            }
            Cell cell = distances.cells().get(i);
            if (cell.isBlank()) {
                problems.inCell(cell, place(layout.stations().get(i)), "distance", "is blank; give it for every station");
                places.add(Optional.empty());
            } else {
                places.add(lengths.place(cell, place(layout.stations().get(i)), "distance"));
            }
        }
        return places;
    }

    private List<Optional<Double>> bySpacing(Cell cell) {
        Optional<Double> spacing = lengths.place(cell, "", "spacing");
        if (spacing.isPresent() && spacing.get() <= 0) {
            problems.inCell(cell, "", "spacing", "is not more than 0");
            spacing = Optional.empty();
        }
        List<Optional<Double>> places = new ArrayList<>();
        for (Cell name : layout.stations()) {
            Optional<Double> number = number(name.text());
            if (number.isEmpty()) {
                problems.inCell(name, "", "station", "is not a number, so a spacing does not place it; number the stations,"
                    + " or give a row \"Distance from 0\"");
            }
            places.add(spacing.isPresent() && number.isPresent()
                ? Optional.of(spacing.get() * number.get())
                : Optional.empty());
        }
        return places;
    }

    /** 3, 3.5, 3 1/2, 1/2. */
    private static Optional<Double> number(String label) {
        String name = label.replaceFirst(FACE, "");
        Matcher number = NUMBER.matcher(name);
        if (name.length() <= 12 && number.matches()) {
            return Optional.of(Double.parseDouble(name.replace(',', '.')));
        }
        Matcher fraction = FRACTION.matcher(name);
        if (name.length() <= 12 && fraction.matches()) {
            double whole = fraction.group(1) == null ? 0 : Double.parseDouble(fraction.group(1));
            return Optional.of(whole + Double.parseDouble(fraction.group(2)) / Double.parseDouble(fraction.group(3)));
        }
        return Optional.empty();
    }
}
