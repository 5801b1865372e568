package org.garboard.drawing.sheets;

import java.util.List;
import org.garboard.cutout.Pocket;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Line;
import org.garboard.drawing.dxf.CutDrawing;
import org.garboard.drawing.template.TemplateShape;
import org.garboard.job.DrawingWish;

/** Sheet 3: the pocket's developed opening with the marks of its cut file, to be printed at true size. */
final class PocketTemplate {
    private PocketTemplate() {
    }

    static TemplateShape of(SheetTask task, Pocket pocket) {
        CutDrawing cut = PocketCutFile.of(pocket);
        CutOutline outline = CutOutline.of(pocket);
        DrawingWish wish = task.drawing();
        return new TemplateShape("Template: pocket opening, " + task.boat(),
                task.boat() + ", " + wish.number() + " sheet 3, revision " + wish.revision() + ", " + wish.date(),
                cut.contours().get(0).corners(),
                cut.strokes().stream().map(stroke -> new Line(Layer.MARK, stroke.from(), stroke.to())).toList(),
                List.of(checked(task, "length over all", outline.extents().width()),
                        checked(task, "width over all", outline.extents().height()),
                        checked(task, "diagonal, forward starboard to after port tick", outline.diagonalFromStarboard()),
                        checked(task, "diagonal, forward port to after starboard tick", outline.diagonalFromPort())));
    }

    private static String checked(SheetTask task, String what, double mm) {
        return what + ": " + task.figures().bench(mm / 1000) + "   measured: __________";
    }
}
