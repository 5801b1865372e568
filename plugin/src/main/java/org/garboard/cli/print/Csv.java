package org.garboard.cli.print;

import java.io.PrintWriter;
import java.util.Arrays;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.garboard.units.FixedDecimal;

/**
 * Prints rows of comma-separated values as RFC 4180 has them, line ends too. Words come from files that anybody may have written: what
 * a spreadsheet would take for a formula begins with an apostrophe.
 */
public final class Csv {
    private static final Pattern NUMBER = Pattern.compile("[+-]?([0-9]+(\\.[0-9]+)?|INF)");

    private final PrintWriter out;

    public Csv(PrintWriter out) {
        this.out = out;
    }

    public void row(String... fields) {
        out.print(Arrays.stream(fields).map(field -> quoted(harmless(field))).collect(Collectors.joining(",")));
        out.print("\r\n");
    }

    /** A number with so many places; empty for one that is not known. */
    public static String number(double value, int places) {
        if (Double.isNaN(value)) {
            return "";
        }
        return Double.isInfinite(value) ? value > 0 ? "INF" : "-INF" : FixedDecimal.format(value, places);
    }

    private static String harmless(String field) {
        boolean formula = !field.isEmpty() && "=+-@\t\r\n".indexOf(field.charAt(0)) >= 0 && !NUMBER.matcher(field).matches();
        return formula ? "'" + field : field;
    }

    private static String quoted(String field) {
        boolean plain = field.chars().noneMatch(c -> c == ',' || c == '"' || c == '\r' || c == '\n');
        return plain ? field : "\"" + field.replace("\"", "\"\"") + "\"";
    }
}
