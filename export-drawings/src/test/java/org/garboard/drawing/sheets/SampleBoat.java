package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.garboard.craft.BottomFeatures;
import org.garboard.craft.Transducer;
import org.garboard.cutout.KeelPocketCut;
import org.garboard.cutout.Pocket;
import org.garboard.cutout.PocketOutcome;
import org.garboard.hull.Fit;
import org.garboard.hull.Hull;
import org.garboard.job.DrawingWish;
import org.garboard.job.DrawingWish.Paper;
import org.garboard.job.DrawingWish.Projection;
import org.garboard.job.DrawingWish.Units;
import org.garboard.job.Job;
import org.garboard.job.Particulars;
import org.garboard.job.SitingRecord;
import org.garboard.mount.Check;
import org.garboard.mount.Check.Sense;
import org.garboard.mount.FlushThroughHull;
import org.garboard.mount.Installation;
import org.garboard.mount.Surroundings;
import org.garboard.mount.KeelPocket;
import org.garboard.mount.Mount;
import org.garboard.mount.PocketWish;
import org.garboard.mount.Verdict;
import org.garboard.offsets.Entry;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.Measure;
import org.garboard.offsets.OffsetTable;
import org.garboard.offsets.SkinSurface;
import org.garboard.offsets.Station;
import org.garboard.offsets.TableLine;
import org.garboard.siting.MountSiting;
import org.garboard.siting.PlanPoint;
import org.garboard.siting.Region;
import org.garboard.siting.Site;
import org.garboard.siting.Window;
import org.garboard.units.Angle;

/**
 * A hard-chine V-bottom boat of simple formulas, with sites laid by hand: enough to draw every
 * kind of line, not a siting to believe in.
 *
 * @param length over the table [m]
 * @param stations evenly spaced
 */
record SampleBoat(double length, int stations) {

    static final Provenance PROVENANCE = new Provenance("Garboard test",
            "9f86d081884c7d659a2feaa0c55ad015a3bf4f1b2b0b822cd15d6c15b0f00a08");

    private double ahead(double x, double share, double power) {
        double end = share * length;
        return x < end ? Math.pow((end - x) / end, power) : 0;
    }

    double keel(double x) {
        return 0.13 * length * ahead(x, 0.55, 3.5);
    }

    double chineBreadth(double x) {
        return 0.007 * length + 0.15 * length * (1 - ahead(x, 0.62, 2.4));
    }

    double chineHeight(double x) {
        return keel(x) + chineBreadth(x) * Math.tan(Math.toRadians(20 + 26 * ahead(x, 0.72, 2.8)));
    }

    double sheerBreadth(double x) {
        return 0.01 * length + 0.18 * length * (1 - ahead(x, 0.72, 3.2));
    }

    double sheerHeight(double x) {
        return 0.15 * length + 0.06 * length * Math.pow(1 - x / length, 2);
    }

    OffsetTable table() {
        List<Station> places = new ArrayList<>();
        for (int i = 0; i < stations; i++) {
            places.add(new Station(String.valueOf(i), length * i / (stations - 1)));
        }
        return new OffsetTable("Sample", SkinSurface.OUTSIDE_OF_SKIN, 1e-3, places, List.of(
                row(LineKind.SHEER, "Sheer", Measure.HEIGHT, places, this::sheerHeight),
                row(LineKind.CHINE, "Chine", Measure.HEIGHT, places, this::chineHeight),
                row(LineKind.KEEL, "Keel", Measure.HEIGHT, places, this::keel),
                row(LineKind.SHEER, "Sheer", Measure.HALF_BREADTH, places, this::sheerBreadth),
                row(LineKind.CHINE, "Chine", Measure.HALF_BREADTH, places, this::chineBreadth)));
    }

    private static TableLine row(LineKind kind, String name, Measure measure, List<Station> places,
                                 DoubleUnaryOperator value) {
        List<Entry> entries = new ArrayList<>();
        for (int i = 0; i < places.size(); i++) {
            entries.add(new Entry(i, value.applyAsDouble(places.get(i).x())));
        }
        return new TableLine(kind, name, 0, measure, entries);
    }

    static Transducer slab() {
        return new Transducer("Slab 300, invented", 0.300, 0.150, 0.042, 0.030, 0.032, Angle.ofDegrees(0));
    }

    private Job job(DrawingWish wish, Fit fit, Transducer body, double rampRatio) {
        return new Job("Sample boat", "S-014", "offsets.csv", fit, 0.06 * length, body,
                List.of(new FlushThroughHull(), new KeelPocket()), Optional.empty(),
                new PocketWish(OptionalDouble.empty(), 0.0025, rampRatio), wish, Particulars.UNTOLD);
    }

    static DrawingWish wish(Units units, Paper paper, String owner) {
        return wish(units, paper, Projection.FIRST_ANGLE, owner);
    }

