package org.garboard.cutout.pocket;

import org.garboard.cutout.CannotBeBuilt;
import org.garboard.cutout.Lengths;
import org.garboard.mount.PocketWish;
import org.garboard.mount.pocket.Floor;
import org.garboard.mount.pocket.PocketLayup;
import org.garboard.mount.pocket.PocketMake;
import org.garboard.mount.pocket.Walls;
import org.garboard.units.FixedDecimal;

/** What can be asked of a pocket at all, whatever the boat. */
final class PocketLimits {
    /** Our choice: steeper walls are a cone, not a pocket [deg]. */
    private static final double MOST_DRAFT_DEG = 30;
    /** Our choice [m]. */
    private static final double LARGEST_RADIUS = 0.1;
    private static final double LARGEST_GAP = 0.05;
    /** Steeper than 1:1 nothing fairs; flatter than 1:100 nobody can tell from the skin: our choice. */
    private static final double SHORTEST_RAMP = 1;
    private static final double LONGEST_RAMP = 100;
    /** Thinner is paint; thicker is no pocket's laminate: our choice. */
    private static final double THINNEST_MM = 0.2;
    private static final double THICKEST_MM = 50;
    private static final double FINEST = 1e-5;
    private static final double COARSEST = 1e-3;

    private PocketLimits() {
    }

    static void check(PocketWish wish, BoatTold boat) throws CannotBeBuilt {
        PocketMake make = wish.make();
        Walls walls = make.walls();
        between("a draft angle of ", walls.draft().degrees(), Walls.LEAST_DRAFT_DEG, MOST_DRAFT_DEG, " deg");
        between("a radius at the floor of ", 1000 * walls.floorRadius(), 0, 1000 * LARGEST_RADIUS, " mm");
        between("a radius at the edge of ", 1000 * walls.edgeRadius(), 0, 1000 * LARGEST_RADIUS, " mm");
        between("a bedding gap of ", 1000 * wish.gap(), 0, 1000 * LARGEST_GAP, " mm");
        if (walls.rebate().isPresent()) {
            between("a rebate's ledge of ", 1000 * walls.rebate().get().width(), 1, 1000 * LARGEST_RADIUS, " mm");
            between("a rebate's depth of ", 1000 * walls.rebate().get().depth(), 1, 1000 * LARGEST_RADIUS, " mm");
            if (walls.rebate().get().screws().isPresent()) {
                FlangeScrews.check(walls.rebate().get());
            }
        }
        if (wish.rampRatio() != 0) {
            between("ramps of 1:", wish.rampRatio(), SHORTEST_RAMP, LONGEST_RAMP, "");
            between("side blends of 1:", make.blend().sideRatio(), SHORTEST_RAMP, LONGEST_RAMP, "");
        }
        if (make.blend().steepest().isPresent()) {
            between("a steepest slope of ", make.blend().steepest().get().degrees(), 1, 60, " deg");
        }
        between("a chord error of ", 1000 * make.chord(), 1000 * FINEST, 1000 * COARSEST, " mm");
        between("a shrinkage of ", 100 * make.former().shrinkage(), 0, 3, " %");
        if (make.former().flange() != 0) {
            between("a former's rim of ", 1000 * make.former().flange(), 10, 300, " mm");
        }
        between("halves pulled off plumb by ", make.former().pull().degrees(), 0, 90, " deg");
        layup(make.layup());
        noseDown(make.floor(), boat);
    }

    private static void layup(PocketLayup layup) throws CannotBeBuilt {
        if (layup.gelcoat() != 0) {
            between("gelcoat of ", 1000 * layup.gelcoat(), THINNEST_MM, THICKEST_MM, " mm");
        }
        for (PocketLayup.Layer layer : layup.layers()) {
            between("a layer of laminate of ", 1000 * layer.thickness(), THINNEST_MM, THICKEST_MM, " mm");
        }
        between("a scarf of 1:", layup.scarf(), 1, LONGEST_RAMP, "");
        between("a gap round the tray of ", 1000 * layup.trayGap(), 0, 1000 * LARGEST_GAP, " mm");
    }

    private static void noseDown(Floor floor, BoatTold boat) throws CannotBeBuilt {
        double drop = floor.trailingEdgeLower().degrees();
        between("a face with its after edge lower by ", drop, -Floor.MOST_DROP_DEG, Floor.MOST_DROP_DEG, " deg");
        if (drop < -1e-9 && !(boat.fastestKnots().orElse(Double.POSITIVE_INFINITY) <= Floor.NOSE_DOWN_KNOTS)) {
            throw new CannotBeBuilt("the face would stand " + FixedDecimal.format(-drop, 1) + " deg nose-down to the water along the bottom, "
                + (boat.fastestKnots().isPresent() ? "at " + FixedDecimal.format(boat.fastestKnots().getAsDouble(), 1) + " kn"
                : "and no speed is told") + "; above " + FixedDecimal.format(Floor.NOSE_DOWN_KNOTS, 0) + " kn it sucks",
                "its after edge lower by 0.0 to " + FixedDecimal.format(Floor.MOST_DROP_DEG, 1) + " deg");
        }
    }

    static void between(String what, double value, double least, double most, String unit) throws CannotBeBuilt {
        if (!(value >= least - 1e-9 && value <= most + 1e-9)) {
            throw new CannotBeBuilt(what + figure(value) + unit, (value < least ? figure(least) : figure(most)) + unit + "; from "
                + figure(least) + " to " + figure(most) + unit);
        }
    }

    private static String figure(double value) {
        return FixedDecimal.format(value, Math.abs(value) < 1 ? 3 : 1);
    }

    /** Whether the body's corners go into the floor. */
    static void corner(double radius, double gap, double lesser) throws CannotBeBuilt {
        if (radius > lesser / 2) {
            throw new CannotBeBuilt("a corner radius of " + Lengths.mm(radius) + " is more than half the pocket's lesser side of "
                + Lengths.mm(lesser), "a corner radius of the body of " + Lengths.mm(lesser / 2 - gap) + " at most");
        }
    }
}
