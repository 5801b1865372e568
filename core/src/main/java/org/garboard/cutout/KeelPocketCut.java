package org.garboard.cutout;

import java.util.ArrayList;
import java.util.List;
import org.garboard.craft.Transducer;
import org.garboard.cutout.PocketOutcome.Built;
import org.garboard.cutout.PocketOutcome.Refused;
import org.garboard.cutout.pocket.BoatTold;
import org.garboard.cutout.pocket.FlangeScrews;
import org.garboard.cutout.pocket.NestedLines;
import org.garboard.cutout.pocket.PocketShape;
import org.garboard.cutout.template.Template;
import org.garboard.cutout.template.Template.Up;
import org.garboard.hull.Hull;
import org.garboard.mount.PocketWish;

/** Cuts a keel pocket for a transducer: floor, walls, ramps, and where they come out through the skin. */
public final class KeelPocketCut {
    private final PocketShape shape;

    private KeelPocketCut(PocketShape shape) {
        this.shape = shape;
    }

    /**
     * Cuts a pocket athwart the keel into a boat of which only the table is told.
     *
     * @param x of its middle, aft of station 0 [m]
     * @return the pocket, or the figure that fails and what would work
     */
    public static PocketOutcome cut(Hull hull, Transducer transducer, PocketWish wish, double x) {
        return cut(hull, transducer, wish, BoatTold.NOTHING, x, 0);
    }

    /**
     * Cuts a pocket.
     *
     * @param x of its middle, aft of station 0 [m]
     * @param y of it, to starboard; 0 for athwart the keel [m]
     */
    public static PocketOutcome cut(Hull hull, Transducer transducer, PocketWish wish, BoatTold boat, double x, double y) {
        try {
            return new Built(new KeelPocketCut(PocketShape.of(hull, transducer, wish, boat, x, y)).pocket());
        } catch (CannotBeBuilt refusal) {
            return new Refused(refusal.reason(), refusal.remedy());
        }
    }

    private Pocket pocket() throws CannotBeBuilt {
        NestedLines lines = NestedLines.of(shape);
        shape.cutSkin(lines);
        PocketDetails details = shape.details(lines);
        return new Pocket(shape.frame().origin(), shape.frame().along(), shape.frame().across(), shape.length(), shape.width(), shape.cornerRadius(),
            shape.depth(), shape.faceDepth(), shape.wallHeight(), shape.endRatio(), shape.foreRamp(), shape.aftRamp(),
            shape.floor(), shape.mouth(), lines.opening().onSkin(), lines.opening().flat(), lines.pocketEdge().flat(), lines.stretch(),
            shape.volume(), shape.openingArea(), shape.sections(), shape.solids(), templates(lines), details);
    }

    /** What the hull is ground down to and cut by, where a tray goes into it, laid on the skin before anything is cut; how a flange is drilled. */
    private List<Template> templates(NestedLines lines) throws CannotBeBuilt {
        List<Template> templates = new ArrayList<>();
        if (!lines.taperEnd().isEmpty()) {
            templates.add(new Template("taper-end", Up.OUTSIDE, lines.taperEnd().flat(), List.of(lines.hullCut().flat()), List.of(), lines.cross(), lines.stretch()));
        }
        templates.addAll(FlangeScrews.templates(shape));
        return templates;
    }
}
