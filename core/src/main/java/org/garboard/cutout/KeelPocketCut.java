package org.garboard.cutout;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.craft.Transducer;
import org.garboard.cutout.PocketOutcome.Built;
import org.garboard.cutout.PocketOutcome.Refused;
import org.garboard.cutout.pocket.BoatTold;
import org.garboard.cutout.pocket.PocketShape;
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
        KeelDevelopment development = new KeelDevelopment(shape.frame());
        List<Vector3D> opening = shape.opening();
        List<FlatPoint> flat = flat(development, opening);
        shape.cutSkin(flat, development::plan);
        return new Pocket(shape.frame().origin(), shape.frame().along(), shape.frame().across(), shape.length(), shape.width(), shape.cornerRadius(),
            shape.depth(), shape.faceDepth(), shape.wallHeight(), shape.endRatio(), shape.foreRamp(), shape.aftRamp(),
            shape.floor(), shape.mouth(), opening, flat, flat(development, shape.mouth()), KeelDevelopment.stretch(opening, flat),
            shape.volume(), shape.openingArea(), shape.sections(), shape.solids(), shape.details(flat));
    }

    private List<FlatPoint> flat(KeelDevelopment development, List<Vector3D> places) {
        List<FlatPoint> flat = new ArrayList<>();
        for (Vector3D place : places) {
            Vector3D from = place.subtract(shape.frame().origin());
            flat.add(development.of(from.dot(shape.frame().along()), from.dot(shape.frame().across())));
        }
        return flat;
    }
}
