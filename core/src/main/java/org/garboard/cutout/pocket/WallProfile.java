package org.garboard.cutout.pocket;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.garboard.cutout.CannotBeBuilt;
import org.garboard.cutout.Lengths;
import org.garboard.mount.pocket.Walls;

/**
 * The section of a pocket's wall square to the floor's outline: distance outside that outline and height. From the
 * floor it turns down a fillet, falls along the wall, past a rebate where there is one, and turns out round the edge
 * into the surface outside. The same for a face of the laminate so far behind it.
 */
final class WallProfile {
    private final Walls walls;
    private final double floor;
    private final double ledge;
    /** Directions of the straight parts but the last, which is the surface outside [rad, from level outward]. */
    private final double[] directions;
    private final double[] radii;
    private final int[] pieces;
    private final int points;

    /**
     * @param floor height of the floor [m]
     * @param face height of the face, from which a rebate's depth is told [m]
     * @param thickest of the laminate behind it [m]
     */
    WallProfile(Walls walls, double floor, double face, double thickest, double chord) {
        this.walls = walls;
        this.floor = floor;
        this.ledge = walls.rebate().map(rebate -> face + rebate.depth()).orElse(Double.NaN);
        double down = walls.draft().radians() - Math.PI / 2;
        this.directions = walls.rebate().isPresent() ? new double[] {0, down, 0, down} : new double[] {0, down};
        this.radii = walls.rebate().isPresent() ? new double[] {walls.floorRadius(), 0, 0, walls.edgeRadius()}
            : new double[] {walls.floorRadius(), walls.edgeRadius()};
        this.pieces = new int[radii.length];
        int sum = 1;
        for (int i = 0; i < radii.length; i++) {
            boolean fillet = i % 2 == 0;
            pieces[i] = arcs(radii[i] + (fillet ? thickest : 0), chord);
            sum += pieces[i] + (i == 0 ? 0 : 1);
        }
        this.points = sum;
    }

    private static int arcs(double radius, double chord) {
        return radius > 0 ? Math.max(2, (int) Math.ceil(Math.PI / 2 / (2 * Math.acos(Math.max(0, 1 - chord / radius))))) : 0;
    }

    int points() {
        return points;
    }

    /** From the floor's outline to the inner edge of its ledge, where there is one [m]. */
    double toLedge() {
        return radii[0] * Math.tan(-directions[1] / 2) + (floor - ledge) * Math.tan(walls.draft().radians());
    }

    /** Distance outside the floor's outline at which the edge has turned into a surface of a height and slope there. */
    double reach(double mouth, double slope) {
        double[] corner = new double[2 * radii.length];
        corners(mouth, slope, corner);
        int last = radii.length - 1;
        return corner[2 * last] + radii[last] * Math.tan((slope - directions[last]) / 2) * Math.cos(slope);
    }

    /** Where the straight parts meet. */
    private void corners(double mouth, double slope, double[] corner) {
        double fall = Math.tan(walls.draft().radians());
        int last = radii.length - 1;
        corner[0] = radii[0] * Math.tan(-directions[1] / 2);
        corner[1] = floor;
        if (last == 3) {
            corner[2] = corner[0] + (floor - ledge) * fall;
            corner[3] = ledge;
            corner[4] = corner[2] + walls.rebate().orElseThrow().width();
            corner[5] = ledge;
        }
        double tangent = radii[last] * Math.tan((slope - directions[last]) / 2);
        corner[2 * last + 1] = mouth - tangent * Math.sin(slope);
        corner[2 * last] = corner[2 * last - 2] + (corner[2 * last - 1] - corner[2 * last + 1]) * fall;
    }

