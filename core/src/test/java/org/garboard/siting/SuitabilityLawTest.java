package org.garboard.siting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Proxy;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.garboard.craft.BottomFeatures;
import org.garboard.craft.Drive;
import org.garboard.craft.LaidFeature;
import org.garboard.craft.RunningSpeed;
import org.garboard.craft.Sides;
import org.garboard.craft.SoundBeam;
import org.garboard.craft.Transducer;
import org.garboard.craft.TransducerDetails;
import org.garboard.flow.attitude.AtSpeed;
import org.garboard.flow.attitude.Attitude;
import org.garboard.flow.attitude.Basis;
import org.garboard.flow.attitude.Regime;
import org.garboard.flow.attitude.StagnationLine;
import org.garboard.flow.planing.Prism;
import org.garboard.flow.planing.PrismRun;
import org.garboard.flow.planing.Stream;
import org.garboard.flow.water.Water;
import org.garboard.geometry.Quad;
import org.garboard.handling.Support;
import org.garboard.handling.Supports;
import org.garboard.hull.Hull;
import org.garboard.hydrostatics.WaterSurface;
import org.garboard.inside.Inside;
import org.garboard.inside.InsideDatum;
import org.garboard.inside.LaidInside;
import org.garboard.inside.Room;
import org.garboard.inside.Seen;
import org.garboard.inside.Span;
import org.garboard.mount.Bed;
import org.garboard.mount.Demand;
import org.garboard.mount.Installation;
import org.garboard.mount.LaidBottom;
import org.garboard.mount.Limits;
import org.garboard.mount.Mount;
import org.garboard.mount.PocketWish;
import org.garboard.mount.Surroundings;
import org.garboard.mount.water.RunningWater;
import org.garboard.skin.HullSkin;
import org.garboard.skin.Layup;
import org.garboard.skin.SkinMaterial;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;

/** A search that looks no further than it needs finds what one finds that looks at everything. */
class SuitabilityLawTest {
    private static final double STEP = 0.030;
    private static final double KNOT = 1852 / 3600.0;
    private static final Water SEA = new Water(15, 35);

    private static final List<Case> CASES = cases();

    private record Case(Hull hull, SitingTask task) {
    }

    /** Boats and jobs by lot, all that a job can tell among it. */
    private static List<Case> cases() {
        Random lot = new Random(7);
        List<Case> cases = new ArrayList<>();
        for (Hull hull : List.of(Boats.warpedV(30, 12), Boats.boxKeel(17), Boats.thirtyNineFeet())) {
            for (int i = 0; i < 2; i++) {
                Transducer body = new Transducer("body", 0.06 + 0.3 * lot.nextDouble(), 0.05 + 0.15 * lot.nextDouble(), 0.06, 0, 0.02,
                    Angle.ofDegrees(lot.nextInt(25)));
                TransducerDetails details = new TransducerDetails(List.of(new SoundBeam(50e3, Angle.ofDegrees(20), Angle.ofDegrees(20))),
                    Optional.empty(), Optional.empty(), Optional.of(0.120));
                Installation installation = new Installation(body, new PocketWish(OptionalDouble.empty(), 0.005, 8)).with(details).within(Limits.OWN);
                List<LaidFeature> laid = laid(lot, hull);
                BottomFeatures features = new BottomFeatures(laid, BottomFeatures.FeatureList.GIVEN);
                RunningWater running = RunningWater.of(hull, SEA, List.of(at(hull, 12 + 10 * lot.nextDouble()), at(hull, 28)));
                Surroundings around = new Surroundings(hull.foot(), Optional.of(skin(i)), Optional.of(LaidInside.on(hull, inside(lot))),
                    Optional.of(supports(lot)), Optional.of(new Drive(Drive.Kind.OUTBOARD, 1, Optional.of(Drive.Hand.RIGHT), Optional.of(0.4), Optional.empty())), running.over(laid), Optional.of(new LaidBottom(hull, features)));
                cases.add(new Case(hull, new SitingTask(0.35 + 0.4 * lot.nextDouble(), installation, Mount.all(), Mark.FIVE_MILLIMETRES, features, around)));
            }
        }
        return cases;
    }

    private static HullSkin skin(int i) {
        return new HullSkin(i == 0 ? SkinMaterial.CARBON : SkinMaterial.SOLID_GLASS, Optional.of(new Layup.Whole(0.008)), List.of(), Optional.empty(),
            List.of());
    }

    private static List<LaidFeature> laid(Random lot, Hull hull) {
        List<LaidFeature> laid = new ArrayList<>();
        for (Sides side : Sides.values()) {
            double x = hull.afterEnd() * (0.3 + 0.5 * lot.nextDouble());
            double y = 0.1 + 0.5 * lot.nextDouble();
            laid.add(new LaidFeature("F", "intake", side, List.of(Quad.of(x, y, x + 0.1, y, x + 0.1, y + 0.1, x, y + 0.1)), Optional.of(0.0)));
        }
        return laid;
    }

