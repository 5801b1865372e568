package org.garboard.mount.told;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.acoustics.clearance.BeamClearance;
import org.garboard.acoustics.clearance.Block;
import org.garboard.acoustics.clearance.FeatureBodies;
import org.garboard.acoustics.clearance.RayFan;
import org.garboard.appendage.Keel;
import org.garboard.craft.LaidFeature;
import org.garboard.hull.Hull;
import org.garboard.hull.HullLine;
import org.garboard.mount.Bed;
import org.garboard.mount.LaidBottom;
import org.garboard.offsets.LineKind;
import org.garboard.units.Angle;

/**
 * What hangs below a bottom that a beam may run into: strakes and fittings, and the keel, be it part of the skin or hung below it. The rest of a skin
 * that rises outboard no beam meets that is narrower than what its deadrise leaves. Rays are cast at bodies alone which a cone about
 * the beam reaches; where it reaches none, and that is nearly everywhere, nothing is cast. Owns its arrays.
 */
final class BeamWay {
    /** To which a beam is followed [m]: bodies hang less deep. */
    private static final double RANGE = 3;
    private static final int RINGS = 5;
    private static final int SPOKES = 24;
    /** Of a keel [m]. */
    private static final double PIECE = 0.25;

    private final Hull hull;
    private final Face face;
    private final Block[] bodies;
    private final double[] box;

    /**
     * What sends the beam.
     *
     * @param inclination of the element towards the keel [rad]
     * @param radius of the face [m]
     * @param half angle of the beam [rad]
     */
    record Face(double inclination, double radius, double half) {
    }

    private BeamWay(Hull hull, Face face, List<Block> bodies) {
        this.hull = hull;
        this.face = face;
        this.bodies = bodies.toArray(Block[]::new);
        this.box = new double[5 * this.bodies.length];
        for (int i = 0; i < this.bodies.length; i++) {
            Block body = this.bodies[i];
            box[5 * i] = body.middle().getX() - body.along().getX();
            box[5 * i + 1] = body.middle().getX() + body.along().getX();
            box[5 * i + 2] = body.middle().getY() - body.across().getY();
            box[5 * i + 3] = body.middle().getY() + body.across().getY();
            box[5 * i + 4] = body.middle().getZ() - body.up().getZ();
        }
    }

    /** What is told of it. */
    static BeamWay told(LaidBottom bottom, Face face) {
        List<Block> bodies = new ArrayList<>(boxKeel(bottom.hull()));
        bottom.features().keel().ifPresent(keel -> bodies.addAll(keelBelow(keel)));
        bodies.addAll(FeatureBodies.of(bottom.hull(), bottom.features().laid()).bodies());
        return new BeamWay(bottom.hull(), face, bodies);
    }

    /**
     * That of which nobody tells how far it stands out, hanging by so much.
     *
     * @param height [m]
     */
    static BeamWay untold(LaidBottom bottom, Face face, double height) {
        List<LaidFeature> hanging = bottom.features().laid().stream().filter(feature -> feature.height().isEmpty())
            .map(feature -> new LaidFeature(feature.name(), feature.kind(), feature.sides(), feature.cover(), Optional.of(height))).toList();
        return new BeamWay(bottom.hull(), face, FeatureBodies.of(bottom.hull(), hanging).bodies());
    }

    /** A section through a keel, as a box: half its breadth, its bottom and its top [m]. */
    private record KeelCut(double half, double low, double high) {
    }

    private static List<Block> boxKeel(Hull hull) {
        Optional<HullLine> top = hull.lines().stream().filter(line -> line.kind() == LineKind.KEEL_TOP).findFirst();
        return top.map(line -> pieces(hull.firstSection(), hull.bottomEnd(), x -> new KeelCut(line.y(x), hull.keel().z(x), line.z(x)))).orElse(List.of());
    }

    /** What hangs below the rabbet. */
    private static List<Block> keelBelow(Keel keel) {
        return pieces(keel.from(), keel.to(), x -> new KeelCut(Math.max(keel.section(x).halfSiding(), keel.rabbet().y(x)), keel.section(x).z(), keel.rabbet().z(x)));
    }

    /** In pieces, each as large as the larger of its ends. */
    private static List<Block> pieces(double start, double end, DoubleFunction<KeelCut> cut) {
        List<Block> pieces = new ArrayList<>();
        int count = (int) Math.ceil((end - start) / PIECE);
        for (int i = 0; i < count; i++) {
            double from = start + (end - start) * i / count;
            double to = start + (end - start) * (i + 1) / count;
            KeelCut fore = cut.apply(from);
            KeelCut aft = cut.apply(to);
            double low = Math.min(fore.low, aft.low);
            double high = Math.max(fore.high, aft.high);
            double half = Math.max(fore.half, aft.half);
            if (high > low && half > 0) {
                pieces.add(Block.upright("the keel", Vector3D.of(from, -half, low), Vector3D.of(to, half, high)));
            }
        }
        return pieces;
    }

    /**
     * The share of the beam that is blocked; 0 where it is clear.
     *
     * @param outboard 1 where starboard is outboard, -1 where port is: the element leans the other way
     * @param below how far the face hangs below the skin [m]
     * @param lean of the face outboard by its seat [rad]
     * @param slope of the face fore and aft [rad]
     */
    double blocked(Bed bed, int outboard, double below, double lean, double slope) {
        List<Block> near = near(bed, below, lean, slope);
        return near.isEmpty() ? 0 : clearance(bed, outboard, below, lean, slope, near).blockedShare();
    }

    /** What stands in the beam nearest to the face; empty where it is clear. */
    String by(Bed bed, int outboard, double below, double lean, double slope) {
        List<Block> near = near(bed, below, lean, slope);
        return near.isEmpty() ? "" : clearance(bed, outboard, below, lean, slope, near).by();
    }

    private List<Block> near(Bed bed, double below, double lean, double slope) {
        double x = bed.x();
        double y = bed.y();
        double z = hull.height(x, Math.abs(y)) - below;
        double widest = Math.min(1.4, face.half() + Math.abs(lean - face.inclination()) + Math.abs(slope));
        double spread = Math.tan(widest);
        List<Block> near = List.of();
        for (int i = 0; i < bodies.length; i++) {
            double deeper = z - box[5 * i + 4];
            if (deeper > 0) {
                double dx = Math.max(0, Math.max(box[5 * i] - x, x - box[5 * i + 1]));
                double dy = Math.max(0, Math.max(box[5 * i + 2] - y, y - box[5 * i + 3]));
                double reach = face.radius() + deeper * spread;
                if (dx * dx + dy * dy < reach * reach) {
                    near = near.isEmpty() ? new ArrayList<>() : near;
                    near.add(bodies[i]);
                }
            }
        }
        return near;
    }

    private BeamClearance clearance(Bed bed, int outboard, double below, double lean, double slope, List<Block> near) {
        Vector3D middle = Vector3D.of(bed.x(), bed.y(), hull.height(bed.x(), Math.abs(bed.y())) - below);
        Vector3D normal = looking(slope, outboard * lean);
        Vector3D axis = looking(slope, outboard * (lean - face.inclination()));
        return BeamClearance.of(RayFan.cone(middle, normal, axis, face.radius(), Angle.ofRadians(face.half()), RINGS, SPOKES), RANGE, near);
    }

    /** Down, but for a lean to starboard, of more than a right angle too, and a rise aft. */
    private static Vector3D looking(double slope, double starboard) {
        return Vector3D.of(Math.tan(slope) * Math.cos(starboard), Math.sin(starboard), -Math.cos(starboard));
    }
}
