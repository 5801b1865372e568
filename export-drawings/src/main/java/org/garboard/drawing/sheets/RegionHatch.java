package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.List;
import org.garboard.craft.Sides;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Hatch;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Point;
import org.garboard.drawing.Polyline;
import org.garboard.drawing.layout.Cluster;
import org.garboard.drawing.layout.Legend;
import org.garboard.drawing.layout.Lettering;
import org.garboard.job.SitingRecord;
import org.garboard.siting.MountSiting;
import org.garboard.siting.PlanPoint;
import org.garboard.siting.Region;

/** Feasible regions: one angle and spacing of hatch per mount, and the legend that names them. */
final class RegionHatch {

    private static final double[] ANGLES = {45, 135, 60, 120, 30};
    private static final double[] SPACINGS = {2.5, 3.5, 2, 3, 4};

    /** Letter heights that a sample is long. */
    private static final double SAMPLE = 5;

    private RegionHatch() {
    }

    /** Regions of all mounts seen from below, both sides. */
    static List<Entity> below(List<MountSiting> sitings, HullOnPaper paper) {
        List<Entity> drawn = new ArrayList<>();
        for (int mount = 0; mount < sitings.size(); mount++) {
            for (Region region : sitings.get(mount).regions()) {
                side(region, 1, mount, paper, drawn);
                if (region.sides() == Sides.BOTH && !reachesAcross(region)) {
                    side(region, -1, mount, paper, drawn);
                }
            }
        }
        return drawn;
    }

    /** A strip athwart the keel is given whole; a region alike on both sides for starboard alone. */
    private static boolean reachesAcross(Region region) {
        return region.outline().stream().anyMatch(point -> point.y() < -1e-6);
    }

    private static void side(Region region, int side, int mount, HullOnPaper paper, List<Entity> drawn) {
        List<List<Point>> rings = new ArrayList<>();
        rings.add(ring(region.outline(), side, paper));
        region.holes().forEach(hole -> rings.add(ring(hole, side, paper)));
        rings.forEach(ring -> drawn.add(Polyline.closed(Layer.MARK, ring)));
        drawn.add(hatch(rings, mount));
    }

    private static List<Point> ring(List<PlanPoint> ring, int side, HullOnPaper paper) {
        return ring.stream().map(point -> paper.below(point.x(), side * point.y())).toList();
    }

    private static Hatch hatch(List<List<Point>> rings, int mount) {
        return new Hatch(Layer.HATCH, rings, ANGLES[mount % ANGLES.length], SPACINGS[mount % SPACINGS.length]);
    }

    /** Which hatch is which mount. */
    static Cluster legend(SitingRecord record, Lettering lettering) {
        List<MountSiting> sitings = record.sitings();
        Legend legend = new Legend("FEASIBLE REGIONS", lettering, SAMPLE);
        for (int mount = 0; mount < sitings.size(); mount++) {
            MountSiting siting = sitings.get(mount);
            boolean found = !siting.regions().isEmpty();
            int number = mount;
            legend.swatch(ring -> swatch(ring, number, found), siting.mount().words() + (refused(siting, record) ? ": REFUSED, see NOTES" : "")
                + (found ? "" : ": no place found"));
        }
        return legend.cluster();
    }

    private static List<Entity> swatch(List<Point> ring, int mount, boolean found) {
        Polyline outline = Polyline.closed(Layer.MARK, ring);
        return found ? List.of(hatch(List.of(ring), mount), outline) : List.of(outline);
    }

    /** Whether every check is met there, and yet no pocket can be built. */
    private static boolean refused(MountSiting siting, SitingRecord record) {
        return MarkedSite.of(record).stream()
                .anyMatch(marked -> marked.siting().equals(siting) && marked.standing() == MarkedSite.Standing.REFUSED);
    }
}
