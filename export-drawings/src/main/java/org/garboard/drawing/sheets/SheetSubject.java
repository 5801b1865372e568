package org.garboard.drawing.sheets;

import org.garboard.drawing.layout.Lettering;
import org.garboard.drawing.layout.Paper;
import org.garboard.drawing.layout.TitleBlock;
import org.garboard.job.DrawingWish;
import org.garboard.offsets.HullOffsets;

/**
 * What a sheet is drawn from, on one paper in one lettering; a smaller lettering or a larger paper can be tried.
 *
 * @param <T> the subject's own type
 */
public interface SheetSubject<T extends SheetSubject<T>> {

    /** How the yard wants it. */
    DrawingWish drawing();

    /** Paper it is drawn on, the wish's or another that is tried. */
    Paper paper();

    Lettering lettering();

    Provenance provenance();

    /** The boat as the title block names it. */
    String boat();

    /** Name of the table of offsets' file. */
    String tableFile();

    /** What it is drawn from: a table of offsets, a take-off. */
    HullOffsets table();

    /** What the title block says beside the sheet's number. */
    String sheets();

    /** What the title block says above all. */
    String status();

    T on(Paper other);

    T lettered(Lettering other);

    default Figures figures() {
        return new Figures(drawing().units());
    }

    /**
     * The title block of a sheet.
     *
     * @param sheet its number, and its page where it runs on
     * @param scale in words
     */
    default TitleBlock titleBlock(String title, String documentType, String sheet, String scale) {
        DrawingWish wish = drawing();
        return new TitleBlock(wish.owner(), wish.number(), wish.date(), title, boat(), documentType, wish.creator(),
                wish.approver(), wish.revision(), sheet + "  (" + sheets() + ")", scale, figures().note(),
                paper().name(), projection(wish.projection()), table().document() + ", SHA-256", tableFile() + "  " + provenance().tableHash(),
                provenance().version(), status(),
                wish.issues().stream().map(issue -> new TitleBlock.Revision(issue.mark(), issue.date(), issue.by(), issue.changed())).toList());
    }

    /** The paper as it lies on the board. */
    static Paper paper(DrawingWish wish) {
        return paper(wish.paper(), wish.orientation());
    }

    /** A size of paper, its longer side level or upright. */
    static Paper paper(DrawingWish.Paper paper, DrawingWish.Orientation orientation) {
        String name = paper.name().replace('_', ' ');
        return switch (orientation) {
            case LANDSCAPE -> new Paper(name, paper.widthMm(), paper.heightMm());
            case PORTRAIT -> new Paper(name + " portrait", paper.heightMm(), paper.widthMm());
        };
    }

    private static TitleBlock.Projection projection(DrawingWish.Projection projection) {
        return switch (projection) {
            case FIRST_ANGLE -> TitleBlock.Projection.FIRST_ANGLE;
            case THIRD_ANGLE -> TitleBlock.Projection.THIRD_ANGLE;
        };
    }
}