    private static Inside inside(Random lot) {
        return new Inside(List.of(new InsideDatum.Transom("transom", 0.05)),
            List.of(new Room(Room.Kind.FUEL_TANK, "Tank", "transom", Sides.STARBOARD, new Span(1.5, 2.5), new Span(0.2, 0.6), new Span(0.1, 0.5))),
            List.of(new Seen("transom", new Span(0.5, 2 + 2 * lot.nextDouble()))));
    }

    private static Supports supports(Random lot) {
        double out = 0.2 + 0.4 * lot.nextDouble();
        return new Supports(List.of(new Support(Support.Kind.BUNK, "Bunk", Sides.BOTH, 0, 3, Optional.of(new Support.Out(out, out + 0.15)))));
    }

    private static AtSpeed at(Hull hull, double knots) {
        double end = hull.afterEnd();
        double speed = knots * KNOT;
        PrismRun run = new PrismRun(new Prism(2, Angle.ofDegrees(20)), Stream.of(SEA, speed), Angle.ofDegrees(3), 2, speed, 0, 0, 0, 0);
        Attitude planes = new Attitude.Planes(speed, Basis.WORKED_OUT, Angle.ofDegrees(3), end, new WaterSurface(0.5, end, Angle.ofDegrees(3)),
            new StagnationLine(List.of(Vector2D.of(0.2 * end, 0), Vector2D.of(0.5 * end, 0.9))), run, Optional.empty(), List.of());
        Attitude unknown = new Attitude.NotKnown(speed, Regime.OUTSIDE, "not worked out here");
        return new AtSpeed(new RunningSpeed("run", knots, Optional.empty()), planes, List.of(new AtSpeed.End("end", 1000, knots < 20 ? unknown : planes)));
    }

    @Test
    void law_whatIsLeftOutOfASearchChangesNothing() {
        int serving = 0;
        int nearest = 0;
        for (Case c : CASES) {
            BottomLines lines = BottomLines.of(c.hull());
            BottomGrid grid = BottomGrid.read(c.hull(), lines, STEP);
            for (Mount mount : c.task().mounts()) {
                Asked asked = Asked.of(c.hull(), c.task(), mount);
                Ground ground = new Ground(lines.skin(c.hull()), lines, Obstacles.of(c.task().features(), Sides.STARBOARD), c.task().draught(), Sides.STARBOARD);
                Nodes nodes = new Nodes(grid, mount.seat(), () -> Beds.coarse(ground, mount, c.task().installation()));
                Suitability whole = Suitability.everywhere(nodes, asked);
                serving += sameWhereItServes(whole, Suitability.whereItServes(nodes, asked), grid);
                SiteFinder finder = new SiteFinder(c.hull(), nodes, mount, c.task().mark(), new PlaceChecks(c.hull(), ground, c.task(), mount, asked));
                Optional<Site> near = finder.nearest(whole);
                assertEquals(near, finder.nearest(Suitability.nearest(nodes, asked)));
                nearest += near.isPresent() ? 1 : 0;
            }
        }
        assertTrue(serving > 100 && nearest > 15, serving + " nodes serve, " + nearest + " nearest");
    }

    /** Every node that serves has the figures that it has, and so do those beside it, between which the regions are drawn. */
    private static int sameWhereItServes(Suitability whole, Suitability lean, BottomGrid grid) {
        int serving = 0;
        for (int node = 0; node < whole.size(); node++) {
            assertEquals(whole.serves(node), lean.serves(node));
            serving += whole.serves(node) ? 1 : 0;
            int column = node % whole.columns();
            for (int beside : new int[] {node, node - whole.columns(), node + whole.columns(), column > 0 ? node - 1 : node, column + 1 < whole.columns() ? node + 1 : node}) {
                if (whole.serves(node) && beside >= 0 && beside < whole.size()) {
                    assertEquals(whole.shortfall(beside), lean.shortfall(beside));
                    assertEquals(whole.utilisation(beside), lean.utilisation(beside));
                }
            }
        }
        return serving;
    }

    /** A bed of which anything is asked but where it is does not answer. */
    @Test
    void law_whatIsAskedOfThePlaceAloneNeedsNoSkin() {
        Bed place = (Bed) Proxy.newProxyInstance(Bed.class.getClassLoader(), new Class<?>[] {Bed.class}, (proxy, method, arguments) -> switch (method.getName()) {
            case "x" -> 3.0;
            case "y" -> 0.3;
            default -> throw new AssertionError(method.getName());
        });
        int asked = 0;
        for (Case c : CASES) {
            for (Mount mount : c.task().mounts()) {
                for (Demand demand : c.task().demands(mount)) {
                    if (demand.reads() == Demand.Reads.PLACE) {
                        demand.reading().applyAsDouble(place);
                        asked++;
                    }
                }
            }
        }
        assertTrue(asked > 80, asked + " demands");
    }
}