    /**
     * The points from the floor's outline to the mouth.
     *
     * @param mouth height at which it ends [m]
     * @param slope of the surface outside there, going outward [rad]
     * @param out distance and height of each, in turn
     */
    void trace(double mouth, double slope, double[] out) throws CannotBeBuilt {
        int count = radii.length;
        double[] corner = new double[2 * count];
        corners(mouth, slope, corner);
        double[] tangent = new double[count];
        for (int i = 0; i < count; i++) {
            tangent[i] = radii[i] * Math.tan(Math.abs(after(i, slope) - directions[i]) / 2);
        }
        require(corner, tangent, mouth);
        int at = 0;
        for (int i = 0; i < count; i++) {
            double from = directions[i];
            double to = after(i, slope);
            double hand = to < from ? 1 : -1;
            double middleX = corner[2 * i] - tangent[i] * Math.cos(from) + hand * radii[i] * Math.sin(from);
            double middleW = corner[2 * i + 1] - tangent[i] * Math.sin(from) - hand * radii[i] * Math.cos(from);
            for (int k = 0; k <= pieces[i]; k++) {
                double angle = from + (pieces[i] == 0 ? 0 : (to - from) * k / pieces[i]);
                out[at++] = radii[i] == 0 ? corner[2 * i] : middleX - hand * radii[i] * Math.sin(angle);
                out[at++] = radii[i] == 0 ? corner[2 * i + 1] : middleW + hand * radii[i] * Math.cos(angle);
            }
        }
    }

    /** Direction of the surface after a corner. */
    private double after(int corner, double slope) {
        return corner + 1 < radii.length ? directions[corner + 1] : slope;
    }

    /**
     * The section of the laminate's face so far behind.
     *
     * @param outside height of the face behind the surroundings, over distance
     */
    SectionBehind behind(double mouth, double slope, double behind, DoubleUnaryOperator outside) {
        int count = radii.length;
        double[] corner = new double[2 * count];
        corners(mouth, slope, corner);
        List<SectionPart> parts = new ArrayList<>();
        double endX = 0;
        double endW = 0;
        double outer = 0;
        for (int i = 0; i < count; i++) {
            double from = directions[i];
            double to = after(i, slope);
            double hand = to < from ? 1 : -1;
            double tangent = radii[i] * Math.tan(Math.abs(to - from) / 2);
            double startX = corner[2 * i] - tangent * Math.cos(from);
            double startW = corner[2 * i + 1] - tangent * Math.sin(from);
            if (i > 0) {
                parts.add(SectionPart.line(2 * i - 1, endX - behind * Math.sin(from), endW + behind * Math.cos(from),
                    startX - behind * Math.sin(from), startW + behind * Math.cos(from)));
            }
            double radius = radii[i] + hand * behind;
            if (radius > 0) {
                parts.add(SectionPart.arc(2 * i, startX + hand * radii[i] * Math.sin(from), startW - hand * radii[i] * Math.cos(from),
                    radius, hand, from, to));
            }
            endX = corner[2 * i] + tangent * Math.cos(to);
            endW = corner[2 * i + 1] + tangent * Math.sin(to);
            outer = endX - Math.min(behind, radii[i]) * Math.sin(to);
        }
        parts.add(SectionPart.outside(2 * count, outer, outside));
        return new SectionBehind(parts);
    }

    /** The points of a section behind, as many as of the finished one. */
    void trace(SectionBehind section, double[] out) {
        section.trace(pieces, out);
    }

    private void require(double[] corner, double[] tangent, double mouth) throws CannotBeBuilt {
        for (int i = 0; i + 1 < tangent.length; i++) {
            double length = Math.hypot(corner[2 * i + 2] - corner[2 * i], corner[2 * i + 3] - corner[2 * i + 1]);
            boolean turned = i % 2 == 0 ? corner[2 * i + 3] > corner[2 * i + 1] : corner[2 * i + 2] < corner[2 * i];
            double missing = turned ? length + tangent[i] + tangent[i + 1] : tangent[i] + tangent[i + 1] - length;
            if (missing > 1e-9) {
                if (tangent.length > 2) {
                    throw new CannotBeBuilt("walls " + Lengths.mm(floor - mouth) + " high have no room for rebate and radii, "
                        + Lengths.mm(missing) + " is wanting " + (i == 0 ? "above" : i == 1 ? "on" : "below") + " its ledge",
                        i == 0 ? "a rebate less deep by " + Lengths.mmUp(missing) + ", or a smaller radius at the floor"
                        : i == 1 ? "a ledge wider by " + Lengths.mmUp(missing) : "a rebate deeper by " + Lengths.mmUp(missing) + ", or none");
                }
                throw new CannotBeBuilt("walls " + Lengths.mm(floor - mouth) + " high have no room for radii of "
                    + Lengths.mm(walls.floorRadius()) + " at the floor and " + Lengths.mm(walls.edgeRadius()) + " at the edge",
                    "radii smaller by " + Lengths.mmUp(missing) + " together, or a pocket deeper by " + Lengths.mmUp(missing));
            }
        }
    }
}
