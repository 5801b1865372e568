package org.garboard.appendage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.hull.Hull;
import org.garboard.hull.HullLine;
import org.garboard.offsets.HullOffsets;
import org.garboard.offsets.KeelRows;

/**
 * A keel below the skin, deadwood and all: a slab on the centreline, flat-sided and flat-bottomed in every section, from
 * the rabbet down. Its bottom runs straight from station to station (our choice, because keels are built of straight
 * timber and plate); its top is the rabbet as the hull has it. It ends plumb where its row in the table ends.
 *
 * @param name of its bottom, as the table has it
 * @param rabbet the hull's line to which the skin comes down
 * @param bottom its bottom, from forward aft
 */
public record Keel(String name, HullLine rabbet, List<Knee> bottom) {

    /**
     * Where its bottom may change direction.
     *
     * @param halfSiding half its breadth at the bottom [m]
     */
    public record Knee(double x, double z, double halfSiding) {
    }

    public Keel {
        bottom = List.copyOf(bottom);
        if (bottom.size() < 2) {
            throw new IllegalArgumentException("a keel has two knees at least, not " + bottom.size());
        }
    }

    /** The keel that hangs on a hull, if its offsets give one. */
    public static Optional<Keel> of(HullOffsets offsets, Hull hull) {
        return hull.skinLine() == 0 ? Optional.empty()
            : offsets.keelBelow().map(rows -> of(rows, hull, hull.lines().get(hull.skinLine())));
    }

    /** A keel that was measured at plumb stations of a trimmed boat may reach past her skin; it is cut off there. */
    private static Keel of(KeelRows rows, Hull hull, HullLine rabbet) {
        List<Knee> bottom = new ArrayList<>();
        for (KeelRows.Cut cut : rows.cuts()) {
            double within = Math.max(rabbet.forwardEnd(), Math.min(rabbet.afterEnd(), cut.x()));
            bottom.add(new Knee(cut.x(), cut.z(), cut.halfSiding().orElseGet(() -> rabbet.y(within))));
        }
        Keel whole = new Keel(rows.name(), rabbet, bottom);
        double from = Math.max(whole.from(), Math.max(hull.forwardEnd(), rabbet.forwardEnd()));
        double to = Math.min(whole.to(), rabbet.afterEnd());
        List<Knee> covered = new ArrayList<>(bottom);
        covered.removeIf(knee -> knee.x() <= from || knee.x() >= to);
        covered.add(0, whole.section(from));
        covered.add(whole.section(to));
        return new Keel(rows.name(), rabbet, covered);
    }

    /** x of its forward end [m]. */
    public double from() {
        return bottom.get(0).x();
    }

    /** x of its after end [m]. */
    public double to() {
        return bottom.get(bottom.size() - 1).x();
    }

    /** Whether it hangs below a place; at its very edge it does. */
    public boolean isOver(double x, double y) {
        return x >= from() && x <= to() && Math.abs(y) <= Math.max(rabbet.y(x), section(x).halfSiding()) && depth(x) > 0;
    }

    /** How far it hangs below the rabbet [m], never less than 0. */
    public double depth(double x) {
        return Math.max(0, rabbet.z(x) - section(x).z());
    }

    /** The lowest place of the keel: a face that hangs below it meets the ground first. */
    public Knee lowest() {
        Knee lowest = bottom.get(0);
        for (Knee knee : bottom) {
            lowest = knee.z() < lowest.z() ? knee : lowest;
        }
        return lowest;
    }

    /** Its bottom at x, between its ends. */
    public Knee section(double x) {
        int i = span(x);
        Knee fore = bottom.get(i);
        Knee aft = bottom.get(i + 1);
        double share = (x - fore.x()) / (aft.x() - fore.x());
        return new Knee(x, fore.z() + share * (aft.z() - fore.z()), fore.halfSiding() + share * (aft.halfSiding() - fore.halfSiding()));
    }

    /** Change of its bottom with x, at x: dz/dx and the half-siding's. */
    public Knee change(double x) {
        int i = span(x);
        Knee fore = bottom.get(i);
        Knee aft = bottom.get(i + 1);
        return new Knee(x, (aft.z() - fore.z()) / (aft.x() - fore.x()), (aft.halfSiding() - fore.halfSiding()) / (aft.x() - fore.x()));
    }

    private int span(double x) {
        int i = 0;
        while (i < bottom.size() - 2 && x > bottom.get(i + 1).x()) {
            i++;
        }
        return i;
    }

    /** Its profile below the rabbet: down its forward end, along its bottom, up its after end. */
    public List<Vector3D> profile() {
        List<Vector3D> profile = new ArrayList<>();
        profile.add(Vector3D.of(from(), 0, rabbet.z(from())));
        bottom.forEach(knee -> profile.add(Vector3D.of(knee.x(), 0, knee.z())));
        profile.add(Vector3D.of(to(), 0, rabbet.z(to())));
        return profile;
    }

    /** Its starboard half cut at x, from the rabbet down and in to the centreline; empty beyond its ends. */
    public List<Vector3D> cut(double x) {
        if (!(x >= from() && x <= to() && depth(x) > 0)) {
            return List.of();
        }
        Knee foot = section(x);
        return List.of(Vector3D.of(x, rabbet.y(x), rabbet.z(x)), Vector3D.of(x, foot.halfSiding(), foot.z()), Vector3D.of(x, 0, foot.z()));
    }
}
