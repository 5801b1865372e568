package org.garboard.drawing.sheets;

import org.garboard.hull.Hull;

/** A sheet whose longest view is the whole hull from end to end. */
public interface WholeHull extends SheetContent {
    /** A hull drawn shorter than this [mm] shows no lines: our choice. */
    double SHORTEST = 80;

    Hull hull();

    @Override
    default double longest() {
        return hull().afterEnd() - hull().forwardEnd();
    }

    @Override
    default double shortestDrawn() {
        return SHORTEST;
    }
}
