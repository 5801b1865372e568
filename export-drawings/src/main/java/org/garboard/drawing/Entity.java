package org.garboard.drawing;

/** Something drawn on a sheet. */
public sealed interface Entity
        permits Line, Arc, Circle, Polyline, Text, Solid, Hatch, Dimension, Leader, Balloon, Table {

    /** The least upright box that holds it, text with its reserve [mm]. */
    Box bounds();

    /** The same, moved on the paper [mm]. */
    Entity movedBy(double dx, double dy);

    /** Draws it on a canvas, in one piece or as its parts. */
    void drawOn(Canvas canvas);
}
