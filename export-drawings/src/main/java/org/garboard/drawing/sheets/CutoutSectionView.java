package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.garboard.cutout.part.NamedSolid;
import org.garboard.drawing.AngularDimension;
import org.garboard.drawing.Anchor;
import org.garboard.drawing.Box;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.LetterWidths;
import org.garboard.drawing.Line;
import org.garboard.drawing.LinearDimension;
import org.garboard.drawing.LinearDimension.Direction;
import org.garboard.drawing.Point;
import org.garboard.drawing.Scale;
import org.garboard.drawing.Text;
import org.garboard.drawing.View;
import org.garboard.drawing.layout.ClearPlace;

/** A section through the axis as it stands on the boat, her base line level: skin, opening, block, and the axis against plumb. */
final class CutoutSectionView {
    /** Less than this is no angle to be measured with a level [rad]: half a tenth of a degree. */
    private static final double PLUMB = Math.toRadians(0.05);
    /** The axis is drawn no longer than so many times what the parts ask for, so that the angle's figure stands between its lines: our choice; else words tell it. */
    private static final double LONGEST = 1.6;
    private static final double FIRST_ROW = 10;
    /** So far inside its end a part is measured [mm]. */
    private static final double INSIDE = 1e-3;

    private final CutTask cut;
    private final Scale scale;
    private final double letter;
    private final double lean;
    private final List<Entity> shown = new ArrayList<>();
    private final List<List<Point>> skin = new ArrayList<>();
    private final List<List<Point>> block = new ArrayList<>();
    private final List<List<Point>> body = new ArrayList<>();

    /** @param lean of the axis' upper end to the right of plumb [rad] */
    private CutoutSectionView(CutTask cut, Scale scale, double lean) {
        this.cut = cut;
        this.scale = scale;
        this.letter = cut.letter();
        this.lean = lean;
    }

    static View athwart(CutTask cut, Scale scale) {
        CutoutSectionView view = new CutoutSectionView(cut, scale, cut.planes().leanToStarboard());
        cut.task().made().solids().forEach(part -> view.part(part, cut.planes().athwart(part, scale)));
        view.dimensions(cut.main().outline().width());
        view.beam();
        return ViewTitle.above("SECTION AT E, LOOKING FORWARD", "Starboard right." + view.words("starboard", "port") + view.beamWords(), view.shown,
                cut.task().lettering(), 24 * view.letter);
    }

    static View lengthwise(CutTask cut, Scale scale) {
        CutoutSectionView view = new CutoutSectionView(cut, scale, cut.planes().leanForward());
        cut.task().made().solids().forEach(part -> view.part(part, cut.planes().lengthwise(part, scale)));
        view.dimensions(cut.main().outline().length());
        return ViewTitle.above("LONG SECTION AT E", "Bow right, seen from starboard." + view.words("forward", "aft"), view.shown, cut.task().lettering(),
                24 * view.letter);
    }

    private void part(NamedSolid part, List<List<Point>> loops) {
        switch (part.name()) {
            case "hull-skin" -> skin.addAll(loops);
            case "backing-block", "inner-block" -> block.addAll(loops);
            case "transducer-body" -> body.addAll(loops);
            default -> { }
        }
        shown.addAll(CutParts.of(part, loops.stream().map(loop -> loop.stream().map(this::plumb).toList()).toList()));
    }

    /** From along the axis to as it stands. */
    private Point plumb(Point alongAxis) {
        return new Point(alongAxis.x() * Math.cos(lean) + alongAxis.y() * Math.sin(lean), alongAxis.y() * Math.cos(lean) - alongAxis.x() * Math.sin(lean));
    }

    private void dimensions(double width) {
        Box all = Box.around(Stream.of(skin, block, body).flatMap(List::stream).flatMap(List::stream).toList());
        double half = scale.paper(width / 2);
        rows(row -> Optional.of(dimension(-half, all.bottom(), half, all.bottom(), 0, all.bottom() - FIRST_ROW - row, cut.figures().fine(width))));
        if (cut.isFlush()) {
            double left = all.left() + INSIDE;
            double right = all.right() - INSIDE;
            rows(row -> thickness(skin, left, left - FIRST_ROW - row));
            rows(row -> thickness(block, right, right + FIRST_ROW + letter + row));
            ClearPlace.clearAmong(IntStream.rangeClosed(1, 3).mapToObj(row -> thickness(block, left, left - FIRST_ROW - 2.2 * row * letter).stream().toList()).toList(), shown)
                    .ifPresent(shown::addAll);
        }
        axis(all.bottom() - 2, all.top() + FIRST_ROW);
    }

