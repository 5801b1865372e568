package org.garboard.drawing.heat;

import org.garboard.craft.Sides;
import org.garboard.siting.UtilisationMap;

/** A map of one column or one row: a strip along the keel line, or along the lower edge of the transom. */
final class PaintedStrip {
    /** Breadth on paper [mm]. */
    private static final double BROAD = 4;
    private static final double ROOM_FOR_NUMBER = 3;

    private final UtilisationMap map;
    private final PlanPaper paper;
    private final StringBuilder svg;

    PaintedStrip(UtilisationMap map, PlanPaper paper, StringBuilder svg) {
        this.map = map;
        this.paper = paper;
        this.svg = svg;
    }

    static boolean isStrip(UtilisationMap map) {
        return map.rows() == 1 || map.columns() == 1;
    }

    void paint(Governing governing) {
        int count = Math.max(map.rows(), map.columns());
        for (int from = 0; from < count;) {
            int to = from;
            while (to + 1 < count && colour(to + 1) == colour(from) && number(governing, to + 1) == number(governing, from)) {
                to++;
            }
            if (colour(from) >= 0) {
                run(governing, from, to);
            }
            from = to + 1;
        }
    }

    /** -1 where there is no seat. */
    private int colour(int k) {
        double utilisation = map.columns() == 1 ? map.utilisation(k, 0) : map.utilisation(0, k);
        return Double.isNaN(utilisation) ? -1 : HeatScale.classOf(utilisation);
    }

    private int number(Governing governing, int k) {
        return map.columns() == 1 ? governing.number(map, k, 0) : governing.number(map, 0, k);
    }

    private void run(Governing governing, int from, int to) {
        double half = map.step() / 2;
        if (map.columns() == 1) {
            rectangle(governing, from, paper.u(map.x(to) + half), paper.u(map.x(from) - half), paper.v(0) - BROAD / 2, paper.v(0) + BROAD / 2);
            return;
        }
        double u = paper.u(map.x(0));
        for (int sign : map.side() == Sides.BOTH ? new int[] {1, -1} : new int[] {map.side() == Sides.PORT ? -1 : 1}) {
            double one = paper.v(sign * Math.max(0, map.y(from) - half));
            double other = paper.v(sign * (map.y(to) + half));
            rectangle(governing, from, u - BROAD, u, Math.min(one, other), Math.max(one, other));
        }
    }

    private void rectangle(Governing governing, int at, double left, double right, double top, double bottom) {
        svg.append("<rect x=\"").append(PlanPaper.number(left)).append("\" y=\"").append(PlanPaper.number(top)).append("\" width=\"")
            .append(PlanPaper.number(right - left)).append("\" height=\"").append(PlanPaper.number(bottom - top)).append("\" fill=\"")
            .append(HeatScale.colour(colour(at))).append("\" stroke=\"#000\" stroke-width=\"0.12\"/>\n");
        if (number(governing, at) > 0 && Math.min(right - left, bottom - top) >= ROOM_FOR_NUMBER) {
            svg.append("<text x=\"").append(PlanPaper.number((left + right) / 2)).append("\" y=\"").append(PlanPaper.number((top + bottom) / 2 + 0.9))
                .append("\" class=\"n\">").append(number(governing, at)).append("</text>\n");
        }
    }
}
