package org.garboard.craft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.garboard.geometry.CubicSpline;
import org.garboard.geometry.Quad;
import org.garboard.hull.Hull;
import org.garboard.offsets.HullOffsets;
import org.garboard.offsets.StrakeEdges;

/**
 * Lifting strakes that the offsets give, laid on the skin afterwards: their edges are curves in plan through the given
 * points, exactly, from the first station that has them to the last. The skin is drawn as if they were not there, so that a
 * strake that begins or ends between stations puts no ripple into it.
 */
final class TableStrakes {
    /** Pieces so long stand for the curve: a strake that curves at 20 m radius strays 0.3 mm [m]; our choice. */
    private static final double STEP = 0.2;

    private TableStrakes() {
    }

    static List<LaidFeature> of(HullOffsets offsets, Hull hull) {
        return offsets.strakes().stream().map(each -> laid(each, hull)).toList();
    }

    private static LaidFeature laid(StrakeEdges edges, Hull hull) {
        List<Quad> cover = new ArrayList<>();
        List<StrakeEdges.Cut> piece = new ArrayList<>();
        for (StrakeEdges.Cut cut : edges.cuts()) {
            // two stations at one place are a step, which breaks the strake as it breaks the skin
            if (!piece.isEmpty() && !(cut.x() > piece.get(piece.size() - 1).x())) {
                cover(piece, cover);
                piece.clear();
            }
            piece.add(cut);
        }
        cover(piece, cover);
        return new LaidFeature(edges.name(), Strake.KIND, Sides.BOTH, cover, height(edges, hull));
    }

    /** Its corner below the skin, the most of all stations; none where there is no skin over it. */
    private static Optional<Double> height(StrakeEdges edges, Hull hull) {
        return edges.cuts().stream().map(cut -> hull.height(cut.x(), cut.outerY()) - cut.outerZ()).filter(depth -> depth >= 0)
            .max(Double::compare);
    }

    private static void cover(List<StrakeEdges.Cut> cuts, List<Quad> cover) {
        if (cuts.size() < 2) {
            return;
        }
        double[] x = cuts.stream().mapToDouble(StrakeEdges.Cut::x).toArray();
        CubicSpline inner = CubicSpline.through(x, cuts.stream().mapToDouble(StrakeEdges.Cut::innerY).toArray());
        CubicSpline outer = CubicSpline.through(x, cuts.stream().mapToDouble(StrakeEdges.Cut::outerY).toArray());
        for (int i = 1; i < x.length; i++) {
            int pieces = (int) Math.max(1, Math.ceil((x[i] - x[i - 1]) / STEP));
            for (int k = 0; k < pieces; k++) {
                double from = x[i - 1] + (x[i] - x[i - 1]) * k / pieces;
                double to = k == pieces - 1 ? x[i] : x[i - 1] + (x[i] - x[i - 1]) * (k + 1) / pieces;
                cover.add(Quad.of(from, inner.value(from), to, inner.value(to), to, outer.value(to), from, outer.value(from)));
            }
        }
    }
}
