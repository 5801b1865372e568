package org.garboard.siting;

import java.util.List;
import java.util.Optional;
import org.garboard.craft.LaidFeature;
import org.garboard.craft.Sides;
import org.garboard.geometry.Quad;
import org.garboard.hull.Hull;
import org.garboard.mount.Extent;
import org.garboard.mount.Mount;

/** A transducer where it is put, as a feature of the bottom that another keeps clear of. */
final class PlacedBody {

    private PlacedBody() {
    }

    /** @param bed where it was laid */
    static LaidFeature on(Hull hull, SitingTask task, Mount mount, MeasuredBed bed) {
        double x = bed.x();
        double y = Math.abs(bed.y());
        Extent extent = mount.extent(task.installation(), bed);
        double inner = y - extent.width() / 2;
        double outer = y + extent.width() / 2;
        Quad cover = Quad.of(x - extent.ahead(), inner, x + extent.abaft(), inner, x + extent.abaft(), outer, x - extent.ahead(), outer);
        Sides side = bed.y() == 0 ? Sides.BOTH : bed.y() > 0 ? Sides.STARBOARD : Sides.PORT;
        return new LaidFeature(task.installation().transducer().name(), mount.asFitting().words(), side, List.of(cover),
            Optional.of(standsOut(hull, mount.hang(task.installation(), task.around(), bed), x, y, inner, outer)));
    }

    /** A body that hangs is told from the skin at its middle, a feature from the lowest skin over it. */
    private static double standsOut(Hull hull, double hang, double x, double y, double inner, double outer) {
        if (hang == 0) {
            return 0;
        }
        double lowest = Math.min(hull.height(x, y), Math.min(hull.height(x, Math.abs(inner)), hull.height(x, outer)));
        return Math.max(0, hang - (hull.height(x, y) - lowest));
    }
}
