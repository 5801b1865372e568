package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.List;
import org.garboard.cutout.Pocket;
import org.garboard.cutout.template.Template;
import org.garboard.cutout.template.Template.Kind;
import org.garboard.cutout.template.Template.Mark;
import org.garboard.drawing.Anchor;
import org.garboard.drawing.Box;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Line;
import org.garboard.drawing.Point;
import org.garboard.drawing.Text;
import org.garboard.drawing.dxf.CutDrawing;
import org.garboard.drawing.dxf.CutDrawing.Contour;
import org.garboard.drawing.dxf.CutDrawing.Hole;
import org.garboard.drawing.template.NamedLine;
import org.garboard.drawing.template.TemplateLay;
import org.garboard.drawing.template.TemplateShape;
import org.garboard.job.DrawingWish;
import org.garboard.mount.pocket.PocketMake;
import org.garboard.siting.Site;
import org.garboard.units.FixedDecimal;

/** Sheet 3: what is cut, with the marks of its cut file, to be printed at true size. */
final class PaperTemplate {
    /** Chords of a hole's circle: of 60 mm across they stray 0.01 mm. */
    private static final int CHORDS = 120;
    /** Less stretch goes unsaid [m]: it is printed as nothing. */
    private static final double SHOWN = 5e-6;
    /** Height of a letter [mm], and how far along its line it stands; our choice. */
    private static final double LETTER = 3.5;
    private static final double LETTERED = 0.94;
    /** Middle of a number from its mark, whose tick is 5 mm long [mm]: our choice. */
    private static final double BEYOND_TICK = 9;

    private static final String CUT = "CUT HERE";

    private PaperTemplate() {
    }

    static TemplateShape of(SheetTask task, Pocket pocket) {
        CutOutline outline = CutOutline.of(pocket);
        CutOutline edge = CutOutline.finishedEdge(pocket);
        return shape(task, "pocket opening", TemplateLay.ON_HULL, PocketCutFile.of(pocket), numbers(PocketCutFile.marks(pocket)), names(pocket),
                List.of(checked(task, "length over all", outline.extents().width()),
                        checked(task, "width over all", outline.extents().height()),
                        checked(task, "diagonal, tick 1 (forward starboard) to tick 4 (after port)", edge.diagonalFromStarboard()),
                        checked(task, "diagonal, tick 2 (forward port) to tick 3 (after starboard)", edge.diagonalFromPort())));
    }

    private static List<NamedLine> names(Pocket pocket) {
        List<Point> edge = CutOutline.finishedEdge(pocket).corners();
        if (!pocket.details().hullCut().isEmpty()) {
            return List.of(new NamedLine(CUT, CutOutline.of(pocket).corners()), new NamedLine("FINISHED EDGE, do not cut", edge));
        }
        boolean cutNotKnown = pocket.details().make().into() == PocketMake.Into.EXISTING_BOAT && !pocket.details().outlineOnly();
        return List.of(new NamedLine(cutNotKnown ? "FINISHED EDGE, hull cut NOT KNOWN" : "FINISHED EDGE", edge));
    }

    /** A ring between the end of a tray's taper and the hull cut. */
    private static List<NamedLine> names(Template template) {
        return template.name().equals("taper-end") ? List.of(new NamedLine("END OF TAPER", CutOutline.flat(template.outline())),
                new NamedLine(CUT, CutOutline.flat(template.openings().get(0)))) : List.of();
    }

    /** Numbers of sheet 2's marks, each beyond the inner end of its tick. */
    private static List<Text> numbers(List<Point> marks) {
        Point middle = Box.around(marks).centre();
        List<Text> numbers = new ArrayList<>();
        for (Point mark : marks) {
            numbers.add(Text.centred(Layer.TEXT, String.valueOf(numbers.size() + 1), mark.towards(mark.directionTo(middle), BEYOND_TICK), LETTER, 0));
        }
        return numbers;
    }

    static TemplateShape of(SheetTask task, Template template) {
        CutOutline outline = new CutOutline(CutOutline.flat(template.outline()));
        List<String> checks = new ArrayList<>(List.of(checked(task, "length over all", outline.extents().width()),
                checked(task, "width over all", outline.extents().height()),
                checked(task, "between the points farthest apart", 1000 * template.checkLength())));
        if (template.stretch() > SHOWN) {
            checks.add("laid flat from skin that bends both ways it is out by at most " + FixedDecimal.format(1000 * template.stretch(), 2) + " mm");
        }
        List<Text> letters = new ArrayList<>();
        for (Mark mark : template.marks()) {
            String words = words(task, mark.kind());
            if (!words.isEmpty()) {
                String letter = String.valueOf((char) ('a' + letters.size()));
                letters.add(letter(letter, TemplateCutFile.onPaper(template, mark)));
                checks.add("line " + letter + ": " + words);
            }
        }
        return shape(task, template.name().replace('-', ' '), lay(template), TemplateCutFile.drawing(template), letters, names(template), checks);
    }

    private static TemplateLay lay(Template template) {
        return switch (template.up()) {
            case INSIDE -> TemplateLay.IN_HULL;
            case AFT -> TemplateLay.ON_TRANSOM;
            case WALL -> TemplateLay.ROUND_WALL;
            case OUTSIDE -> template.marks().stream().anyMatch(mark -> mark.kind() == Kind.STATION) ? TemplateLay.ON_HULL : TemplateLay.ON_BLANK;
        };
    }

    private static String words(SheetTask task, Kind kind) {
        Site site = task.record().advised().orElseThrow().sites().get(0);
        return switch (kind) {
            case SCRIBED -> "";
            case FORE_AND_AFT -> "fore and aft, plumb over " + task.figures().length(Math.abs(site.y())) + (site.y() < 0 ? " to port" : " to starboard")
                + " of the centreline";
            case STATION -> "athwart, plumb over the station " + task.figures().length(task.fromAfterEnd(site.x())) + " forward of the " + task.afterEnd();
            case TRANSOM_EDGE -> "lower edge of the transom";
            case FACE_LEVEL -> "level of the transducer's face";
            case PLUMB -> "plumb, through the middle";
        };
    }

    /** Beside a line, short of its end. */
    private static Text letter(String letter, List<Point> line) {
        double along = LETTERED * (line.size() - 1);
        int before = (int) along;
        Point from = line.get(before);
        Point to = line.get(before + 1);
        Point at = new Point(from.x() + (along - before) * (to.x() - from.x()), from.y() + (along - before) * (to.y() - from.y()));
        return Text.level(Layer.TEXT, letter, at.movedBy(1, 1), LETTER, Anchor.LEFT);
    }

    private static TemplateShape shape(SheetTask task, String part, TemplateLay lay, CutDrawing cut, List<Text> letters, List<NamedLine> named, List<String> checks) {
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
        return new TemplateShape("Template: " + part + ", " + task.boat(), lay,
                part + ", " + task.boat() + ", " + wish.number() + " sheet 3, revision " + wish.revision() + ", " + wish.date(),
                cut.contours().get(0).corners(), strokes, letters, named, task.figures().within(Marking.SHAPE), checks,
                wish.issues().stream().map(issue -> issue.mark() + ", " + issue.date() + ", " + issue.by() + ": " + issue.changed()).toList());
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
