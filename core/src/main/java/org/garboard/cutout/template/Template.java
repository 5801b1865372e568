package org.garboard.cutout.template;

import java.util.List;
import org.garboard.cutout.FlatPoint;

/**
 * A flat outline to cut or to mark out by, from the part's middle: on the bottom u runs aft and v to starboard, whichever
 * side of it is up; on the transom u runs to starboard and v up, on a wall u round it and v up. Lengths [m].
 *
 * @param name of the part, "hull-cutout"
 * @param up which side of it is seen as it is cut
 * @param outline closed, last point not repeated
 * @param openings inside it, closed
 * @param holes round ones
 * @param marks lines to scribe inside it, not cut
 * @param stretch largest difference between a length along the skin and the same length on the template; 0 for a
 *     part that is flat
 */
public record Template(String name, Up up, List<FlatPoint> outline, List<List<FlatPoint>> openings, List<RoundHole> holes,
                       List<Mark> marks, double stretch) {

    /** The side that is seen. */
    public enum Up {
        /** Of the hull: bow to the right, starboard up. */
        OUTSIDE("outside-up"),
        /** Inside the hull: bow to the right, port up. */
        INSIDE("inside-up"),
        /** Of the transom, seen from aft: starboard to the right, the boat's up is up. */
        AFT("aft-side-up"),
        /** The outside of an upright wall, unrolled: from its after end by starboard to the bow in the middle, and back by port. */
        WALL("outside-up");

        private final String word;

        Up(String word) {
            this.word = word;
        }

        /** As files call it. */
        public String word() {
            return word;
        }
    }

    /** What a line is. */
    public enum Kind {
        /** Of the part itself, to be milled or scribed. */
        SCRIBED,
        /** Where the plane through the middle that is plumb and runs fore and aft meets the skin. */
        FORE_AND_AFT,
        /** Where the plane through the middle that is plumb and stands athwart, of the station there, meets the skin. */
        STATION,
        /** Lower edge of the transom. */
        TRANSOM_EDGE,
        /** Level, where the transducer's face hangs. */
        FACE_LEVEL,
        /** Plumb through the middle. */
        PLUMB
    }

    /** A line, open. */
    public record Mark(Kind kind, List<FlatPoint> line) {
        public Mark {
            line = List.copyOf(line);
        }
    }

    /** A hole to drill. */
    public record RoundHole(FlatPoint centre, double diameter) {
    }

    public Template {
        outline = List.copyOf(outline);
        openings = openings.stream().map(List::copyOf).toList();
        holes = List.copyOf(holes);
        marks = List.copyOf(marks);
    }

    /** Between the two points of the outline that lie farthest apart: to check the template by, before it is used [m]. */
    public double checkLength() {
        double most = 0;
        for (int i = 0; i < outline.size(); i++) {
            for (int j = 0; j < i; j++) {
                double along = outline.get(i).u() - outline.get(j).u();
                double across = outline.get(i).v() - outline.get(j).v();
                most = Math.max(most, along * along + across * across);
            }
        }
        return Math.sqrt(most);
    }
}
