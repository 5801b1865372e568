package org.garboard.drawing.sheets;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.cutout.part.NamedSolid;
import org.garboard.drawing.Point;
import org.garboard.drawing.Scale;
import org.garboard.solid.PlaneCut;

/**
 * The two planes through a hole's axis, athwart and lengthwise, in which its parts are shown.
 *
 * @param origin where the axis meets the outside of the skin, hull frame [m]
 * @param along unit vector aft
 * @param athwart unit vector to starboard
 * @param up unit vector along the axis into the boat
 */
record AxisPlanes(Vector3D origin, Vector3D along, Vector3D athwart, Vector3D up) {

    /** Fore and aft as the boat is. */
    static AxisPlanes of(Vector3D origin, Vector3D up) {
        return turned(origin, up, 0);
    }

    /** Turned about the axis, from aft towards starboard [rad]. */
    static AxisPlanes turned(Vector3D origin, Vector3D up, double turn) {
        Vector3D aft = Vector3D.Unit.PLUS_X.subtract(up.multiply(up.getX())).normalize();
        Vector3D along = aft.multiply(Math.cos(turn)).add(up.cross(aft).multiply(Math.sin(turn)));
        return new AxisPlanes(origin, along, up.cross(along), up);
    }

    /** A part in the plane that stands athwart, looking forward: starboard to the right, up along the axis. */
    List<List<Point>> athwart(NamedSolid part, Scale scale) {
        return cut(part, along, athwart, scale);
    }

    /** The same in the plane along the axis and aft, from starboard: bow to the right. */
    List<List<Point>> lengthwise(NamedSolid part, Scale scale) {
        return cut(part, athwart, along.negate(), scale);
    }

    private List<List<Point>> cut(NamedSolid part, Vector3D normal, Vector3D right, Scale scale) {
        return PlaneCut.of(part.solid(), origin, normal).stream().map(loop -> loop.stream().map(place -> place.subtract(origin))
                .map(place -> new Point(scale.paper(place.dot(right)), scale.paper(place.dot(up)))).toList()).toList();
    }

    /** How far the axis' upper end leans to starboard of plumb, in the plane athwart [rad]. */
    double leanToStarboard() {
        return -Math.atan2(athwart.getZ(), up.getZ());
    }

    /** How far the axis' upper end leans forward of plumb, in the plane lengthwise [rad]. */
    double leanForward() {
        return Math.atan2(along.getZ(), up.getZ());
    }
}
