package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.garboard.drawing.Anchor;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.LetterWidths;
import org.garboard.drawing.Point;
import org.garboard.drawing.Table;
import org.garboard.drawing.Text;
import org.garboard.drawing.Wrap;
import org.garboard.drawing.layout.Cluster;
import org.garboard.drawing.layout.Lettering;
import org.garboard.drawing.layout.Notes;
import org.garboard.drawing.layout.Piece;

/** Tables under a heading whose columns are as wide as their cells want, or narrower; no word is broken. */
public final class Columns {
    /** Columns that are filled in by hand, in letter heights. */
    private static final double BY_HAND = 8;
    /** A heading may run so wide over a narrow table, in its letter heights. */
    private static final double NARROWEST_HEADING = 24;

    private Columns() {
    }

    /** As a piece that may run on to another page between its rows; the first row heads each part. */
    public static Piece piece(String heading, List<List<String>> rows, Lettering lettering, List<Piece.Corner> corners) {
        return new Piece(shapes(heading, rows, lettering), corners, Optional.of(new Piece.Rows(rows.size() - 1, (from, before) -> {
            List<List<String>> part = new ArrayList<>(List.of(rows.get(0)));
            part.addAll(rows.subList(from + 1, before + 1));
            return piece(from > 0 ? Notes.continued(heading) : heading, part, lettering, corners);
        })));
    }

    /** The widest shape first. */
    static List<Cluster> shapes(String heading, List<List<String>> rows, Lettering lettering) {
        return Stream.of(40.0, 30.0, 22.0, 16.0, 13.0, 10.0, 7.0)
                .map(letters -> headed(heading, fitted(rows, letters * lettering.tables(), lettering), lettering)).toList();
    }

    private static Cluster headed(String heading, Table table, Lettering lettering) {
        List<Entity> shown = new ArrayList<>(List.of(table));
        List<String> lines = Wrap.lines(heading, Math.max(table.width(), NARROWEST_HEADING * lettering.headings()), lettering.headings());
        for (int i = 0; i < lines.size(); i++) {
            double y = (0.6 + 1.5 * (lines.size() - 1 - i)) * lettering.headings();
            shown.add(Text.level(Layer.TEXT, lines.get(i), new Point(0, y), lettering.headings(), Anchor.LEFT));
        }
        return Cluster.of(shown);
    }

    private static Table fitted(List<List<String>> rows, double widest, Lettering lettering) {
        List<Double> widths = new ArrayList<>();
        for (int column = 0; column < rows.get(0).size(); column++) {
            int here = column;
            double most = Math.max(widest, rows.stream().flatMap(row -> Stream.of(row.get(here).split("\\s+")))
                    .mapToDouble(word -> LetterWidths.extent(word, lettering.tables())).max().orElse(0));
            double width = 0;
            boolean blank = true;
            for (int row = 0; row < rows.size(); row++) {
                blank &= row == 0 || rows.get(row).get(column).isBlank();
                for (String line : Wrap.lines(rows.get(row).get(column), most, lettering.tables())) {
                    width = Math.max(width, Table.columnFor(line, lettering.tables()));
                }
            }
            widths.add(blank ? Math.max(width, BY_HAND * lettering.tables()) : width);
        }
        return Table.wrapped(new Point(0, 0), widths, rows, lettering.tables());
    }
}
