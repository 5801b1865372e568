package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.List;
import org.garboard.cutout.Pocket;
import org.garboard.cutout.template.Template;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Line;
import org.garboard.drawing.Point;
import org.garboard.drawing.dxf.CutDrawing;
import org.garboard.drawing.dxf.CutDrawing.Contour;
import org.garboard.drawing.dxf.CutDrawing.Hole;
import org.garboard.drawing.template.TemplateShape;
import org.garboard.job.DrawingWish;

/** Sheet 3: what is cut, with the marks of its cut file, to be printed at true size. */
final class PaperTemplate {
    /** Chords of a hole's circle: of 60 mm across they stray 0.01 mm. */
    private static final int CHORDS = 120;

    private PaperTemplate() {
    }

    static TemplateShape of(SheetTask task, Pocket pocket) {
        CutOutline outline = CutOutline.of(pocket);
        return shape(task, "pocket opening", PocketCutFile.of(pocket),
                List.of(checked(task, "length over all", outline.extents().width()),
                        checked(task, "width over all", outline.extents().height()),
                        checked(task, "diagonal, forward starboard to after port tick", outline.diagonalFromStarboard()),
                        checked(task, "diagonal, forward port to after starboard tick", outline.diagonalFromPort())));
    }

    static TemplateShape of(SheetTask task, Template template) {
        CutOutline outline = new CutOutline(CutOutline.flat(template.outline()));
        return shape(task, template.name().replace('-', ' '), TemplateCutFile.drawing(template),
                List.of(checked(task, "length over all", outline.extents().width()),
                        checked(task, "width over all", outline.extents().height()),
                        checked(task, "between the points farthest apart", 1000 * template.checkLength())));
    }

    private static TemplateShape shape(SheetTask task, String part, CutDrawing cut, List<String> checks) {
        DrawingWish wish = task.drawing();
        List<Line> strokes = new ArrayList<>();
        cut.strokes().forEach(stroke -> strokes.add(new Line(Layer.MARK, stroke.from(), stroke.to())));
        for (Contour contour : cut.contours().subList(1, cut.contours().size())) {
            ring(contour.corners(), strokes);
        }
        for (Hole hole : cut.holes()) {
            List<Point> round = new ArrayList<>();
            for (int i = 0; i < CHORDS; i++) {
                round.add(hole.centre().towards(360.0 * i / CHORDS, hole.diameter() / 2));
            }
            ring(round, strokes);
        }
        return new TemplateShape("Template: " + part + ", " + task.boat(),
                part + ", " + task.boat() + ", " + wish.number() + " sheet 3, revision " + wish.revision() + ", " + wish.date(),
                cut.contours().get(0).corners(), strokes, checks);
    }

    private static void ring(List<Point> corners, List<Line> strokes) {
        for (int i = 0; i < corners.size(); i++) {
            strokes.add(new Line(Layer.CUT, corners.get(i), corners.get((i + 1) % corners.size())));
        }
    }

    private static String checked(SheetTask task, String what, double mm) {
        return what + ": " + task.figures().bench(mm / 1000) + "   measured: __________";
    }
}
