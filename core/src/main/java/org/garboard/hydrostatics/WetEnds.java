package org.garboard.hydrostatics;

import java.util.List;
import org.garboard.hull.Hull;
import org.garboard.hull.Panel;
import org.garboard.hull.TransomFace;

/**
 * What the water wets of a hull beside her skin.
 *
 * @param forward wet area of the flat, or of the stem, that closes the skin forward [m2]
 * @param after wet area of the flat that closes it aft: the transom, where the table ends there [m2]
 * @param steps wet area of the faces of steps, both sides [m2]
 */
public record WetEnds(double forward, double after, double steps) {

    /** To a surface of the water that a hull floats to. */
    public static WetEnds of(Hull hull, WaterSurface water) {
        WetFaces faces = new WetFaces(water);
        return new WetEnds(forward(hull, water, faces), after(hull, water, faces), hull.steps().stream().mapToDouble(faces::of).sum());
    }

    private static double forward(Hull hull, WaterSurface water, WetFaces faces) {
        return hull.stem().map(stem -> hull.panels().subList(0, hull.panelsAcross()).stream()
            .mapToDouble(panel -> faces.of(panel, stem)).sum()).orElseGet(() -> sectionArea(hull, water, hull.forwardEnd()));
    }

    private static double after(Hull hull, WaterSurface water, WetFaces faces) {
        List<Panel> last = hull.panels().subList(hull.panels().size() - hull.panelsAcross(), hull.panels().size());
        return last.get(0).aft() instanceof TransomFace transom
            ? last.stream().mapToDouble(panel -> faces.of(panel, transom)).sum() : sectionArea(hull, water, hull.afterEnd());
    }

    private static double sectionArea(Hull hull, WaterSurface water, double x) {
        double[] wet = new double[WetSection.SIZE];
        new WetSection(hull, water).sum(x, wet);
        return 2 * wet[WetSection.AREA];
    }
}
