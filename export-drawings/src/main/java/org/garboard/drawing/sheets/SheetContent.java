package org.garboard.drawing.sheets;

import java.util.List;
import org.garboard.drawing.Scale;
import org.garboard.drawing.layout.Piece;

/** What one sheet of the set shows, at whatever scale it turns out to fit. */
interface SheetContent {

    /** Number in the set. */
    int number();

    String title();

    String documentType();

    /** What the sheet shows and how it is seen, without the scale. */
    String description();

    /** What is to be set on the sheet at a scale, the largest first. */
    List<Piece> pieces(Scale scale);

    /** Length on paper [mm] of the thing that must not get too small to read, and the least that can be read. */
    Legibility legibility(Scale scale);

    /**
     * Whether views can be read at a scale.
     *
     * @param what is measured, for the refusal
     * @param onPaper its size [mm]
     * @param least that can be read [mm]
     */
    record Legibility(String what, double onPaper, double least) {

        boolean good() {
            return onPaper >= least;
        }
    }
}
