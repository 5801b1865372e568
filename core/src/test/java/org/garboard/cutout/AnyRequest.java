package org.garboard.cutout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import net.jqwik.api.statistics.Statistics;
import org.garboard.craft.Transducer;
import org.garboard.cutout.inhull.BathWish;
import org.garboard.cutout.part.ThroughHullWish;
import org.garboard.cutout.transom.BracketWish;
import org.garboard.hull.Hull;
import org.garboard.siting.Boats;
import org.garboard.skin.Layup;
import org.garboard.units.Angle;

/** A request drawn by lot: half of them such as a yard would make, half of them silly. */
final class AnyRequest {
    private static final List<Hull> HULLS = List.of(Boats.prismaticV(0), Boats.prismaticV(20), Boats.warpedV(30, 12),
        Boats.brokenV(24, 14), Boats.cylinder(1.2), Boats.sphere(4), Boats.thirtyNineFeet());

    final Random lot;
    final Hull hull;
    final boolean sensible;

    AnyRequest(long seed) {
        this.lot = new Random(seed);
        this.hull = HULLS.get(lot.nextInt(HULLS.size()));
        this.sensible = lot.nextBoolean();
    }

    /** In a silly request every third figure is silly, so that the others come to be used. */
    private boolean usual() {
        return sensible || lot.nextInt(3) > 0;
    }

    double from(double least, double most) {
        return least + (most - least) * lot.nextDouble();
    }

    /** Spread over decades, far beyond what anyone would ask. */
    double any() {
        return Math.pow(10, from(-4, 0.3));
    }

    Transducer body() {
        double length = usual() ? from(0.06, 0.20) : any();
        double width = usual() ? from(0.05, 0.12) : any();
        double height = usual() ? from(0.01, 0.04) : any();
        double radius = from(0, sensible ? 0.5 : 0.6) * Math.min(length, width);
        double stem = lot.nextInt(4) == 0 ? 0 : usual() ? from(0.015, 0.030) : from(0, 1.1) * width;
        return new Transducer("any", length, width, height, radius, stem, Angle.ofDegrees(from(0, 25)));
    }

    ThroughHullWish wish() {
        Layup skin = lot.nextBoolean() ? new Layup.Whole(usual() ? from(0.005, 0.025) : Math.min(0.9, any()))
            : usual() ? new Layup.Sandwich(from(0.002, 0.006), Layup.Core.FOAM, from(0.010, 0.025), from(0.002, 0.005))
            : new Layup.Sandwich(Math.min(0.3, any()), Layup.Core.FOAM, Math.min(0.3, any()), Math.min(0.3, any()));
        return new ThroughHullWish(lot.nextInt(8) == 0 ? Optional.empty() : Optional.of(skin), usual() ? from(0, 0.005) : Math.min(1, any()),
            usual() ? from(0.02, 0.05) : Math.min(1, any()), usual() ? from(0.01, 0.03) : Math.min(1, any()),
            lot.nextInt(3) == 0 ? OptionalDouble.of(usual() ? from(0.08, 0.15) : Math.min(1, any())) : OptionalDouble.empty(),
            usual() ? from(5e-5, 3e-4) : Math.min(1, any())).sleeved(lot.nextInt(4) > 0 ? 0 : usual() ? 0.003 : Math.min(1, any()));
    }

    BathWish bath() {
        // no yard asks for one on a core; where it does all the same it is silly
        Optional<Layup> skin = sensible ? Optional.of(new Layup.Whole(from(0.005, 0.025))) : wish().skin();
        return new BathWish(skin, usual() ? from(0.004, 0.012) : any(), Angle.ofDegrees(usual() ? from(5, 20) : from(-20, 60)),
            usual() ? from(5e-5, 3e-4) : any());
    }

    BracketWish bracket() {
        List<BracketWish.Screw> screws = new ArrayList<>();
        for (int i = lot.nextInt(4); i > 0; i--) {
            screws.add(new BracketWish.Screw(usual() ? from(-0.04, 0.04) : from(-2, 2), usual() ? from(0.07, 0.15) : from(-0.2, 2),
                usual() ? from(0.003, 0.006) : any()));
        }
        return new BracketWish(usual() ? from(0, 0.02) : from(-0.1, 0.2), screws, usual() ? from(0.006, 0.02) : any(), usual() ? from(5e-5, 3e-4) : any());
    }

    double x() {
        double length = hull.afterEnd() - hull.forwardEnd();
        return hull.forwardEnd() + length * (usual() ? from(0.55, 0.9) : from(-0.2, 1.2));
    }

    double y() {
        double side = lot.nextBoolean() ? 1 : -1;
        return side * (usual() ? from(0.20, 0.40) : from(0, 1.5));
    }

    void tell(String what, boolean built) {
        if (sensible) {
            Statistics.label(what + ", sensible").collect(built)
                .coverage(coverage -> coverage.check(true).percentage(share -> share >= 60));
        } else {
            Statistics.label(what + ", silly").collect(built);
        }
    }
}
