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

    /** The same for a sheet that runs on to further pages: views that would stand in line may stand apart. */
    default List<List<Piece>> runningOn(Scale scale) {
        return arrangements(scale);
    }

    /** What stands on every page of a sheet that runs on. */
    default List<Piece> onEveryPage() {
        return List.of();
    }

    /** Length of the longest thing drawn [m]; none where there are no views. */
    double longest();

    /** How short that may be drawn and still be read [mm]. */
    double shortestDrawn();

    /** A scale as its title block gives it. */
    default String scaleWords(Scale scale) {
        return longest() > 0 ? scale.words() : "no views";
    }

    /** Whether its views are large enough at a scale to be read. */
    default boolean legible(Scale scale) {
        return scale.paper(longest()) >= shortestDrawn();
    }
}
