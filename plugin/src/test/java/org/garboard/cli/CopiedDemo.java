package org.garboard.cli;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * A demo boat told otherwise, in a folder of its own: the same lengths and weights in other units, or port and starboard changed
 * over. Her surface goes through the points of her table, so that the rounding of other units is not seen.
 */
record CopiedDemo(Path folder) {
    private static final Path DEMO = Path.of("src/main/demo");
    /** As many as a table may have, for a boat of less than a thousand feet. */
    private static final int PLACES = 12;
    private static final BigDecimal MM_PER_FOOT = new BigDecimal("304.8");
    private static final BigDecimal MM_PER_INCH = new BigDecimal("25.4");
    private static final BigDecimal MM_PER_EIGHTH = new BigDecimal("3.175");
    private static final BigDecimal KG_PER_POUND = new BigDecimal("0.45359237");
    private static final Map<String, BigDecimal> MM = Map.of("mm", BigDecimal.ONE, "cm", BigDecimal.TEN, "m", new BigDecimal(1000),
        "in", MM_PER_INCH, "ft", MM_PER_FOOT);
    private static final Pattern MEASURE = Pattern.compile("unit=\"(mm|cm|m|in|ft|kg|lb)\">([-0-9.]+)<");
    private static final Pattern SIDE = Pattern.compile("(side=\"|hand=\"|<|</)(port|starboard|right|left)(?=[\">])");
    private static final Map<String, String> OTHER_SIDE = Map.of("port", "starboard", "starboard", "port", "right", "left", "left", "right");

    /** As she stands but for the fit. */
    static CopiedDemo of(String boat, Path into) throws IOException {
        CopiedDemo copy = new CopiedDemo(Files.createDirectories(into.resolve(boat)));
        Files.writeString(copy.table(), Files.readString(DEMO.resolve(boat).resolve("offsets.csv")));
        Files.writeString(copy.job(), Files.readString(DEMO.resolve(boat).resolve("job.xml")));
        return copy.with("<table file=\"offsets.csv\"/>", "<table file=\"offsets.csv\" fit=\"exact\"/>");
    }

    Path job() {
        return folder.resolve("job.xml");
    }

    private Path table() {
        return folder.resolve("offsets.csv");
    }

    /** Replaces a part of the job, which must be there. */
    CopiedDemo with(String part, String replacement) throws IOException {
        String text = Files.readString(job());
        if (!text.contains(part)) {
            throw new IllegalArgumentException("the job does not hold " + part);
        }
        Files.writeString(job(), text.replace(part, replacement));
        return this;
    }

    /** The speeds of these names alone, for the sake of time. */
    CopiedDemo at(String... names) throws IOException {
        Files.writeString(job(), Files.readString(job()).replaceAll("<speed name=\"(?!" + String.join("|", names) + ")[^/]*</speed>", "").replaceAll(" share=\"\\d+\"", ""));
        return this;
    }

    /** Everything that is to port comes to starboard. */
    CopiedDemo mirrored() throws IOException {
        Files.writeString(job(), SIDE.matcher(Files.readString(job())).replaceAll(found -> found.group(1) + OTHER_SIDE.get(found.group(2))));
        Files.writeString(table(), Pattern.compile("(?<=,)(port|starboard)(?=,)").matcher(Files.readString(table()))
            .replaceAll(found -> OTHER_SIDE.get(found.group())));
        return this;
    }

    /**
     * Feet, inches and pounds for metres and kilograms, metric for feet, inches and pounds. A take-off comes to be in centimetres:
     * what is measured twice must agree within its rounding, so that stays.
     */
    CopiedDemo inOtherUnits() throws IOException {
        Matcher measure = MEASURE.matcher(Files.readString(job()));
        Files.writeString(job(), measure.replaceAll(found -> otherMeasure(found.group(1), new BigDecimal(found.group(2)))));
        List<String> lines = Files.readAllLines(table());
        String unit = lines.get(1).split("[,;]")[1];
        String other = lines.get(0).startsWith("TAKE-OFF") ? "cm" : unit.equals("feet-inches-eighths") ? "mm" : "ft";
        Files.writeString(table(), lines.stream().map(line -> otherLine(line, unit, other)).collect(Collectors.joining("\n", "", "\n")));
        return this;
    }

    private static String otherMeasure(String unit, BigDecimal value) {
        return switch (unit) {
            case "kg" -> "unit=\"lb\">" + plain(value.divide(KG_PER_POUND, PLACES, RoundingMode.HALF_EVEN)) + "<";
            case "lb" -> "unit=\"kg\">" + plain(value.multiply(KG_PER_POUND)) + "<";
            case "in", "ft" -> "unit=\"mm\">" + plain(value.multiply(MM.get(unit))) + "<";
            default -> "unit=\"in\">" + plain(value.multiply(MM.get(unit)).divide(MM_PER_INCH, PLACES, RoundingMode.HALF_EVEN)) + "<";
        };
    }

    /** Numbers in the title and of stations are no lengths. */
    private static String otherLine(String line, String unit, String other) {
        String mark = line.contains(";") ? ";" : ",";
        String[] cells = line.split(mark, -1);
        boolean stations = cells[0].equals("Station") && cells[1].equals("0");
        if (cells[0].equals("TABLE OF OFFSETS") || cells[0].equals("TAKE-OFF") || stations) {
            return line;
        }
        if (cells[0].equals("Units")) {
            return line.replace(unit, other);
        }
        int from = cells[0].equals("Step at") ? 2 : cells[0].matches("(Buttock|WL) .*") ? 0 : 1;
        return IntStream.range(0, cells.length).mapToObj(k -> k < from ? cells[k] : otherCell(cells[k], unit, other)).collect(Collectors.joining(mark));
    }

    /** A length, or the length after a name. */
    private static String otherCell(String cell, String unit, String other) {
        int at = cell.lastIndexOf(' ') + 1;
        String name = cell.substring(0, at);
        String length = cell.substring(at);
        if (length.matches("\\d+-\\d+-\\d+")) {
            String[] parts = length.split("-");
            long eighths = 96 * Long.parseLong(parts[0]) + 8 * Long.parseLong(parts[1]) + Long.parseLong(parts[2]);
            return name + plain(new BigDecimal(eighths).multiply(MM_PER_EIGHTH));
        }
        if (!length.matches("-?\\d+([.,]\\d+)?") || unit.equals("feet-inches-eighths")) {
            return cell;
        }
        BigDecimal mm = new BigDecimal(length.replace(',', '.')).multiply(MM.get(unit));
        if (other.equals("cm")) {
            return name + mm.movePointLeft(1);
        }
        String feet = plain(mm.divide(MM_PER_FOOT, PLACES, RoundingMode.HALF_EVEN));
        return name + (length.contains(",") ? feet.replace('.', ',') : feet);
    }

    private static String plain(BigDecimal value) {
        return value.stripTrailingZeros().toPlainString();
    }
}
