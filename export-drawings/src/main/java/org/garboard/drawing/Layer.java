package org.garboard.drawing;

/**
 * The layers of a sheet: name, AutoCAD colour index, line type, pen width [mm].
 *
 * <p>Widths are of the ISO 128-2 series, wide to narrow 2 : 1. Names are plain words in
 * A-Z and _ so that any CAD version takes them.
 */
public enum Layer {
    /** Visible outlines. */
    HULL(7, LineType.CONTINUOUS, 0.50),
    /** Edges that are cut. */
    CUT(1, LineType.CONTINUOUS, 0.50),
    /** Edges of pocket and ramps. */
    POCKET(5, LineType.CONTINUOUS, 0.50),
    /** Edges behind the material. */
    HIDDEN(8, LineType.HIDDEN, 0.25),
    CENTRE(4, LineType.CENTRE, 0.25),
    /** The other side, neighbouring parts. */
    ADJACENT(8, LineType.DIVIDE, 0.25),
    /** Cutting planes and their letters. */
    SECTION(7, LineType.CENTRE, 0.50),
    /** Sections, waterlines, buttocks and diagonals as curves. */
    FORM(7, LineType.CONTINUOUS, 0.35),
    /** Stations, waterlines, base line. */
    GRID(8, LineType.CONTINUOUS, 0.25),
    /** Where a planing bottom meets the water. */
    WATER(150, LineType.CONTINUOUS, 0.35),
    /** Edges of wakes. */
    WAKE(30, LineType.HIDDEN, 0.25),
    /** Lines to scribe on the skin. */
    MARK(6, LineType.CONTINUOUS, 0.25),
    /** Dimensions, leaders, balloons. */
    DIM(3, LineType.CONTINUOUS, 0.25),
    HATCH(9, LineType.CONTINUOUS, 0.25),
    /** Notes and tables. */
    TEXT(7, LineType.CONTINUOUS, 0.35),
    /** The bar that proves the print's size. */
    SCALE_CHECK(7, LineType.CONTINUOUS, 0.25),
    /** The sheet's frame. */
    BORDER(7, LineType.CONTINUOUS, 0.70),
    TITLE(7, LineType.CONTINUOUS, 0.35),
    /** The paper's edge. */
    TRIM(8, LineType.CONTINUOUS, 0.13);

    private final int colour;
    private final LineType lineType;
    private final double width;

    Layer(int colour, LineType lineType, double width) {
        this.colour = colour;
        this.lineType = lineType;
        this.width = width;
    }

    public int colour() {
        return colour;
    }

    public LineType lineType() {
        return lineType;
    }

    /** Pen width [mm]. */
    public double width() {
        return width;
    }
}
