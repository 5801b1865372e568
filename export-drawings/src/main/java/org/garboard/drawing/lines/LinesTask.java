package org.garboard.drawing.lines;

import java.util.Optional;
import org.garboard.appendage.Keel;
import org.garboard.drawing.Scale;
import org.garboard.drawing.layout.Lettering;
import org.garboard.drawing.layout.Paper;
import org.garboard.drawing.sheets.HullOnPaper;
import org.garboard.drawing.sheets.Provenance;
import org.garboard.drawing.sheets.SheetSubject;
import org.garboard.hull.Hull;
import org.garboard.job.DrawingWish;
import org.garboard.offsets.HullOffsets;

/**
 * What a lines drawing or a picture of curvature is drawn from.
 *
 * @param paper it is drawn on, the wish's or another that is tried
 * @param lettering of the paper, or smaller
 */
record LinesTask(HullOffsets table, Hull hull, LinesWish wish, String tableFile, Provenance provenance, Paper paper,
                 Lettering lettering) implements SheetSubject<LinesTask> {

    LinesTask(HullOffsets table, Hull hull, LinesWish wish, String tableFile, Provenance provenance) {
        this(table, hull, wish, tableFile, provenance, SheetSubject.paper(wish.drawing()),
                Lettering.forPaper(SheetSubject.paper(wish.drawing())));
    }

    @Override
    public LinesTask on(Paper other) {
        return new LinesTask(table, hull, wish, tableFile, provenance, other, Lettering.forPaper(other));
    }

    @Override
    public LinesTask lettered(Lettering other) {
        return new LinesTask(table, hull, wish, tableFile, provenance, paper, other);
    }

    @Override
    public DrawingWish drawing() {
        return wish.drawing();
    }

    @Override
    public String boat() {
        return table.title();
    }

    @Override
    public String sheets() {
        return "of 1";
    }

    @Override
    public String status() {
        return "FOR CHECK - drawn from " + table.comesFrom();
    }

    LinesPaper at(Scale scale) {
        Optional<Keel> keel = Keel.of(table, hull);
        HullExtent extent = HullExtent.of(hull, keel);
        return new LinesPaper(hull, keel, extent, LinesGrid.of(wish, table, hull, extent, figures()),
                new HullOnPaper(hull, scale), scale, lettering, figures());
    }
}
