package org.garboard.drawing.sheets;

import java.util.List;
import org.garboard.drawing.Scale;
import org.garboard.drawing.layout.Piece;

/** What one sheet of the set shows, at whatever scale it turns out to fit. */
public interface SheetContent {

    /** Number in the set. */
    int number();

    String title();

    String documentType();

    /** What the sheet shows and how it is seen, without the scale. */
    String description();

    /** What is to be set on the sheet at a scale, in the ways it may be arranged, the preferred first. */
    List<List<Piece>> arrangements(Scale scale);

    /** Length of the longest thing drawn [m]. */
    double longest();

    /** How short that may be drawn and still be read [mm]. */
    double shortestDrawn();

    /** Whether its views are large enough at a scale to be read. */
    default boolean legible(Scale scale) {
        return scale.paper(longest()) >= shortestDrawn();
    }
}
