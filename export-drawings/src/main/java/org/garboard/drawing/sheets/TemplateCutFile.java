package org.garboard.drawing.sheets;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.garboard.cutout.FlatPoint;
import org.garboard.cutout.template.Template;
import org.garboard.cutout.template.Template.Kind;
import org.garboard.cutout.template.Template.Mark;
import org.garboard.cutout.template.Template.Up;
import org.garboard.drawing.Box;
import org.garboard.drawing.Point;
import org.garboard.drawing.dxf.CutDrawing;
import org.garboard.drawing.dxf.CutDrawing.Contour;
import org.garboard.drawing.dxf.CutDrawing.Hole;
import org.garboard.drawing.dxf.CutDrawing.Stroke;
import org.garboard.drawing.dxf.CutDxf;
import org.garboard.drawing.dxf.CutLayer;

/**
 * A template for the machine, in true millimetres from the part's middle: outside up it lies bow to the right and starboard
 * up, inside up bow to the right and port up, seen from aft starboard to the right. Marks lie inside the outline: its own
 * lines or two axes through the middle, an arrow to the bow (on the transom: up), a corner notch to starboard, ticks between
 * which its check length is measured.
 */
public final class TemplateCutFile {
    /** Marks keep clear of outlines and holes [mm]: our choice, so that the tool does not cut them away. */
    private static final double CLEAR = 2;
    private static final double BARB = 0.04;
    private static final double NOTCH = 0.05;
    private static final double TICK = 4;
    /** Pieces in which a mark is looked at to see where it lies clear [mm]. */
    private static final double PIECE = 0.25;

    private final Template template;
    private final CutOutline outline;
    private final List<Contour> contours = new ArrayList<>();
    private final List<Hole> holes = new ArrayList<>();
    private final List<Stroke> strokes = new ArrayList<>();

    private TemplateCutFile(Template template) {
        this.template = template;
        outline = new CutOutline(laid(template.outline()));
        contours.add(new Contour(CutLayer.CUT_OUTER, outline.corners()));
        for (List<FlatPoint> opening : template.openings()) {
            contours.add(new Contour(CutLayer.CUT_INNER, laid(opening)));
        }
        for (Template.RoundHole hole : template.holes()) {
            holes.add(new Hole(CutLayer.DRILL, point(hole.centre()), 1000 * hole.diameter()));
        }
    }

    /** Name without folder: "hull-cutout-outside-up_mm_1to1.dxf". */
    public static String fileName(Template template) {
        return template.name() + "-" + template.up().word() + "_mm_1to1.dxf";
    }

