package org.garboard.hull;

/**
 * A panel read section by section: at each, every cell across as a cubic of half-breadth and height and of their slopes along, so
 * that the places of a section cost little. Moved from section to section; owns its arrays.
 */
public final class PanelSweep {
    /** How many numbers {@link #differentiate} fills in: the first of {@link Panel#differentiate}. */
    public static final int FIRST_DERIVATIVES = 6;
    private static final int OF_CELL = 16;

    private final PanelCells cells;
    private final CellIndex across;
    /** Of each cell y, z, dy/dx, dz/dx, each in powers of its own parameter; the slopes still over the share of the cell along. */
    private final double[] cubics;
    private double perLength;

    public PanelSweep(Panel panel) {
        this.cells = panel.cells();
        this.across = cells.across();
        this.cubics = new double[across.cells() * OF_CELL];
    }

    /** Goes to a section [m], within the panel. */
    public void to(double x) {
        perLength = cells.section(x, cubics, OF_CELL);
    }

    /**
     * Half-breadth and height, then their slopes along, then over v, at a place of the section: bit for bit as
     * {@link Panel#differentiate} has them.
     */
    public void differentiate(double v, double[] out) {
        int cell = across.cell(v);
        double s = across.local(cell, v);
        double perBreadth = across.inverseWidth(cell);
        for (int k = 0; k < 2; k++) {
            int at = cell * OF_CELL + 4 * k;
            int slope = at + 8;
            out[k] = PanelCells.cubic(cubics, at, s);
            out[2 + k] = PanelCells.cubic(cubics, slope, s) * perLength;
            out[4 + k] = ((3 * cubics[at + 3] * s + 2 * cubics[at + 2]) * s + cubics[at + 1]) * perBreadth;
        }
    }
}