    static DrawingWish wish(Units units, Paper paper, Projection projection, String owner) {
        return new DrawingWish(units, paper, DrawingWish.Orientation.LANDSCAPE, projection, "SB-TD-01", owner, "Loft", "", "2026-03-14", "A");
    }

    /** A record with a flush site to starboard and a pocket on the keel. */
    SitingRecord record(Units units, Paper paper) {
        return record(wish(units, paper, "Demonstration yard"), slab(), 8);
    }

    SitingRecord record(DrawingWish wish, Transducer body, double rampRatio) {
        return record(wish, Fit.WITHIN_ROUNDING, body, rampRatio);
    }

    SitingRecord record(DrawingWish wish, Fit fit, Transducer body, double rampRatio) {
        Job job = job(wish, fit, body, rampRatio);
        MountSiting flush = flush();
        MountSiting pocket = keelPocket();
        return new SitingRecord(job, BottomFeatures.NOT_LISTED, List.of(flush, pocket), Optional.of(flush), Optional.of(pocket(job)), "");
    }

    Pocket pocket(Job job) {
        PocketOutcome outcome = KeelPocketCut.cut(Hull.through(table()), job.transducer(), job.pocket(), pocketX());
        if (outcome instanceof PocketOutcome.Refused refused) {
            throw new IllegalArgumentException(job.transducer() + ", " + refused);
        }
        return ((PocketOutcome.Built) outcome).pocket();
    }

    private double pocketX() {
        return Math.round(0.7 * length * 200) / 200.0;
    }

    /** The same boat where every check of the pocket is met, and yet it cannot be built. */
    SitingRecord refused(Units units, Paper paper) {
        SitingRecord built = record(units, paper);
        return new SitingRecord(built.job(), built.features(), built.sitings(), built.advised(), Optional.empty(),
                "at a depth of 50.0 mm the face stands 20.2 mm proud of the skin at its outer edges; what works: a depth of "
                        + "71.0 mm or more");
    }

    /** The same boat where no mount finds a place. */
    SitingRecord nowhere(Units units, Paper paper) {
        Site site = flush().sites().get(0);
        Check failing = new Check("depth of the face at rest", Sense.AT_LEAST, 40, 100, "mm", 2.5, Verdict.NOT_MET,
                "our choice", "The face lies too near the surface.");
        Site nearest = new Site(site.mount(), site.x(), site.y(), site.z(), site.girth(), site.deadrise(), site.slope(),
                List.of(failing), Optional.empty());
        return new SitingRecord(record(units, paper).job(), BottomFeatures.NOT_LISTED,
                List.of(new MountSiting(site.mount(), List.of(), List.of(), Optional.of(nearest))),
                Optional.empty(), Optional.empty(), "");
    }

    private MountSiting flush() {
        double x = Math.round(0.78 * length * 200) / 200.0;
        double y = 0.3;
        double tan = Math.tan(Math.toRadians(20));
        double reach = chineBreadth(x) - 0.15;
        Region region = new Region(List.of(new PlanPoint(0.6 * length, 0.15), new PlanPoint(0.95 * length, 0.15),
                new PlanPoint(0.95 * length, reach), new PlanPoint(0.7 * length, reach)),
                List.of(List.of(new PlanPoint(0.85 * length, 0.25), new PlanPoint(0.85 * length, 0.4),
                        new PlanPoint(0.9 * length, 0.4))), 1);
        Site site = new Site(new FlushThroughHull(), x, y, keel(x) + y * tan, y * Math.hypot(1, tan),
                Math.toRadians(20), 0, checks(new FlushThroughHull(), "lean of the hole axis", 2.4, 4, "deg"),
                Optional.of(new Window(0.4, 0.3, 0.1, 0.2)));
        return new MountSiting(new FlushThroughHull(), List.of(region), List.of(site), Optional.empty());
    }

    private MountSiting keelPocket() {
        double x = pocketX();
        Region strip = new Region(List.of(new PlanPoint(0.62 * length, 0), new PlanPoint(0.9 * length, 0),
                new PlanPoint(0.9 * length, 0.08), new PlanPoint(0.62 * length, 0.08)), List.of(), 0.5);
        Site site = new Site(new KeelPocket(), x, 0, keel(x), 0, 0, 0,
                checks(new KeelPocket(), "depth lost to the V", 28.2, 100, "mm"),
                Optional.of(new Window(0.2, 0.5, 0, 0)));
        return new MountSiting(new KeelPocket(), List.of(strip), List.of(site), Optional.empty());
    }

    private static List<Check> checks(Mount mount, String name, double demand, double limit, String unit) {
        Check governing = new Check(name, Sense.AT_MOST, demand, limit, unit, demand / limit, Verdict.MET,
                "our choice", "It serves.");
        return Stream.concat(Stream.of(governing), mount.settled(new Installation(slab(), new PocketWish(OptionalDouble.empty(), 0.0025, 8)), Surroundings.UNTOLD).stream()).toList();
    }
}
