package org.garboard.offsets;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The rows of a lifting strake: its inner edge, where its face leaves the skin, and its outer edge, the corner that
 * stands out of it. A strake may begin and end where it likes: its rows are filled from the station where it begins to
 * the station where it ends. It lies on the skin and is no line of it, so the skin is drawn as if it were not there.
 *
 * @param name the strake's, without "inner" and "outer"
 * @param rows indices of inner height, inner half-breadth, outer height, outer half-breadth; -1 for one that is missing
 */
public record StrakeRows(String name, List<Integer> rows) {
    static final int INNER_HEIGHT = 0;
    static final int INNER_BREADTH = 1;
    static final int OUTER_HEIGHT = 2;
    static final int OUTER_BREADTH = 3;

    public StrakeRows {
        rows = List.copyOf(rows);
    }

    /** Of a table, in the order of its rows. */
    static List<StrakeRows> of(OffsetTable table) {
        Map<String, List<Integer>> found = new LinkedHashMap<>();
        Map<String, String> names = new LinkedHashMap<>();
        for (int i = 0; i < table.lines().size(); i++) {
            TableLine line = table.lines().get(i);
            if (line.kind() == LineKind.STRAKE_INNER || line.kind() == LineKind.STRAKE_OUTER) {
                String name = line.name().replaceFirst("(?i)[ ,]+(inner|outer)( edge)?$", "");
                String key = name.toLowerCase(Locale.ROOT);
                names.putIfAbsent(key, name);
                int place = (line.kind() == LineKind.STRAKE_INNER ? INNER_HEIGHT : OUTER_HEIGHT)
                    + (line.measure() == Measure.HEIGHT ? 0 : 1);
                List<Integer> rows = found.computeIfAbsent(key, each -> new ArrayList<>(List.of(-1, -1, -1, -1)));
                if (rows.get(place) < 0) {
                    rows.set(place, i);
                }
            }
        }
        return found.entrySet().stream().map(each -> new StrakeRows(names.get(each.getKey()), each.getValue())).toList();
    }

    /** Its edges from forward aft; none where a row is missing. */
    Optional<StrakeEdges> edges(OffsetTable table) {
        if (rows.contains(-1)) {
            return Optional.empty();
        }
        List<StrakeEdges.Cut> cuts = new ArrayList<>();
        for (int station = 0; station < table.stations().size(); station++) {
            double[] at = new double[rows.size()];
            for (int row = 0; row < at.length; row++) {
                at[row] = table.lines().get(rows.get(row)).at(station).orElse(Double.NaN);
            }
            if (at[0] + at[1] + at[2] + at[3] == at[0] + at[1] + at[2] + at[3]) {
                cuts.add(new StrakeEdges.Cut(table.stations().get(station).x(), at[INNER_BREADTH], at[INNER_HEIGHT],
                    at[OUTER_BREADTH], at[OUTER_HEIGHT]));
            }
        }
        return Optional.of(new StrakeEdges(name, cuts));
    }
}
