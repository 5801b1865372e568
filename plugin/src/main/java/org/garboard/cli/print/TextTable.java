package org.garboard.cli.print;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;

/** Rows in columns for people: numbers to the right; a heading that begins with {@code <} sets its column to the left. */
public final class TextTable {
    private static final String LEFT = "<";

    private final List<String> headings;
    private final List<List<String>> rows = new ArrayList<>();

    public TextTable(String... headings) {
        this.headings = List.of(headings);
    }

    public void row(String... cells) {
        rows.add(List.of(cells));
    }

    public void print(PrintWriter out) {
        print(out, "");
    }

    /** Every line begins with the indent. */
    void print(PrintWriter out, String indent) {
        line(out, indent, headings.stream().map(TextTable::words).toList());
        rows.forEach(row -> line(out, indent, row));
    }

    private void line(PrintWriter out, String indent, List<String> cells) {
        StringBuilder text = new StringBuilder(indent);
        for (int column = 0; column < cells.size(); column++) {
            String cell = cells.get(column);
            String pad = " ".repeat(width(column) - cell.length());
            text.append(column == 0 ? "" : "  ").append(headings.get(column).startsWith(LEFT) ? cell + pad : pad + cell);
        }
        out.println(text.toString().stripTrailing());
    }

    private int width(int column) {
        int width = words(headings.get(column)).length();
        for (List<String> row : rows) {
            width = Math.max(width, row.get(column).length());
        }
        return width;
    }

    private static String words(String heading) {
        return heading.startsWith(LEFT) ? heading.substring(1) : heading;
    }
}
