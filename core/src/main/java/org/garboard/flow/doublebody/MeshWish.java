package org.garboard.flow.doublebody;

import java.util.Locale;

/**
 * How fine the mesh is to be.
 *
 * @param columns of panels along the wetted length
 * @param rows of panels from keel to water
 * @param stern how an immersed transom is treated
 */
public record MeshWish(int columns, int rows, Stern stern) {
    /** Panels that a mesh may have: each pair takes 8 bytes. */
    public static final int MOST_PANELS = 5000;
    /** Panels when nothing is wished: 18 MB. */
    public static final int USUAL_PANELS = 1500;
    static final int FEWEST_COLUMNS = 8;
    static final int FEWEST_ROWS = 4;
    /** Columns of the straight run behind a transom, growing aft. */
    static final int RUN_COLUMNS = 10;
    /** Rings of the flat that closes an end. */
    static final int CAP_RINGS = 3;

    public MeshWish {
        if (columns < FEWEST_COLUMNS || rows < FEWEST_ROWS || (columns + RUN_COLUMNS + CAP_RINGS) * rows > MOST_PANELS) {
            throw new IllegalArgumentException(String.format(Locale.ROOT, "a mesh of %d columns and %d rows: at least %d and %d, "
                + "and at most %d panels with %d columns for the ends", columns, rows, FEWEST_COLUMNS, FEWEST_ROWS,
                MOST_PANELS, RUN_COLUMNS + CAP_RINGS));
        }
    }

    /** A mesh of at most so many panels, the ends' counted, about four times as many columns as rows. */
    public static MeshWish atMost(int panels, Stern stern) {
        if (panels < 150 || panels > MOST_PANELS) {
            throw new IllegalArgumentException("a mesh of " + panels + " panels: from 150 to " + MOST_PANELS + " can be made");
        }
        int rows = Math.max(FEWEST_ROWS, (int) Math.round(Math.sqrt(panels / 4.0)));
        return new MeshWish(panels / rows - RUN_COLUMNS - CAP_RINGS, rows, stern);
    }
}
