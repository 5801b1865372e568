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

    /** Whether its views are large enough at a scale to be read. */
    boolean legible(Scale scale);
}
