package org.garboard.cutout.template;

import java.util.List;
import org.garboard.cutout.FlatPoint;

/**
 * A flat outline to cut or to mark out by, seen from outside the hull: u aft and v to starboard from the part's
 * middle. Lengths [m].
 *
 * @param name of the part, "hull-cutout"
 * @param outline closed, last point not repeated
 * @param openings inside it, closed
 * @param holes round ones
 * @param marks lines to scribe inside it, not cut; open
 * @param stretch largest difference between a length along the skin and the same length on the template; 0 for a
 *     part that is flat
 */
public record Template(String name, List<FlatPoint> outline, List<List<FlatPoint>> openings, List<RoundHole> holes,
                       List<List<FlatPoint>> marks, double stretch) {
    public Template {
        outline = List.copyOf(outline);
        openings = openings.stream().map(List::copyOf).toList();
        holes = List.copyOf(holes);
        marks = marks.stream().map(List::copyOf).toList();
    }

    /** A hole to drill. */
    public record RoundHole(FlatPoint centre, double diameter) {
    }

    /** Between the two points of the outline that lie farthest apart: to check the template by, before it is used [m]. */
    public double checkLength() {
        double most = 0;
        for (FlatPoint one : outline) {
            for (FlatPoint other : outline) {
                most = Math.max(most, Math.hypot(one.u() - other.u(), one.v() - other.v()));
            }
        }
        return most;
    }
}
