package org.garboard.drawing.heat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.garboard.siting.UtilisationMap;

/** Which checks govern on a panel, numbered by how much of the bottom each decides over. */
final class Governing {
    /** Of the places measured: less is not numbered (our choice: too small to be found). */
    private static final double LEAST_SHARE = 0.002;
    private static final String REFUSED = "refused wherever it is put";

    private final Map<String, Integer> numbers = new LinkedHashMap<>();
    private final Map<String, Double> shares = new LinkedHashMap<>();

    Governing(List<UtilisationMap> maps) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        int all = 0;
        for (UtilisationMap map : maps) {
            for (int i = 0; i < map.rows(); i++) {
                for (int j = 0; j < map.columns(); j++) {
                    if (!Double.isNaN(map.utilisation(i, j))) {
                        counts.merge(name(map, i, j), 1, Integer::sum);
                        all++;
                    }
                }
            }
        }
        List<String> names = new ArrayList<>(counts.keySet());
        names.sort(Comparator.comparing(counts::get, Comparator.reverseOrder()));
        for (String name : names) {
            double share = counts.get(name) / (double) all;
            if (share >= LEAST_SHARE) {
                numbers.put(name, numbers.size() + 1);
                shares.put(name, share);
            }
        }
    }

    private static String name(UtilisationMap map, int row, int column) {
        int check = map.governing(row, column);
        return check < 0 ? REFUSED : map.checks().get(check);
    }

    /** The number of what governs at a node; 0 where it finds no seat, or where what governs is not numbered. */
    int number(UtilisationMap map, int row, int column) {
        return Double.isNaN(map.utilisation(row, column)) ? 0 : numbers.getOrDefault(name(map, row, column), 0);
    }

    /** Names by number, the first being 1. */
    List<String> names() {
        return List.copyOf(numbers.keySet());
    }

    /** Of the places measured, 0 to 1. */
    double share(String name) {
        return shares.get(name);
    }
}
