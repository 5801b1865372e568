package org.garboard.siting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.garboard.cutout.KeelPocketCut;
import org.garboard.cutout.Pocket;
import org.garboard.cutout.PocketOutcome;
import org.garboard.hull.Hull;
import org.garboard.mount.Check;
import org.garboard.mount.Installation;
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

    private static double shown(Site site, String name) {
        return site.checks().stream().filter(check -> check.name().equals(name))
            .mapToDouble(Check::demand).findFirst().orElseThrow();
    }
}
