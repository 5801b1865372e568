package org.garboard.mount.told;

import java.util.Comparator;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.garboard.acoustics.beam.Element;
import org.garboard.acoustics.beam.Spacing;
import org.garboard.craft.LaidFeature;
import org.garboard.geometry.Quad;
import org.garboard.hull.Hull;
import org.garboard.mount.Bed;
import org.garboard.mount.Footprint;
import org.garboard.mount.Installation;
import org.garboard.units.Angle;
import org.garboard.units.FixedDecimal;

/** A face beside another transducer: its main lobe must pass the other where that hangs lower. */
final class BesideAnother {
    /** Of an element too small to have a direction of no sound: our choice. */
    private static final Angle WIDEST = Angle.ofDegrees(75);
    private static final Angle MOST_LEAN = Angle.ofDegrees(14);

    private final Hull hull;
    private final Footprint body;
    private final ToDoubleFunction<Bed> low;
    private final ToDoubleFunction<Bed> lean;
    private final double inclination;
    private final Optional<Element> widest;

    /**
     * @param body in plan
     * @param low how far its face hangs below the skin [m]
     * @param lean how far the body leans outboard by its seat [rad]
     */
    BesideAnother(Installation installation, Hull hull, Footprint body, ToDoubleFunction<Bed> low, ToDoubleFunction<Bed> lean) {
        this.hull = hull;
        this.body = body;
        this.low = low;
        this.lean = lean;
        this.inclination = installation.transducer().elementInclination().radians();
        this.widest = installation.details().beams().stream().map(beam -> Element.of(beam, SoundAsked.SEA_SPEED))
            .max(Comparator.comparingDouble(element -> lobe(element).radians()));
    }

    private static Angle lobe(Element element) {
        double across = element.firstNull(Element.Plane.ATHWART).orElse(WIDEST).radians();
        double along = element.firstNull(Element.Plane.FORE_AND_AFT).orElse(WIDEST).radians();
        return Angle.ofRadians(Math.min(WIDEST.radians(), Math.max(across, along)));
    }

    /** Between the edges of the bodies, less by how much the lobe asks for more than two bodies do [m]. */
    double room(LaidFeature other, Bed bed) {
        double gap = other.gap(bed.x(), bed.y(), body.length(), body.width());
        return gap - spacing(other, bed).map(spacing -> spacing.least() - Spacing.LEAST_BETWEEN_BODIES).orElse(0.0);
    }

    private Optional<Spacing> spacing(LaidFeature other, Bed bed) {
        double drop = drop(other, bed);
        if (widest.isEmpty() || !(drop > 0)) {
            return Optional.empty();
        }
        double leans = Math.min(MOST_LEAN.radians(), Math.abs(lean.applyAsDouble(bed) - inclination));
        return Optional.of(Spacing.between(widest.get(), lobe(widest.get()), Angle.ofRadians(leans), drop));
    }

    /** How far the other's lowest place hangs below this face [m]; NaN where it is not told. */
    private double drop(LaidFeature other, Bed bed) {
        double lowest = Double.POSITIVE_INFINITY;
        for (Quad quad : other.cover()) {
            for (int corner = 0; corner < Quad.CORNERS; corner++) {
                double z = hull.height(quad.x(corner), Math.abs(quad.y(corner)));
                lowest = z < lowest ? z : lowest;
            }
        }
        return hull.height(bed.x(), Math.abs(bed.y())) - low.applyAsDouble(bed) - lowest + other.height().orElse(Double.NaN);
    }

    /** What is not told of the other, a sentence; empty where nothing is wanting. */
    String doubt(LaidFeature other, Bed bed) {
        if (widest.isEmpty()) {
            return "The beam is not told: whether \"" + other.name() + "\" hangs in it is not known.";
        }
        return Double.isNaN(drop(other, bed)) ? "How far \"" + other.name() + "\" hangs below the skin is not told." : "";
    }

    /** Where the lobe asks for more than two bodies do; and whether the other stands beside the near field. */
    String told(LaidFeature other, Bed bed) {
        return spacing(other, bed).filter(Spacing::besideNearField).map(spacing -> "\"" + other.name() + "\" hangs " + millimetres(spacing.drop())
            + " lower, beside the near field, which reaches " + millimetres(spacing.nearField()) + " down.").orElse("");
    }

    private static String millimetres(double metres) {
        return FixedDecimal.format(1000 * metres, 0) + " mm";
    }
}
