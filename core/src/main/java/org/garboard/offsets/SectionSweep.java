package org.garboard.offsets;

/**
 * The order of points along one section, from the keel outward to the sheer.
 *
 * <p>Points are seen from an eye across the centreline and above the sheer, and ordered by the angle
 * at which they are seen. Projection on the line from keel to sheer would do for most sections, but
 * not for a round bilge with tumblehome, which turns through more than a right angle. The place
 * of the eye is our choice: one depth of the section inboard of the centreline and one above the sheer,
 * from where a flat bottom, a flat flare, a vertical stem and tumblehome all run the same way.
 */
final class SectionSweep {
    private final double eyeY;
    private final double eyeZ;

    /** Of a section whose sheer stands above its keel. */
    SectionSweep(SectionPoint keel, SectionPoint sheer) {
        double depth = sheer.z() - keel.z();
        eyeY = -depth;
        eyeZ = sheer.z() + depth;
    }

    /** How far up the section a point is seen [rad], rising from the keel to the sheer. */
    double at(SectionPoint point) {
        return Math.atan2(point.y() - eyeY, eyeZ - point.z());
    }

    /** How far past another a point is seen [m], negative if before it. */
    double past(SectionPoint point, SectionPoint other) {
        return (at(point) - at(other)) * Math.hypot(point.y() - eyeY, point.z() - eyeZ);
    }
}
