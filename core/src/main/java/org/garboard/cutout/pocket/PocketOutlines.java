package org.garboard.cutout.pocket;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/** The lines of a pocket's finished face, hull frame, each closed, from forward on its middle, first along starboard. */
final class PocketOutlines {
    private final PocketForm form;
    private final PocketSurface surface;
    private final double[] net;

    /** @param net of the finished face */
    PocketOutlines(PocketForm form, PocketSurface surface, double[] net) {
        this.form = form;
        this.surface = surface;
        this.net = net;
    }

    List<Vector3D> floor() {
        return ring(0);
    }

    /** Where the walls end, on the face's surroundings or on the skin. */
    List<Vector3D> mouth() {
        return ring(surface.mouthRing());
    }

    /** Where pocket and blends meet the skin. */
    List<Vector3D> opening() {
        return ring(surface.rings() - 1);
    }

    /** The highest place of the face's surroundings, where air gathers; what lies higher is filled by body and bedding. */
    Vector3D crest() {
        Vector3D highest = opening().get(0);
        for (int ring = surface.mouthRing(); ring < surface.rings(); ring++) {
            for (Vector3D place : ring(ring)) {
                highest = place.getZ() > highest.getZ() ? place : highest;
            }
        }
        return highest;
    }

    /** Height of the highest place of the opening, over which air runs out. */
    double rim() {
        return opening().stream().mapToDouble(Vector3D::getZ).max().orElseThrow();
    }

    /** How far the opening reaches, along (0) or across (1), in a direction [m]. */
    double extreme(int axis, int sign) {
        double most = Double.NEGATIVE_INFINITY;
        for (int ray = 0; ray < surface.rays().count(); ray++) {
            most = Math.max(most, sign * net[surface.at(ray, surface.rings() - 1) + axis]);
        }
        return most;
    }

    private List<Vector3D> ring(int ring) {
        List<Vector3D> places = new ArrayList<>();
        int count = surface.rays().count();
        int first = 0;
        for (int ray = 1; ray < count; ray++) {
            if (surface.rays().alongU(ray) == -1 && (surface.rays().alongU(first) != -1
                    || Math.abs(surface.rays().v(ray)) < Math.abs(surface.rays().v(first)))) {
                first = ray;
            }
        }
        for (int i = 0; i < count; i++) {
            int at = surface.at((first - i + count) % count, ring);
            places.add(form.frame().toHull(net[at], net[at + 1], net[at + 2]));
        }
        return places;
    }
}
