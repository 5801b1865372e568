package org.garboard.takeoff;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.garboard.offsets.KeelRows;
import org.garboard.offsets.LengthWords;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.StrakeEdges;

/** What was measured that is no skin: the bottom of a keel below it, and lifting strakes. Both keep the x they were measured at. */
final class BesideSkin {
    private final TakeOff takeOff;
    private final LengthWords words;
    private final Optional<MarkedLine> bottom;
    private final MarkedLine middle;
    private final Map<String, Strake> strakes = new LinkedHashMap<>();

    /** The two marks of a strake, both measured at the same stations. */
    private record Strake(String name, MarkedLine inner, MarkedLine outer) {
    }

    /** @param lines all that are marked, without fault */
    BesideSkin(TakeOff takeOff, List<MarkedLine> lines) {
        this.takeOff = takeOff;
        this.words = new LengthWords(takeOff.leastCount());
        this.bottom = MarkedLine.first(lines, LineKind.KEEL_BOTTOM);
        this.middle = MarkedLine.middle(lines).orElseThrow();
        for (MarkedLine inner : lines) {
            String name = strakeName(inner);
            lines.stream().filter(line -> inner.kind() == LineKind.STRAKE_INNER && line.kind() == LineKind.STRAKE_OUTER
                && strakeName(line).equalsIgnoreCase(name)).findFirst()
                .ifPresent(outer -> strakes.put(name.toLowerCase(Locale.ROOT), new Strake(name, inner, outer)));
        }
    }

    /** Its mark without "inner" and "outer". */
    static String strakeName(MarkedLine line) {
        return line.name().replaceFirst("(?i)[ ,]+(inner|outer)( edge)?$", "");
    }

    /** The keel below the skin; as broad at its bottom as both its corners stand apart, where both were measured. */
    Optional<KeelRows> keel(PlacedPoints placed) {
        return bottom.map(line -> new KeelRows(line.name(), line.stations().stream().filter(points -> !points.isEmpty())
            .map(points -> new KeelRows.Cut(mean(points, placed)[0], mean(points, placed)[2],
                points.size() == 2 ? OptionalDouble.of(mean(points, placed)[1]) : OptionalDouble.empty()))
            .sorted(Comparator.comparingDouble(KeelRows.Cut::x)).toList()));
    }

    List<StrakeEdges> strakes(PlacedPoints placed) {
        return strakes.values().stream().map(strake -> new StrakeEdges(strake.name(),
            IntStream.range(0, takeOff.stations().size()).filter(j -> !strake.inner().stations().get(j).isEmpty()).mapToObj(j -> {
                double[] inner = mean(strake.inner().stations().get(j), placed);
                double[] outer = mean(strake.outer().stations().get(j), placed);
                return new StrakeEdges.Cut(inner[0], inner[1], inner[2], outer[1], outer[2]);
            }).sorted(Comparator.comparingDouble(StrakeEdges.Cut::x)).toList())).toList();
    }

    /** What cannot be so once heel and trim are out. */
    List<TakeOffFault> faults(PlacedPoints placed) {
        List<TakeOffFault> faults = new ArrayList<>();
        bottom.ifPresent(line -> below(line, placed, faults));
        strakes.values().forEach(strake -> across(strake, placed, faults));
        return faults;
    }

    private void below(MarkedLine line, PlacedPoints placed, List<TakeOffFault> faults) {
        for (int j = 0; j < takeOff.stations().size(); j++) {
            List<Integer> points = line.stations().get(j);
            double above = points.isEmpty() ? 0 : mean(points, placed)[2] - mean(middle.stations().get(j), placed)[2];
            if (above > takeOff.leastCount()) {
                faults.add(TakeOffFault.at(row(points), Seen.HEIGHT, line.name() + " at station " + takeOff.stations().get(j).name() + " lies "
                    + words.say(above) + " above " + middle.name() + "; the keel hangs below it: see which was misread"));
            }
        }
    }

    private void across(Strake strake, PlacedPoints placed, List<TakeOffFault> faults) {
        for (int j = 0; j < takeOff.stations().size(); j++) {
            if (strake.inner().stations().get(j).isEmpty()) {
                continue;
            }
            double inner = mean(strake.inner().stations().get(j), placed)[1];
            double outer = mean(strake.outer().stations().get(j), placed)[1];
            if (!(outer > inner)) {
                faults.add(TakeOffFault.at(row(strake.outer().stations().get(j)), Seen.OUT, strake.outer().name() + " is not outboard of "
                    + strake.inner().name() + " (" + words.say(outer) + " and " + words.say(inner) + " from the centreline)"));
            }
            for (int i = 0; i < takeOff.points().size(); i++) {
                TakenPoint point = takeOff.points().get(i);
                if (point.station() == j && point.mark().isOnSkin() && placed.measuredY(i) > inner + takeOff.leastCount()
                        && placed.measuredY(i) < outer - takeOff.leastCount() && isNearStrake(i, strake, j, placed)) {
                    faults.add(TakeOffFault.at(point.row(), Seen.OUT, "this point lies between the edges of " + strake.name() + " ("
                        + words.say(inner) + " and " + words.say(outer) + " from the centreline): it reads the strake and not the skin;"
                        + " leave it out"));
                }
            }
        }
    }

    /** A side may stand over a strake far above it; between its edges in height too, by its own breadth more, is on it. */
    private boolean isNearStrake(int point, Strake strake, int station, PlacedPoints placed) {
        double[] inner = mean(strake.inner().stations().get(station), placed);
        double[] outer = mean(strake.outer().stations().get(station), placed);
        double breadth = Math.hypot(outer[1] - inner[1], outer[2] - inner[2]);
        double z = placed.measuredZ(point);
        return z > Math.min(inner[2], outer[2]) - breadth && z < Math.max(inner[2], outer[2]) + breadth;
    }

    /** {x, half-breadth, z} as measured. */
    private static double[] mean(List<Integer> points, PlacedPoints placed) {
        return new double[] {points.stream().mapToDouble(placed::x).average().orElseThrow(),
            points.stream().mapToDouble(placed::measuredY).average().orElseThrow(),
            points.stream().mapToDouble(placed::measuredZ).average().orElseThrow()};
    }

    private int row(List<Integer> points) {
        return takeOff.points().get(points.get(0)).row();
    }
}
