package org.garboard.findingsfile;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What a column of the file may tell. */
enum Column {
    NUMBER("No", Kind.TEXT, "No.", "Number"),
    STATION("Station", Kind.TEXT),
    X("X", Kind.LENGTH, "Aft of origin"),
    AHEAD("Ahead of after end", Kind.LENGTH, "Forward of after end", "Ahead of transom"),
    GIRTH("Girth", Kind.LENGTH),
    OFF_CENTRE("Off centreline", Kind.LENGTH, "Y"),
    SIDE("Side", Kind.TEXT),
    REGION("Region", Kind.TEXT),
    FINDING("Finding", Kind.TEXT),
    SEVERITY("Severity", Kind.TEXT),
    ACTION("Action", Kind.TEXT),
    PHOTO("Photo", Kind.TEXT, "Photo reference"),
    DATE("Date", Kind.TEXT);

    /** What stands in a cell. */
    enum Kind { TEXT, LENGTH }

    private final String heading;
    private final Kind kind;
    private final List<String> also;

    Column(String heading, Kind kind, String... also) {
        this.heading = heading;
        this.kind = kind;
        this.also = List.of(also);
    }

    String heading() {
        return heading;
    }

    Kind kind() {
        return kind;
    }

    /** The column that a heading names; a length's unit may stand behind its name. */
    static Optional<Column> of(String heading) {
        String plain = plain(heading);
        return Arrays.stream(values()).filter(column -> column.names().anyMatch(plain::equals)).findFirst();
    }

    /** The column that a heading begins with, where words stand behind the name. */
    static Optional<Column> before(String heading) {
        String plain = plain(heading);
        return Arrays.stream(values()).filter(column -> column.kind == Kind.LENGTH)
            .filter(column -> column.names().anyMatch(name -> plain.startsWith(name + " "))).findFirst();
    }

    /** What stands behind the name of this column, without brackets. */
    String behind(String heading) {
        String plain = plain(heading);
        String name = names().filter(each -> plain.startsWith(each + " ")).findFirst().orElse(plain);
        return plain.substring(name.length()).replaceAll("[()\\[\\]]", "").strip();
    }

    static String words() {
        return Arrays.stream(values()).map(Column::heading).collect(Collectors.joining(", "));
    }

    private Stream<String> names() {
        return Stream.concat(Stream.of(heading), also.stream()).map(Column::plain);
    }

    private static String plain(String heading) {
        return heading.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    }
}
