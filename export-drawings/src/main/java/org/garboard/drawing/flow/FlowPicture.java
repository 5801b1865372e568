package org.garboard.drawing.flow;

import java.util.List;
import org.garboard.drawing.water.PlanArea;
import org.garboard.drawing.water.PlanCurve;
import org.garboard.flow.shadow.Shadow;

/**
 * What a picture of the flow shows: one speed.
 *
 * @param heading "At 6.0 kn, trim 1.5 degrees"
 * @param curves in the order in which they are drawn
 * @param areas in the order in which they are drawn, under curves and shadows
 * @param shadows of the features on the bottom
 * @param notes that a reader needs beside those of every picture
 */
public record FlowPicture(String heading, List<PlanCurve> curves, List<PlanArea> areas, List<Shadow> shadows, List<String> notes) {
    public FlowPicture {
        curves = List.copyOf(curves);
        areas = List.copyOf(areas);
        shadows = List.copyOf(shadows);
        notes = List.copyOf(notes);
    }
}
