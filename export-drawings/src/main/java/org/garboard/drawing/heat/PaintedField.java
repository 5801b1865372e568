package org.garboard.drawing.heat;

import java.util.List;
import java.util.function.IntPredicate;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.garboard.craft.Sides;
import org.garboard.geometry.LevelSet;
import org.garboard.geometry.Ring;
import org.garboard.siting.UtilisationMap;

/** One map painted on a plan: its classes one upon another, the line between met and not met, the fields of what governs. */
final class PaintedField {
    /** Finite, and beyond every class. */
    private static final double BEYOND = 1e3;
    /** A line may stray on paper by so much [mm]. */
    private static final double FINE = 0.03;
    /** A field whose number would touch its border gets none [mm]. */
    private static final double ROOM_FOR_NUMBER = 1.7;

    private final UtilisationMap map;
    private final PlanPaper paper;
    private final StringBuilder svg;

    PaintedField(UtilisationMap map, PlanPaper paper, StringBuilder svg) {
        this.map = map;
        this.paper = paper;
        this.svg = svg;
    }

    void paint(Governing governing) {
        for (int number = HeatScale.classes() - 1; number >= 0; number--) {
            double most = number == HeatScale.classes() - 1 ? BEYOND + 1 : HeatScale.most(number);
            fill(level(most), "fill=\"" + HeatScale.colour(number) + "\"");
        }
        for (int number = 1; number <= governing.names().size(); number++) {
            int here = number;
            String field = marked(node -> governing.number(map, node / map.columns(), node % map.columns()) == here);
            fill(field, "fill=\"none\" stroke=\"#fff\" stroke-width=\"0.4\"");
            fill(field, "fill=\"none\" stroke=\"#000\" stroke-width=\"0.15\"");
        }
        String met = level(1);
        fill(met, "fill=\"none\" stroke=\"#fff\" stroke-width=\"0.9\"");
        fill(met, "fill=\"none\" stroke=\"#000\" stroke-width=\"0.45\"");
        for (int number = 1; number <= governing.names().size(); number++) {
            numbers(governing, number);
        }
    }

    private void fill(String path, String look) {
        if (!path.isEmpty()) {
            svg.append("<path d=\"").append(path).append("\" fill-rule=\"evenodd\" ").append(look).append("/>\n");
        }
    }

    private String level(double most) {
        double[] field = new double[map.rows() * map.columns()];
        for (int node = 0; node < field.length; node++) {
            double utilisation = map.utilisation(node / map.columns(), node % map.columns());
            field[node] = Double.isNaN(utilisation) ? BEYOND : Math.min(BEYOND, utilisation) - most;
        }
        return path(field);
    }

    private String marked(IntPredicate in) {
        double[] field = new double[map.rows() * map.columns()];
        for (int node = 0; node < field.length; node++) {
            field[node] = in.test(node) ? -1 : 1;
        }
        return path(field);
    }

    private String path(double[] field) {
        StringBuilder path = new StringBuilder();
        LevelSet level = new LevelSet(field, map.columns(), map.step());
        for (int part = 0; part < level.parts(); part++) {
            for (Ring ring : level.rings(part)) {
                List<Vector2D> points = ring.simplified(FINE / paper.scale()).points();
                for (int sign : signs()) {
                    String command = "M";
                    for (Vector2D point : points) {
                        path.append(command).append(paper.at(map.x(0) + point.getX(), sign * point.getY()));
                        command = "L";
                    }
                    path.append('Z');
                }
            }
        }
        return path.toString();
    }

    private int[] signs() {
        return map.side() == Sides.BOTH ? new int[] {1, -1} : new int[] {map.side() == Sides.PORT ? -1 : 1};
    }

    /** Its number in the middle of the widest place of a check's fields, part by part. */
    private void numbers(Governing governing, int number) {
        int[] room = new int[map.rows() * map.columns()];
        for (int node = 0; node < room.length; node++) {
            room[node] = governing.number(map, node / map.columns(), node % map.columns()) == number ? Integer.MAX_VALUE / 2 : 0;
        }
        spread(room, 1);
        spread(room, -1);
        double least = ROOM_FOR_NUMBER / (map.step() * paper.scale());
        boolean[] taken = new boolean[room.length];
        for (int node = widest(room, taken); node >= 0 && room[node] >= least; node = widest(room, taken)) {
            for (int sign : signs()) {
                svg.append("<text x=\"").append(PlanPaper.number(paper.u(map.x(node / map.columns())))).append("\" y=\"")
                    .append(PlanPaper.number(paper.v(sign * map.y(node % map.columns())) + 0.9)).append("\" class=\"n\">").append(number).append("</text>\n");
            }
            take(room, taken, node);
        }
    }

    /** Steps, straight along rows and columns, to the nearest node that is not of the field. */
    private void spread(int[] room, int way) {
        for (int k = 0; k < room.length; k++) {
            int node = way > 0 ? k : room.length - 1 - k;
            int row = node / map.columns() - way;
            int column = node % map.columns() - way;
            // the centreline is no border where port mirrors starboard, every other end of the grid is
            int before = row < 0 || row >= map.rows() ? 0 : room[row * map.columns() + node % map.columns()];
            int beside = column >= map.columns() ? 0 : column < 0 ? map.side() == Sides.BOTH ? Integer.MAX_VALUE / 2 : 0 : room[node - way];
            room[node] = Math.min(room[node], 1 + Math.min(before, beside));
        }
    }

    private static int widest(int[] room, boolean[] taken) {
        int widest = -1;
        for (int node = 0; node < room.length; node++) {
            if (!taken[node] && room[node] > 0 && (widest < 0 || room[node] > room[widest])) {
                widest = node;
            }
        }
        return widest;
    }

    /** All of the field that hangs together with a node. */
    private void take(int[] room, boolean[] taken, int from) {
        int[] open = new int[room.length];
        int depth = 0;
        open[depth++] = from;
        taken[from] = true;
        while (depth > 0) {
            int node = open[--depth];
            int column = node % map.columns();
            for (int next : new int[] {node - map.columns(), node + map.columns(), column > 0 ? node - 1 : -1, column + 1 < map.columns() ? node + 1 : -1}) {
                if (next >= 0 && next < room.length && room[next] > 0 && !taken[next]) {
                    taken[next] = true;
                    open[depth++] = next;
                }
            }
        }
    }
}
