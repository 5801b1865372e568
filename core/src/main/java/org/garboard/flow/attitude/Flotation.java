package org.garboard.flow.attitude;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.garboard.appendage.Keel;
import org.garboard.hull.Hull;
import org.garboard.hull.HullLine;
import org.garboard.hydrostatics.Floating;
import org.garboard.hydrostatics.HullToFloat;
import org.garboard.hydrostatics.Hydrostatics;
import org.garboard.hydrostatics.KeelAfloat;
import org.garboard.hydrostatics.Together;
import org.garboard.hydrostatics.WaterSurface;
import org.garboard.units.Angle;

/** Floats a hull at rest: so deep that she displaces her mass, trimmed so that buoyancy passes through her centre of gravity. */
public final class Flotation {
    /** More trim than this at rest is no boat lying afloat: our choice [deg]. */
    private static final double MOST_TRIM = 15;
    /** Most change of trim in one turn, as a slope. */
    private static final double STRIDE = 0.05;
    private static final int TURNS = 60;
    /** Mass is met to this part of itself, slope and height of the water [m] to this. */
    private static final double CLOSE = 1e-10;
    /** Mass is met to this part of itself before trim and height are sought together. */
    private static final double ROUGH = 1e-2;
    /** Mass to this part of itself, slope and height of the water [m] to this: so near, sums along her are made with care. */
    private static final double NEAR = 1e-3;
    /** A boat less stiff lengthwise than this is none afloat [m]. */
    private static final double LEAST_STIFF = 1e-3;
    private static final int LOOKS = 400;

    private final Hull hull;
    private final HullToFloat toFloat;
    private final Optional<Keel> keel;
    private final double density;

    /** @param density of the water [kg/m3] */
    public Flotation(Hull hull, Optional<Keel> keel, double density) {
        this.hull = hull;
        this.toFloat = new HullToFloat(hull);
        this.keel = keel;
        this.density = density;
    }

    /** How she lies, or why she does not. */
    public sealed interface Answer permits Afloat, Sinks {
    }

    /**
     * She floats.
     *
     * @param hull how her skin lies
     * @param whole skin and keel together
     */
    public record Afloat(Hydrostatics hull, Together whole) implements Answer {
        public Angle trim() {
            return hull.water().trim();
        }

        /** Of the wet part, along the base line [m]. */
        public double length() {
            return hull.to() - hull.from();
        }
    }

    /** She does not. @param reason in words */
    public record Sinks(String reason) implements Answer {
    }

    /** At the trim at which she comes to rest: height and slope of the water together by Newton's steps, from even keel. */
    public Answer atRest(Load load) {
        Answer answer = even(load, Angle.ofDegrees(0));
        boolean rough = true;
        double most = Math.tan(Math.toRadians(MOST_TRIM));
        for (int turn = 0; turn < TURNS; turn++) {
            if (!(answer instanceof Afloat afloat)) {
                return answer;
            }
            double turned = turn(load, afloat);
            double raised = (load.mass() / density - afloat.whole().volume()) / rate(afloat)
                - (afloat.hull().waterplane().lcf() - load.x()) * turned;
            WaterSurface water = afloat.hull().water();
            if (!rough && Math.abs(turned) <= CLOSE && Math.abs(raised) <= CLOSE) {
                return afloat;
            }
            double slope = water.slope() + turned;
            if (Math.abs(slope) > most) {
                break;
            }
            Angle trim = Angle.ofRadians(Math.atan(slope));
            rough = rough && Math.max(Math.abs(turned), Math.abs(raised)) > NEAR;
            WaterSurface next = new WaterSurface(water.height() + raised, load.x(), trim);
            answer = (rough ? toFloat.roughly(next) : toFloat.to(next)) instanceof Hydrostatics floating
                ? new Afloat(floating, whole(floating)) : even(load, trim);
        }
        return new Sinks(String.format(Locale.ROOT, "centre of gravity at x = %.3f m, %.3f m above base: with %.0f kg there she floats at no "
            + "trim within %.0f deg", load.x(), load.z(), load.mass(), MOST_TRIM));
    }

    /** By how much the water's slope is to grow, the layer that is still missing laid on at the centre of flotation. */
    private double turn(Load load, Afloat afloat) {
        double slope = afloat.hull().water().slope();
        double target = load.mass() / density;
        double above = load.z() - afloat.whole().vcb();
        double lcb = afloat.whole().lcb() + (1 - afloat.whole().volume() / target) * (afloat.hull().waterplane().lcf() - afloat.whole().lcb());
        double stiff = afloat.whole().longitudinalBm() * Math.pow(1 + slope * slope, 1.5) - above;
        return Math.max(-STRIDE, Math.min(STRIDE, (load.x() - lcb + slope * above) / Math.max(stiff, LEAST_STIFF)));
    }

