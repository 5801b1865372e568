package org.garboard.skin;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.garboard.finding.Bound;
import org.garboard.finding.Figure;
import org.garboard.finding.Finding;
import org.garboard.finding.NotKnown;

/** A hole in planking stays inside one plank, clear of its seams, butts and fastenings. */
public final class PlankingRule {
    private static final Map<PlankLine.Kind, Bound> CLEAR = clear();

    private PlankingRule() {
    }

    /** What the edge of a hole keeps clear of such a line. */
    public static Bound clear(PlankLine.Kind kind) {
        return CLEAR.get(kind);
    }

    private static Map<PlankLine.Kind, Bound> clear() {
        Map<PlankLine.Kind, Bound> clear = new EnumMap<>(PlankLine.Kind.class);
        clear.put(PlankLine.Kind.SEAM, new Bound(20, "mm",
            "our choice, because caulking spreads an edge thinner than that and the plank splits"));
        clear.put(PlankLine.Kind.BUTT, new Bound(100, "mm",
            "our choice, because a butt block reaches about that far to either side"));
        clear.put(PlankLine.Kind.FASTENINGS, new Bound(20, "mm",
            "our choice, because wood splits between a hole and a fastening nearer than that"));
        return Map.copyOf(clear);
    }

    /** "seams". */
    public static String words(PlankLine.Kind kind) {
        return switch (kind) {
            case SEAM -> "seams";
            case BUTT -> "butts";
            case FASTENINGS -> "fastenings";
        };
    }

    /** Level distance from the edge of a hole to the nearest such line [m], below 0 where it cuts one; infinite where there is none, NaN where they are not told. */
    public static double gap(HullSkin skin, PlankLine.Kind kind, double x, double y, double holeDiameter) {
        if (skin.planking().isEmpty()) {
            return Double.NaN;
        }
        double nearest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < skin.planking().get().size(); i++) {
            PlankLine line = skin.planking().get().get(i);
            if (line.kind() == kind) {
                nearest = Math.min(nearest, line.from(x, y));
            }
        }
        return nearest - holeDiameter / 2;
    }

    /**
     * A finding for seams, butts and fastenings in turn; none where the skin is not planked. Distances are taken
     * level, which is never more than along the skin.
     *
     * @param holeDiameter [m]
     */
    public static List<Finding> at(HullSkin skin, double x, double y, double holeDiameter) {
        List<Finding> findings = new ArrayList<>();
        if (skin.material() != SkinMaterial.PLANKED) {
            return findings;
        }
        for (PlankLine.Kind kind : PlankLine.Kind.values()) {
            String name = "hole clear of " + words(kind);
            Bound bound = CLEAR.get(kind);
            if (skin.planking().isEmpty()) {
                findings.add(new NotKnown(name, bound.source(),
                    "The lines of the planking are not told: mark seams, butts and fastenings on the bottom before drilling."));
                continue;
            }
            double gap = skin.planking().get().stream().filter(line -> line.kind() == kind)
                .mapToDouble(line -> line.from(x, y)).min().orElse(Double.POSITIVE_INFINITY) - holeDiameter / 2;
            findings.add(Figure.atLeast(name, gap * 1000, bound,
                "No " + kind.words() + " is near the hole.",
                gap > 0 ? "A " + kind.words() + " is too near the edge of the hole."
                    : "The hole would cut a " + kind.words() + "."));
        }
        return findings;
    }
}
