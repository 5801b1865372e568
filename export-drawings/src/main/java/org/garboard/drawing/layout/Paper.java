package org.garboard.drawing.layout;

import org.garboard.drawing.Box;

/**
 * A sheet of paper as it lies.
 *
 * @param name as the trade calls it
 * @param width trimmed [mm]
 * @param height trimmed [mm]
 */
public record Paper(String name, double width, double height) {

    /** Binding margin on the left, the other margins (ISO 5457) [mm]. */
    private static final double BINDING = 20;
    private static final double MARGIN = 10;

    public Box edge() {
        return new Box(0, 0, width, height);
    }

    /** The frame's line. */
    public Box frame() {
        return new Box(BINDING, MARGIN, width - MARGIN, height - MARGIN);
    }
}
