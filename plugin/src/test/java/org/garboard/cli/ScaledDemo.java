package org.garboard.cli;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A demo boat drawn longer or shorter, in a folder of its own: the stations of its table and every place along the boat in its job
 * times one factor, rounded as the table is; sections, weights and speeds as they were.
 */
record ScaledDemo(Path folder, double factor) {
    private static final Path DEMO = Path.of("src/main/demo");
    private static final double EIGHTHS_PER_INCH = 8;

    static ScaledDemo of(String boat, double factor, Path into) throws IOException {
        ScaledDemo demo = new ScaledDemo(Files.createDirectories(into.resolve(boat)), factor);
        Path from = DEMO.resolve(boat);
        Files.writeString(demo.folder.resolve("offsets.csv"), demo.table(Files.readString(from.resolve("offsets.csv"))));
        Files.writeString(demo.job(), demo.job(Files.readString(from.resolve("job.xml"))));
        return demo;
    }

    Path job() {
        return folder.resolve("job.xml");
    }

    /** Replaces a part of the job, which must be there. */
    ScaledDemo with(String part, String replacement) throws IOException {
        String text = Files.readString(job());
        if (!text.contains(part)) {
            throw new IllegalArgumentException("the job does not hold " + part);
        }
        Files.writeString(job(), text.replace(part, replacement));
        return this;
    }

    /** The same boat with a bare bottom. */
    ScaledDemo bare() throws IOException {
        return replacing("(?s)<features>.*</features>", "<features/>");
    }

    /** The same with one way in alone. */
    ScaledDemo only(String mount) throws IOException {
        return replacing("(?s)<mounts.*</mounts>", "<mounts><" + mount + "/></mounts>");
    }

    /** The same with one round beam. */
    ScaledDemo sounding(int kilohertz, int degrees) throws IOException {
        return replacing("(?s)<sound>.*</sound>", "<sound><beam><frequency unit=\"kHz\">" + kilohertz + "</frequency><beam-width unit=\"deg\">" + degrees
            + "</beam-width></beam></sound>");
    }

    private ScaledDemo replacing(String pattern, String with) throws IOException {
        Files.writeString(job(), Files.readString(job()).replaceFirst(pattern, with));
        return this;
    }

    private String job(String text) {
        Matcher place = Pattern.compile("(<(x|ahead-of-after-end|ahead-from|ahead-to|wetted-keel) unit=\"[a-z]+\">)(-?[0-9.]+)").matcher(text);
        return place.replaceAll(found -> found.group(1) + new BigDecimal(found.group(3)).multiply(BigDecimal.valueOf(factor)).setScale(4, RoundingMode.HALF_UP)
            .stripTrailingZeros().toPlainString());
    }

    private String table(String text) {
        boolean[] column = {false};
        return text.lines().map(line -> {
            String mark = line.contains(";") ? ";" : ",";
            List<String> cells = Arrays.asList(line.split(mark, -1));
            if (cells.get(0).startsWith("Distance from 0") || cells.get(0).equals("Step at") || cells.get(0).equals("Transom")) {
                int from = cells.get(0).equals("Step at") ? 2 : 1;
                return String.join(mark, cells.subList(0, from)) + mark
                    + cells.subList(from, cells.size()).stream().map(this::scaled).collect(Collectors.joining(mark));
            }
            if (cells.get(0).equals("Station")) {
                column[0] = cells.size() > 1 && cells.get(1).startsWith("Distance");
            } else if (column[0] && cells.size() > 2) {
                return cells.get(0) + mark + scaled(cells.get(1)) + mark + String.join(mark, cells.subList(2, cells.size()));
            }
            return line;
        }).collect(Collectors.joining("\n", "", "\n"));
    }

    /** In its own notation: feet-inches-eighths, a decimal comma, whole millimetres. Words stay. */
    private String scaled(String cell) {
        if (cell.matches("\\d+-\\d+-\\d+")) {
            String[] parts = cell.split("-");
            long eighths = Math.round(factor * EIGHTHS_PER_INCH * (12 * Integer.parseInt(parts[0]) + Integer.parseInt(parts[1]) + Integer.parseInt(parts[2]) / EIGHTHS_PER_INCH));
            return eighths / 96 + "-" + eighths % 96 / 8 + "-" + eighths % 8;
        }
        if (cell.matches("-?\\d+,\\d+")) {
            return new BigDecimal(cell.replace(',', '.')).multiply(BigDecimal.valueOf(factor)).setScale(3, RoundingMode.HALF_UP).toPlainString().replace('.', ',');
        }
        return cell.matches("-?\\d+") ? Long.toString(Math.round(factor * Long.parseLong(cell))) : cell;
    }
}
