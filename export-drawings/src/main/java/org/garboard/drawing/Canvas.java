package org.garboard.drawing;

/**
 * What a sheet is drawn on; one per file format. Everything more than these is drawn as its parts.
 */
public interface Canvas {

    void line(Line line);

    void arc(Arc arc);

    void circle(Circle circle);

    void polyline(Polyline polyline);

    void text(Text text);

    void solid(Solid solid);

    void hatch(Hatch hatch);

    /** A dimension; a format without true dimensions draws its strokes. */
    default void linearDimension(LinearDimension dimension) {
        strokes(dimension);
    }

    /** A dimension; a format without true dimensions draws its strokes. */
    default void angularDimension(AngularDimension dimension) {
        strokes(dimension);
    }

    /** A dimension; a format without true dimensions draws its strokes. */
    default void radialDimension(RadialDimension dimension) {
        strokes(dimension);
    }

    /** All that a dimension draws, stroke by stroke. */
    default void strokes(Dimension dimension) {
        dimension.strokes().forEach(stroke -> stroke.drawOn(this));
    }
}
