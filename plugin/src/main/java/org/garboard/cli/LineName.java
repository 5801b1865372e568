package org.garboard.cli;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.garboard.hull.Hull;
import org.garboard.hull.HullLine;
import org.garboard.lines.DrawnLine;
import picocli.CommandLine.TypeConversionException;

/** A line of the hull as people name it: "keel", "Chine", "buttock 0.5", "section 8.2", "diagonal 0.6:35". */
final class LineName {

    private LineName() {
    }

    /** The line; none when nothing of that kind is known, in words for the user. */
    static DrawnLine line(String name, Hull hull) {
        String asked = name.strip().replaceAll("\\s+", " ");
        Optional<HullLine> named = hull.lines().stream().filter(line -> line.name().equalsIgnoreCase(asked)).findFirst();
        if (named.isPresent()) {
            return new DrawnLine.Named(named.get());
        }
        List<String> parts = List.of(asked.split(" ", 2));
        String place = parts.size() == 2 ? parts.get(1) : "";
        return switch (parts.get(0).toLowerCase(Locale.ROOT)) {
            case "section" -> new DrawnLine.Section(MetresConverter.metres(place));
            case "buttock" -> new DrawnLine.Buttock(Math.abs(MetresConverter.metres(place)));
            case "waterline" -> new DrawnLine.Waterline(MetresConverter.metres(place));
            case "diagonal" -> DiagonalConverter.diagonal(place);
            default -> throw new TypeConversionException("\"" + name + "\" is no line of this hull; it has "
                + hull.lines().stream().map(HullLine::name).collect(Collectors.joining(", "))
                + "; or write section X, buttock Y, waterline Z or diagonal Z:DEG, in quotes");
        };
    }
}