    /** On the first row that is clear, told by how far it lies from the first. */
    private void rows(DoubleFunction<Optional<Entity>> dimension) {
        List<List<Entity>> places = IntStream.range(0, 5).mapToObj(row -> dimension.apply(2.2 * row * letter)).flatMap(Optional::stream).map(List::of).toList();
        if (!places.isEmpty()) {
            shown.addAll(ClearPlace.among(places, shown));
        }
    }

    /** Along the axis, where the section ends. */
    private Optional<Entity> thickness(List<List<Point>> part, double at, double row) {
        return Span.at(at, part).map(span -> dimension(at, span.low(), at, span.high(), row, 0, cut.figures().fine(scale.trueMm(span.high() - span.low()) / 1000)));
    }

    /** Of two places along the axis' frame, its line through a third. */
    private Entity dimension(double x1, double y1, double x2, double y2, double throughX, double throughY, String words) {
        return new LinearDimension(Direction.ALIGNED, plumb(new Point(x1, y1)), plumb(new Point(x2, y2)), plumb(new Point(throughX, throughY)), words, letter);
    }

    /** The axis, and where it leans the plumb line with the angle between them. */
    private void axis(double low, double above) {
        String words = Figures.degrees(Math.abs(lean));
        double roomy = (LetterWidths.extent(words, letter) + 2 * letter + 2) / Math.abs(lean);
        boolean drawn = roomy < LONGEST * above;
        double high = drawn ? Math.max(above, roomy) : above;
        Point foot = new Point(0, 0);
        Point up = new Point(0, high);
        Point onAxis = plumb(up);
        shown.add(new Line(Layer.CENTRE, plumb(new Point(0, low)), onAxis));
        if (drawn) {
            int away = lean > 0 ? -1 : 1;
            shown.add(new Line(Layer.CENTRE, foot, up));
            shown.add(new AngularDimension(foot, lean > 0 ? onAxis : up, lean > 0 ? up : onAxis, high - letter, words, letter));
            shown.add(Text.level(Layer.TEXT, "plumb", up.movedBy(away, 0), letter, away > 0 ? Anchor.LEFT : Anchor.RIGHT));
        }
    }

    private static Point beamAt(double aside, double face, double height) {
        return new Point(aside * (face - height), height);
    }

    /** How the axis stands, and along what thicknesses are told. */
    private String words(String right, String left) {
        String stands = Math.abs(lean) < PLUMB ? "Axis plumb" : "Axis " + Figures.degrees(Math.abs(lean)) + " off plumb, inner end to " + (lean > 0 ? right : left);
        return " Plumb is up, base line level. " + stands + (cut.isFlush() ? "; thicknesses along it." : ".");
    }

    /** Where the beam of an inclined element points. */
    private void beam() {
        double inclination = cut.task().job().transducer().elementInclination().radians();
        if (cut.isFlush() && inclination > 0) {
            int towardsKeel = cut.planes().origin().getY() > 0 ? -1 : 1;
            double face = Box.around(body.stream().flatMap(List::stream).toList()).bottom();
            double first = face - FIRST_ROW - 3;
            double last = first - FIRST_ROW - scale.paper(cut.task().job().transducer().width()) / 4;
            // below the width's dimension, so that it does not cross its figure
            shown.add(new Line(Layer.ADJACENT, plumb(beamAt(towardsKeel * Math.tan(inclination), face, first)),
                    plumb(beamAt(towardsKeel * Math.tan(inclination), face, last))));
        }
    }

    private String beamWords() {
        return cut.isFlush() && cut.task().job().transducer().elementInclination().radians() > 0 ? " Chain line: the beam, leaning TOWARDS THE KEEL." : "";
    }
}