    /** The whole file; the same template gives the same bytes. */
    public static byte[] dxf(Template template) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            CutDxf.write(drawing(template), out);
        } catch (IOException e) {
            throw new UncheckedIOException("a cut file could not be written to memory", e);
        }
        return out.toByteArray();
    }

    static CutDrawing drawing(Template template) {
        TemplateCutFile file = new TemplateCutFile(template);
        file.lines();
        file.arrow();
        file.notch();
        file.ticks();
        return new CutDrawing(file.contours, file.holes, file.strokes);
    }

    /** A line of it as it lies in the file [mm]. */
    static List<Point> onPaper(Template template, Mark mark) {
        return new TemplateCutFile(template).laid(mark.line());
    }

    private List<Point> laid(List<FlatPoint> line) {
        return CutOutline.apart(line.stream().map(this::point).toList());
    }

    private Point point(FlatPoint place) {
        return switch (template.up()) {
            case OUTSIDE -> new Point(-1000 * place.u(), 1000 * place.v());
            case INSIDE -> new Point(-1000 * place.u(), -1000 * place.v());
            case AFT, WALL -> new Point(1000 * place.u(), 1000 * place.v());
        };
    }

    /** So far towards the bow, or up the transom, and so far to starboard [mm]. */
    private Point towards(double ahead, double starboard) {
        return switch (template.up()) {
            case OUTSIDE -> new Point(ahead, starboard);
            case INSIDE -> new Point(ahead, -starboard);
            case AFT -> new Point(starboard, ahead);
            case WALL -> new Point(-starboard, ahead);
        };
    }

    private double reachAhead() {
        return template.up() == Up.AFT || template.up() == Up.WALL ? outline.extents().top() : outline.extents().right();
    }

    private double reachStarboard() {
        return switch (template.up()) {
            case OUTSIDE -> outline.extents().top();
            case INSIDE -> -outline.extents().bottom();
            case AFT -> outline.extents().right();
            case WALL -> -outline.extents().left();
        };
    }

    private void lines() {
        template.marks().forEach(this::mark);
        if (template.marks().stream().allMatch(mark -> mark.kind() == Kind.SCRIBED)) {
            Box box = outline.extents();
            clear(List.of(new Point(box.left(), 0), new Point(box.right(), 0)));
            clear(List.of(new Point(0, box.bottom()), new Point(0, box.top())));
        }
    }

    /** What is scribed stands as it is; other lines only where nothing is cut. */
    private void mark(Mark mark) {
        List<Point> line = mark.line().stream().map(this::point).toList();
        if (mark.kind() != Kind.SCRIBED) {
            clear(line);
            return;
        }
        for (int i = 0; i + 1 < line.size(); i++) {
            strokes.add(new Stroke(CutLayer.MARK, line.get(i), line.get(i + 1)));
        }
    }

    /** From the middle ahead, as far out as it is clear. */
    private void arrow() {
        double barb = BARB * outline.extents().width();
        for (double share = 0.75; share > 0; share -= 0.05) {
            double out = share * reachAhead();
            Point tip = towards(out, 0);
            Point starboard = towards(out - barb, barb / 2);
            Point port = towards(out - barb, -barb / 2);
            if (isClear(tip) && isClear(starboard) && isClear(port) && isClear(towards(out - barb, 0))) {
                strokes.add(new Stroke(CutLayer.MARK, tip, starboard));
                strokes.add(new Stroke(CutLayer.MARK, tip, port));
                return;
            }
        }
    }

    /** A small right-angled triangle in the forward starboard quarter, half way out. */
    private void notch() {
        double leg = NOTCH * Math.min(outline.extents().height(), outline.extents().width());
        double ahead = 0.36 * reachAhead();
        double out = 0.62 * reachStarboard();
        Point corner = towards(ahead, out);
        Point aft = towards(ahead - leg, out);
        Point in = towards(ahead, out - leg);
        strokes.add(new Stroke(CutLayer.MARK, corner, aft));
        strokes.add(new Stroke(CutLayer.MARK, aft, in));
        strokes.add(new Stroke(CutLayer.MARK, in, corner));
    }

    /** At the two corners that lie farthest apart. */
    private void ticks() {
        List<Point> corners = outline.corners();
        Point one = corners.get(0);
        Point other = corners.get(1);
        for (Point from : corners) {
            for (Point to : corners) {
                if (from.distanceTo(to) > one.distanceTo(other) + 1e-9) {
                    one = from;
                    other = to;
                }
            }
        }
        if (Math.max(Math.abs(one.y()), Math.abs(other.y())) < CLEAR) {
            // from end to end along the line that is there already
            return;
        }
        strokes.add(new Stroke(CutLayer.MARK, one.towards(one.directionTo(other), CLEAR), one.towards(one.directionTo(other), CLEAR + TICK)));
        strokes.add(new Stroke(CutLayer.MARK, other.towards(other.directionTo(one), CLEAR), other.towards(other.directionTo(one), CLEAR + TICK)));
    }

    /** The parts of a line that lie inside the outline and clear of it and of all holes, but short bits. */
    private void clear(List<Point> line) {
        List<Point> run = new ArrayList<>();
        for (int i = 0; i + 1 < line.size(); i++) {
            Point from = line.get(i);
            Point to = line.get(i + 1);
            int pieces = Math.max(1, (int) Math.ceil(from.distanceTo(to) / PIECE));
            for (int k = i == 0 ? 0 : 1; k <= pieces; k++) {
                double share = (double) k / pieces;
                Point at = new Point(from.x() + share * (to.x() - from.x()), from.y() + share * (to.y() - from.y()));
                if (!isClear(at)) {
                    add(run);
                    run.clear();
                } else if (run.size() > 1 && k > 1) {
                    run.set(run.size() - 1, at);
                } else {
                    run.add(at);
                }
            }
        }
        add(run);
    }

    private void add(List<Point> run) {
        if (run.size() > 1 && run.get(0).distanceTo(run.get(run.size() - 1)) > TICK) {
            for (int i = 0; i + 1 < run.size(); i++) {
                strokes.add(new Stroke(CutLayer.MARK, run.get(i), run.get(i + 1)));
            }
        }
    }

    private boolean isClear(Point at) {
        for (Contour contour : contours) {
            boolean within = inside(contour.corners(), at);
            if (within != (contour.layer() == CutLayer.CUT_OUTER) || new CutOutline(contour.corners()).distance(at) < CLEAR) {
                return false;
            }
        }
        return holes.stream().noneMatch(hole -> hole.centre().distanceTo(at) < hole.diameter() / 2 + CLEAR);
    }

    private static boolean inside(List<Point> ring, Point at) {
        boolean inside = false;
        for (int i = 0; i < ring.size(); i++) {
            Point a = ring.get(i);
            Point b = ring.get((i + 1) % ring.size());
            if (a.y() > at.y() != b.y() > at.y() && at.x() < a.x() + (at.y() - a.y()) / (b.y() - a.y()) * (b.x() - a.x())) {
                inside = !inside;
            }
        }
        return inside;
    }
}
