package org.garboard.drawing.dxf;

import org.garboard.drawing.AngularDimension;
import org.garboard.drawing.LinearDimension;
import org.garboard.drawing.Point;
import org.garboard.drawing.RadialDimension;
import org.garboard.drawing.Scale;
import org.garboard.units.FixedDecimal;

/** The codes of a dimension after its layer. */
final class DimensionTags {

    /** Decimals that a reader prints by itself in place of {@code <>}. */
    static final int DECIMALS = 0;

    private static final int ROTATED = 0;
    private static final int ALIGNED = 1;
    /** Two lines; the form by three points is dropped without a word by one reader. */
    private static final int ANGULAR = 2;
    private static final int DIAMETER = 3;
    private static final int RADIUS = 4;
    private static final int OWN_BLOCK = 32;
    private static final int WORDS_PLACED = 128;
    private static final int MIDDLE_CENTRE = 5;

    private final Tags tags;
    private final Scale scale;
    private final String block;

    DimensionTags(Tags tags, Scale scale, String block) {
        this.tags = tags;
        this.scale = scale;
        this.block = block;
    }

    void linear(LinearDimension linear) {
        boolean aligned = linear.direction() == LinearDimension.Direction.ALIGNED;
        double measured = scale.trueMm(linear.measured());
        common(linear.lineEnd(), linear.letteringBetween(), aligned ? ALIGNED : ROTATED,
                renewable(linear.words(), measured), measured);
        tags.tag(100, "AcDbAlignedDimension");
        point(13, linear.from());
        point(14, linear.to());
        if (!aligned) {
            tags.number(50, linear.direction() == LinearDimension.Direction.VERTICAL ? 90 : 0);
            tags.tag(100, "AcDbRotatedDimension");
        }
    }

    /** Words that a reader may renew from the measure when the drawing is stretched; else as they are. */
    private static String renewable(String words, double measured) {
        String number = FixedDecimal.format(measured, DECIMALS);
        if (words.equals(number)) {
            return "";
        }
        return AsciiText.of(words.startsWith(number + " ") ? "<>" + words.substring(number.length()) : words);
    }

    void angular(AngularDimension angular) {
        common(angular.second(), angular.lettering().middle(), ANGULAR | WORDS_PLACED, AsciiText.of(angular.words()), angular.measured());
        tags.tag(100, "AcDb2LineAngularDimension");
        point(13, angular.vertex());
        point(14, angular.first());
        point(15, angular.vertex());
        point(16, angular.onArc());
    }

    /** The words are always written: one reader leaves out R and the diameter sign when they are not. */
    void radial(RadialDimension radial) {
        boolean radius = radial.measure() == RadialDimension.Measure.RADIUS;
        common(basis(radial), radial.lettering().middle(), (radius ? RADIUS : DIAMETER) | WORDS_PLACED,
                AsciiText.of(radial.words()), scale.trueMm(radial.measured()));
        tags.tag(100, radius ? "AcDbRadialDimension" : "AcDbDiametricDimension");
        point(15, radial.onCurve());
        tags.number(40, scale.trueMm(radial.reach()));
    }

    /** The point that a radius or diameter is measured from. */
    static Point basis(RadialDimension radial) {
        return radial.measure() == RadialDimension.Measure.RADIUS ? radial.centre() : radial.opposite();
    }

    /**
     * What all kinds have. Lettering of lengths is given between the arrows even where it stands
     * beyond them: a reader that draws it anew moves it out by itself, and would move it twice.
     */
    private void common(Point definition, Point lettering, int type, String words, double measured) {
        tags.tag(100, "AcDbDimension").tag(2, block);
        point(10, definition);
        point(11, lettering);
        tags.tag(70, type | OWN_BLOCK).tag(71, MIDDLE_CENTRE).tag(1, words).number(42, measured)
                .tag(3, TableSection.DIMENSIONS);
    }

    private void point(int code, Point point) {
        tags.point(code, scale.trueMm(point.x()), scale.trueMm(point.y()));
    }
}
