package org.garboard.job;

import java.util.List;

/**
 * How the yard wants its sheets.
 *
 * @param units of the dimensions
 * @param paper sheet size
 * @param orientation how the paper lies
 * @param projection symbol in the title block
 * @param number identification number of the drawing, 16 characters at most
 * @param owner legal owner for the title block
 * @param creator who made the job
 * @param approver who approves; empty when nobody is named
 * @param date of issue, ISO 8601, from the job and never from the clock
 * @param revision letter or number
 * @param issues the table of revisions, the first issue first; none where none are told
 */
public record DrawingWish(Units units, Paper paper, Orientation orientation, Projection projection, String number,
                          String owner, String creator, String approver, String date, String revision, List<Issue> issues) {
    public DrawingWish {
        issues = List.copyOf(issues);
    }

    /** Without a table of revisions. */
    public DrawingWish(Units units, Paper paper, Orientation orientation, Projection projection, String number,
                       String owner, String creator, String approver, String date, String revision) {
        this(units, paper, orientation, projection, number, owner, creator, approver, date, revision, List.of());
    }

    /** Units of dimensions. */
    public enum Units { MILLIMETRES, FEET_INCHES_EIGHTHS }

    /** How a sheet lies: its longer side level, or upright. */
    public enum Orientation { LANDSCAPE, PORTRAIT }

    /** Projection of the views. */
    public enum Projection { FIRST_ANGLE, THIRD_ANGLE }

    /** Sheet sizes, landscape [mm] (ISO 216, ANSI/ASME Y14.1). */
    public enum Paper {
        A4(297, 210), A3(420, 297), A2(594, 420), A1(841, 594),
        ANSI_A(279.4, 215.9), ANSI_B(431.8, 279.4), ANSI_C(558.8, 431.8), ANSI_D(863.6, 558.8);

        private final double widthMm;
        private final double heightMm;

        Paper(double widthMm, double heightMm) {
            this.widthMm = widthMm;
            this.heightMm = heightMm;
        }

        public double widthMm() {
            return widthMm;
        }

        public double heightMm() {
            return heightMm;
        }
    }
}