    /** Volume for each metre that the water rises [m2]. */
    private static double rate(Afloat afloat) {
        return afloat.hull().waterplane().area() * Math.cos(afloat.trim().radians());
    }

    /** At a trim that is told, her mass displaced. */
    public Answer at(Load load, Angle trim) {
        return at(load, trim, OptionalDouble.empty(), CLOSE);
    }

    /** The same of a load whose rest is known: sought from there, turned about the centre of its waterplane. */
    Answer at(Load load, Angle trim, Afloat atRest) {
        double lcf = atRest.hull().waterplane().lcf();
        return at(load, trim, OptionalDouble.of(atRest.hull().water().at(lcf) + Math.tan(trim.radians()) * (load.x() - lcf)), CLOSE);
    }

    /** At a trim, her mass displaced roughly. */
    private Answer even(Load load, Angle trim) {
        return at(load, trim, OptionalDouble.empty(), ROUGH);
    }

    private Answer at(Load load, Angle trim, OptionalDouble guess, double close) {
        double slope = Math.tan(trim.radians());
        double target = load.mass() / density;
        double least = least(hull.keel(), load.x(), slope);
        double most = least(hull.lines().get(hull.lines().size() - 1), load.x(), slope);
        double low = least;
        double high = most;
        double middle = 0.5 * (low + high);
        double height = guess.stream().filter(told -> told > least && told < most).findFirst().orElse(middle);
        boolean rough = true;
        for (int turn = 0; turn < TURNS; turn++) {
            WaterSurface water = new WaterSurface(height, load.x(), trim);
            Floating floating = rough ? toFloat.roughly(water) : toFloat.to(water);
            double rate = 0;
            double miss = -target;
            if (floating instanceof Hydrostatics afloat) {
                Together whole = whole(afloat);
                miss = whole.volume() - target;
                rate = afloat.waterplane().area() * Math.cos(trim.radians());
                if (Math.abs(miss) <= close * target && (close == ROUGH || !rough)) {
                    return new Afloat(afloat, whole);
                }
            } else if (floating instanceof Floating.Swamped) {
                miss = target;
            }
            if (rough && Math.abs(miss) <= NEAR * target) {
                rough = false;
                low = least;
                high = most;
            } else if (miss > 0) {
                high = height;
            } else {
                low = height;
            }
            double next = rate > 0 ? height - miss / rate : Double.NaN;
            height = next > low && next < high ? next : 0.5 * (low + high);
        }
        return new Sinks(String.format(Locale.ROOT, "mass %.0f kg: at a trim of %.2f deg she floats with at most %.0f kg before the water comes over her sheer",
            load.mass(), trim.degrees(), most(low, load.x(), trim)));
    }

    private double most(double height, double about, Angle trim) {
        return toFloat.to(new WaterSurface(height, about, trim)) instanceof Hydrostatics afloat ? whole(afloat).mass(density) : 0;
    }

    /** To a surface of the water that is told, whatever she weighs so. */
    public Answer to(WaterSurface water) {
        Floating floating = toFloat.to(water);
        if (floating instanceof Hydrostatics afloat) {
            return new Afloat(afloat, whole(afloat));
        }
        String lies = String.format(Locale.ROOT, "water at %.3f m above base at x = %.3f m, trim %.2f deg, ", water.height(), water.about(), water.trim().degrees());
        return new Sinks(lies + (floating instanceof Floating.Swamped over
            ? String.format(Locale.ROOT, "comes %.3f m over the sheer at x = %.3f m", over.depth(), over.x())
            : String.format(Locale.ROOT, "does not cut the hull: her keel stays %.3f m above it", ((Floating.ClearOfWater) floating).lowest())));
    }

    /** From the water down to the lowest place of the keel line, square to the water [m]. */
    static double draught(Hull hull, WaterSurface surface) {
        double deepest = 0;
        for (int i = 0; i <= 200; i++) {
            double x = hull.keel().forwardEnd() + (hull.foot() - hull.keel().forwardEnd()) * i / 200;
            deepest = Math.max(deepest, surface.at(x) - hull.keel().z(x));
        }
        return deepest * Math.cos(surface.trim().radians());
    }

    private Together whole(Hydrostatics afloat) {
        return keel.map(each -> Together.of(afloat, KeelAfloat.of(each, afloat.water())))
            .orElseGet(() -> new Together(afloat.volume(), afloat.lcb(), afloat.vcb(), afloat.wettedSkin(), afloat.transverseBm(), afloat.longitudinalBm()));
    }

    /** Height at x = about of sloping water that just touches the lowest place of a line [m]. */
    private double least(HullLine line, double about, double slope) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= LOOKS; i++) {
            double x = line.forwardEnd() + (line.afterEnd() - line.forwardEnd()) * i / LOOKS;
            least = Math.min(least, line.z(x) - slope * (x - about));
        }
        return least;
    }
}
