package org.garboard.drawing.layout;

import java.util.Optional;

/**
 * Letter heights of a sheet [mm], of the ISO 3098 series.
 *
 * @param figures dimensions, balloons and all lettering in views
 * @param tables tables and columns of notes
 * @param headings titles of views and of notes
 */
public record Lettering(double figures, double tables, double headings) {

    /** Sheets up to A3 and ANSI B are held in the hand; A4 and ANSI A are read closest [mm, the longer side]. */
    private static final double IN_HAND = 450;
    private static final double CLOSEST = 300;

    /**
     * 3.5 mm throughout on large sheets, 2.5 mm on the smallest (common practice); between them
     * tables and notes of 2.5 mm, our choice, because such sheets are read in the hand and the
     * views need the room.
     */
    public static Lettering forPaper(Paper paper) {
        double longer = Math.max(paper.width(), paper.height());
        if (longer < CLOSEST) {
            return new Lettering(2.5, 2.5, 3.5);
        }
        return longer < IN_HAND ? new Lettering(3.5, 2.5, 3.5) : new Lettering(3.5, 3.5, 5);
    }

    /** The same with tables and notes of 2.5 mm, for views that else must be drawn smaller; none below that. */
    public Optional<Lettering> smallerNotes() {
        return tables > 2.5 ? Optional.of(new Lettering(figures, 2.5, headings)) : Optional.empty();
    }

    /** The next smaller lettering, for content that finds no room; none below 2.5 mm. */
    public Optional<Lettering> smaller() {
        return figures > 2.5 ? Optional.of(new Lettering(2.5, 2.5, 3.5)) : Optional.empty();
    }

    /** Clear space between neighbours on the sheet [mm]: our choice, a line's pitch. */
    public double gap() {
        return 1.6 * tables;
    }
}
