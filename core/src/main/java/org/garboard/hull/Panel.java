package org.garboard.hull;

import org.garboard.geometry.KnotVector;
import org.garboard.offsets.PanelName;

/**
 * A smooth strip of skin between two named lines: a bicubic B-spline over x along the length and
 * v across, v = 0 on the line nearer the keel and 1 on the other. Hull frame, metres, starboard.
 *
 * <p>Beside its poles it keeps each cell as a polynomial, which is what is evaluated.
 */
public final class Panel {
    /** How many numbers {@link #evaluate} fills in; the places of each follow. */
    public static final int POINT_SIZE = 10;

    public static final int X = 0;
    public static final int Y = 1;
    public static final int Z = 2;
    public static final int NX = 3;
    public static final int NY = 4;
    public static final int NZ = 5;
    public static final int K1 = 6;
    public static final int K2 = 7;
    public static final int DZ_DY = 8;
    public static final int DZ_DX = 9;

    /** How many numbers {@link #differentiate} fills in. */
    public static final int DERIVATIVES = 12;

    private final HullLine lower;
    private final HullLine upper;
    private final KnotVector along;
    private final KnotVector across;
    private final double[] polesY;
    private final double[] polesZ;
    private final PanelCells cells;
    private final EndFace fore;
    private final EndFace aft;

    /** Of a length that ends square across where its knots do. */
    Panel(HullLine lower, HullLine upper, KnotVector along, KnotVector across, double[] polesY, double[] polesZ) {
        this(lower, upper, along, across, polesY, polesZ,
                PlanFace.square(Math.nextDown(along.start())), PlanFace.square(along.end()));
    }

    /**
     * @param fore face abaft of which it is skin
     * @param aft face at which it ends
     */
    Panel(HullLine lower, HullLine upper, KnotVector along, KnotVector across, double[] polesY, double[] polesZ,
          EndFace fore, EndFace aft) {
        this.fore = fore;
        this.aft = aft;
        this.lower = lower;
        this.upper = upper;
        this.along = along;
        this.across = across;
        this.polesY = polesY;
        this.polesZ = polesZ;
        this.cells = new PanelCells(along, across, polesY, polesZ);
    }

    /** Its two lines' names. */
    public PanelName name() {
        return new PanelName(lower.name(), upper.name());
    }

    /** The line nearer the keel, v = 0. */
    public HullLine lower() {
        return lower;
    }

    /** The line nearer the sheer, v = 1. */
    public HullLine upper() {
        return upper;
    }

    public KnotVector knotsAlong() {
        return along;
    }

    public KnotVector knotsAcross() {
        return across;
    }

    /** Half-breadth of a pole [m]; its x is the Greville abscissa of its index along. */
    public double poleY(int i, int k) {
        return polesY[i * across.size() + k];
    }

    /** Height of a pole [m]. */
    public double poleZ(int i, int k) {
        return polesZ[i * across.size() + k];
    }

    /** The face abaft of which the panel is skin: of the forward-most length a hair ahead of its first section. */
    public EndFace fore() {
        return fore;
    }

    /** The face at which the panel's skin ends, itself included. */
    public EndFace aft() {
        return aft;
    }

    /** Whether it is skin over all of its knots, cut by no face. */
    public boolean isWhole() {
        return fore.isSquare() && aft.isSquare() && fore.most() <= along.start() && aft.least() >= along.end();
    }

    /** Whether a section at x reaches forward of some of the stem, which cuts it. */
    public boolean isAtStem(double x) {
        return fore instanceof StemFace stem && x < stem.most();
    }

    /** x at which the skin begins on the line of a v across [m]. */
    public double from(double v) {
        return isWhole() ? along.start() : Math.max(along.start(), end(fore, v));
    }

    /** x at which the skin ends on the line of a v across [m]. */
    public double to(double v) {
        return isWhole() ? along.end() : Math.min(along.end(), end(aft, v));
    }

    private double end(EndFace face, double v) {
        double[] at = new double[DERIVATIVES];
        return face.end(x -> {
            differentiate(x, v, at, 0);
            return at[0];
        }, x -> {
            differentiate(x, v, at, 0);
            return at[1];
        });
    }

    /** Whether a place of its surface is skin, not cut away by the faces at its ends. */
    public boolean isSkin(double x, double v) {
        double[] at = new double[DERIVATIVES];
        differentiate(x, v, at, 0);
        return isSkin(x, at[0], at[1]);
    }

    /** The same of a point of it. */
    boolean isSkin(double x, double y, double z) {
        return (x > fore.most() || x > fore.x(y, z)) && (x <= aft.least() || x <= aft.x(y, z));
    }

    PanelCells cells() {
        return cells;
    }

    /**
     * Point, normal, curvatures and slopes at surface parameters.
     *
     * @param x aft of station 0 [m], within the panel
     * @param v across, 0 to 1
     * @param out filled from {@code at} with x, y, z, the unit normal into the water, k1, k2 (k1 &gt;= k2,
     *     [1/m]), dz/dy at constant x, dz/dx at constant y
     */
    public void evaluate(double x, double v, double[] out, int at) {
        cells.evaluate(x, v, out, at);
    }

    /**
     * Half-breadth and height with their derivatives over the surface parameters.
     *
     * @param out filled from {@code at} with y, z, then their derivatives over x, over v, over x twice, over
     *     x and v, over v twice: always y's, then z's
     */
    public void differentiate(double x, double v, double[] out, int at) {
        cells.differentiate(x, v, out, at);
    }
}
