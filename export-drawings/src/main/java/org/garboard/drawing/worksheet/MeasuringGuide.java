package org.garboard.drawing.worksheet;

import java.util.ArrayList;
import java.util.List;
import org.garboard.drawing.Anchor;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Point;
import org.garboard.drawing.Text;
import org.garboard.drawing.Wrap;

/** Page one: two sketches and the steps, in the order of the work. */
final class MeasuringGuide {
    private static final List<String> STEPS = List.of(
            "Leave the boat as she stands. Heel and trim need not be taken out: they are worked out from what you measure. The floor is never measured from.",
            "Stretch a line under the keel, level, from forward to aft. Set one level for all heights: a water level, a laser, or the line itself.",
            "Datum: choose a place that can be found again, such as the lower corner of the transom. Plumb it down to the line: distances run from there. Measure its height too.",
            "Stations: three at least, closer where the shape changes quickly, the first and the last beyond the area of interest. Chalk each where a plumb bob and a square to the line meet the skin: all points of a station stand in one plumb plane.",
            "At each station, from the keel outward on both sides: hold the bob to the skin. Out is from the line to the bob string, level and square to the line. Height is from the level to the skin.",
            "Keel: at every station, where the bottom skin meets the centreline. Side is the side of the line on which it stands; Out is 0 if it stands over the line (then Side is centre).",
            "Marks: write keel, chine and sheer where they are. Mark the outermost point of every station edge, unless it is the sheer or the chine: nothing is known beyond it. Other points need no mark.",
            "Pairs tell the heel: give places that are alike on both sides the same mark, port and starboard: chine, sheer, or P1, P2 chalked at one girth from the keel. Two stations with pairs at least, far out.",
            "Trim: measure float marks, one forward and one aft at least, better on both sides: where the skin is wet to on one known waterline. Station stays blank, Mark is float. Or name two stations between which the keel is straight.",
            "Measure each point twice. Read all to one step (1 mm, or 1/8 in): the shape is drawn within half of it. A hull whose sides differ by more than that is told, with place and size.");

    private MeasuringGuide() {
    }

    static List<Entity> entities() {
        List<Entity> entities = new ArrayList<>();
        SectionSketch.draw(entities, new Point(Worksheet.WIDTH / 2, 192));
        ProfileSketch.draw(entities, new Point(Worksheet.MARGIN + 10, 130));
        double y = 112;
        for (int i = 0; i < STEPS.size(); i++) {
            entities.add(Text.level(Layer.TEXT, (i + 1) + ".", new Point(Worksheet.MARGIN + 5, y), 2.2, Anchor.RIGHT));
            for (String line : Wrap.lines(STEPS.get(i), Worksheet.WIDTH - 2 * Worksheet.MARGIN - 8, 2.2)) {
                entities.add(Text.level(Layer.TEXT, line, new Point(Worksheet.MARGIN + 7, y), 2.2, Anchor.LEFT));
                y -= 3.6;
            }
            y -= 0.8;
        }
        return entities;
    }
}
