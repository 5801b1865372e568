package org.garboard.drawing;

import java.util.List;

/**
 * A dimension: what it measures on the sheet, and the words that say it.
 *
 * <p>Words are given, not made here, since they follow the job's units; {@link Sheet} refuses a
 * dimension whose words and measure differ.
 */
public sealed interface Dimension extends Entity permits LinearDimension, AngularDimension, RadialDimension {

    /** Gap between outline and extension line [mm] (ISO 129-1: 0 to 0.8). */
    double GAP = 0.8;
    /** How far an extension line runs past the dimension line [mm] (ISO 129-1). */
    double OVERRUN = 2;
    /** Clear height between dimension line and lettering [mm]: our choice, a pen's width clear at any scale. */
    double ABOVE_LINE = 1;

    /** What it says. */
    String words();

    /** Height of its lettering [mm]. */
    double height();

    /** What it measures: [mm] on paper, or the angle [rad]. */
    double measured();

    /** The size its words must say: true [mm], or [deg]. */
    double trueSize(Scale scale);

    /** Its lettering where it stands. */
    Text lettering();

    /** Everything it draws, as lines, arcs, arrow heads and text. */
    List<Entity> strokes();

    @Override
    default Box bounds() {
        return strokes().stream().map(Entity::bounds).reduce(Box::joinedWith).orElseThrow();
    }

    /** Length of an arrow head beside lettering of a height [mm]: 2.5 to 3.5 (ISO 129-1). */
    static double arrow(double height) {
        return Math.min(3.5, Math.max(2.5, 0.85 * height));
    }
}
