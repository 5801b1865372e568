package org.garboard.siting;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.garboard.cutout.KeelPocketCut;
import org.garboard.cutout.Pocket;
import org.garboard.cutout.PocketOutcome;
import org.garboard.cutout.pocket.BoatTold;
import org.garboard.hull.Hull;
import org.garboard.mount.Check;
import org.garboard.mount.Installation;
import org.garboard.mount.PocketWish;
import org.garboard.mount.pocket.Blend;
import org.garboard.mount.pocket.Floor;
import org.garboard.mount.pocket.PocketMake;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;

/** Where the checks say that a pocket may be, it can be cut, and checks and cut tell the same figures. */
class PocketAgreementTest {

    @Test
    void law_aPocketCanBeCutWhereTheChecksPass() {
        SitingTask task = Boats.task(0.62, 0.300, 0.140, 0, Boats.POCKET);
        Installation installation = task.installation();
        int cut = 0;
        for (Hull hull : List.of(Boats.prismaticV(20), Boats.warpedV(30, 12), Boats.cylinder(2.5), Boats.sphere(9),
                Boats.thirtyNineFeet())) {
            for (double x = hull.forwardEnd(); x <= hull.afterEnd(); x += 0.0973) {
                Site site = Siting.at(hull, task, Boats.POCKET, x, 0);
                if (!site.feasible()) {
                    continue;
                }
                PocketOutcome outcome = KeelPocketCut.cut(hull, installation.transducer(), installation.pocket(), x);
                Pocket pocket = assertInstanceOf(PocketOutcome.Built.class, outcome, "x " + x).pocket();
                assertEquals(shown(site, "depth lost to the V"), 1000 * (pocket.depth() - pocket.wallHeight()), 0.2);
                assertEquals(site.slope(), pocket.slope(), 1e-4);
                assertEquals(site.z(), pocket.site().getZ(), 1e-9);
                cut++;
            }
        }
        assertTrue(cut > 100, cut + " pockets");
    }

    /** Beside the keel too, level and square to the skin, and to port as to starboard. */
    @Test
    void law_besideTheKeel() {
        for (Hull hull : List.of(Boats.prismaticV(20), Boats.warpedV(30, 12), Boats.cylinder(2.5))) {
            for (Floor.Lies lies : Floor.Lies.values()) {
                double[] figures = new double[4];
                for (int side = -1; side <= 1; side += 2) {
                    PocketWish wish = new PocketWish(OptionalDouble.empty(), 0.005, 4, side * 0.42,
                        PocketMake.USUAL.with(new Floor(lies, Angle.ofDegrees(0))).with(new Blend(2, Optional.empty())));
                    SitingTask usual = Boats.task(0.9, 0.300, 0.140, 0, Boats.POCKET);
                    SitingTask task = new SitingTask(usual.draught(), new Installation(usual.installation().transducer(), wish), usual.mounts(),
                        usual.mark(), usual.features());
                    Site site = Siting.at(hull, task, Boats.POCKET, 3, side * 0.42);
                    assertEquals(0, site.checks().get(0).utilisation());
                    PocketOutcome outcome = KeelPocketCut.cut(hull, usual.installation().transducer(), wish, BoatTold.NOTHING, 3, side * 0.42);
                    Pocket pocket = assertInstanceOf(PocketOutcome.Built.class, outcome, outcome.toString()).pocket();
                    assertEquals(shown(site, "depth lost to the V"), 1000 * (pocket.depth() - pocket.wallHeight()), 0.3);
                    assertEquals(lies == Floor.Lies.LEVEL_ATHWART ? 0 : side * site.deadrise(), pocket.lean(), 1e-3);
                    double[] here = {pocket.volume(), pocket.openingArea(), shown(site, "room to the keel line"), site.deadrise()};
                    assertArrayEquals(side < 0 ? here : figures, here, 1e-4);
                    figures = here;
                }
            }
        }
    }

    private static double shown(Site site, String name) {
        return site.checks().stream().filter(check -> check.name().equals(name))
            .mapToDouble(Check::demand).findFirst().orElseThrow();
    }
}
