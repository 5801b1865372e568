package org.garboard.exchange;

import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.craft.BottomFeatures;
import org.garboard.cutout.FlatPoint;
import org.garboard.cutout.LaidLine;
import org.garboard.cutout.Pocket;
import org.garboard.cutout.PocketDetails;
import org.garboard.mount.pocket.PocketMake;
import org.garboard.job.SitingRecord;
import org.garboard.mount.Check;
import org.garboard.mount.FlushThroughHull;
import org.garboard.mount.KeelPocket;
import org.garboard.mount.Verdict;
import org.garboard.units.Angle;
import org.garboard.siting.MountSiting;
import org.garboard.siting.PlanPoint;
import org.garboard.siting.Region;
import org.garboard.siting.Site;
import org.garboard.siting.Window;

/** A decision with every kind of content, its figures made up. */
final class SampleRecord {
    static final RecordSource SOURCE = new RecordSource("1.2.3",
        FileHash.of("job.xml", new byte[] {1}), FileHash.of("tables/offsets.csv", new byte[0]), SampleHull.wedge(), Optional.empty());
    static final RecordOutputs OUTPUTS = new RecordOutputs(
        List.of(FileHash.of("sheet-1-siting.dxf", new byte[] {2}), FileHash.of("sheet-1-siting.svg", new byte[] {3})),
        List.of("sheet 4 (pocket): it does not fit; a larger sheet"));

    private SampleRecord() {
    }

    static SitingRecord withPocket() {
        MountSiting pocket = new MountSiting(new KeelPocket(), List.of(region()), List.of(site()), Optional.empty());
        MountSiting flush = new MountSiting(new FlushThroughHull(), List.of(), List.of(), Optional.of(nearest()));
        return new SitingRecord(SampleJob.job(), BottomFeatures.NOT_LISTED, List.of(pocket, flush), Optional.of(pocket), Optional.of(pocket()), "");
    }

    static SitingRecord refused() {
        MountSiting pocket = new MountSiting(new KeelPocket(), List.of(), List.of(), Optional.of(nearest()));
        return new SitingRecord(SampleJob.job(), BottomFeatures.NOT_LISTED, List.of(pocket), Optional.empty(), Optional.empty(),
            "the keel pocket has no site & no depth < 10 mm");
    }

    private static Region region() {
        List<PlanPoint> ring = List.of(new PlanPoint(1, 0), new PlanPoint(2, 0), new PlanPoint(2, 0.5));
        List<PlanPoint> hole = List.of(new PlanPoint(1.7, 0.1), new PlanPoint(1.8, 0.1), new PlanPoint(1.8, 0.2));
        return new Region(ring, List.of(hole), 0.245);
    }

    private static Site site() {
        return new Site(new KeelPocket(), 8.1234567, 0, -0.01, 0, 0, 0.0174533, List.of(
            new Check("flatness under the footprint", Check.Sense.AT_MOST, 1.23456, 2, "mm", 0.61728, Verdict.MET,
                "common practice, no source", "the skin lies within 1.2 mm of a plane; 2.0 mm may be"),
            new Check("room inside", Check.Sense.KNOWN_ONLY, Double.NaN, Double.NaN, "", Double.NaN, Verdict.NOT_KNOWN,
                "common practice, no source", "look before cutting")),
            Optional.of(new Window(0.1, 0.2, 0, 0)));
    }

    private static Site nearest() {
        return new Site(new FlushThroughHull(), 7, 0.25, 0.1, 0.2693, 0.35, 0, List.of(
            new Check("on the skin", Check.Sense.YES_NO, Double.NaN, Double.NaN, "", Double.POSITIVE_INFINITY,
                Verdict.NOT_MET, "geometry", "the footprint hangs over the chine")), Optional.empty());
    }

    private static Pocket pocket() {
        List<Vector3D> ring = List.of(Vector3D.of(8, 0, 0), Vector3D.of(8.1, 0.05, 0.02), Vector3D.of(8.1, -0.05, 0.02));
        List<FlatPoint> flat = List.of(new FlatPoint(-0.1, 0), new FlatPoint(0, 0.054), new FlatPoint(0, -0.054));
        return new Pocket(Vector3D.of(8.1234567, 0, -0.01), Vector3D.of(Math.cos(0.0174533), 0, Math.sin(0.0174533)), Vector3D.of(0, 1, 0), 0.306, 0.156, 0.033, 0.0508, 0.0088, 0.02, 12,
            0.6, 0.61, ring, ring, ring, flat, flat, 0.0001, 0.004321, 0.21, List.of(), List.of(), List.of(),
            new PocketDetails(PocketMake.USUAL, 0.02, 0.009, Angle.ofDegrees(13), new LaidLine(flat, ring), new LaidLine(flat, ring), 0.25, 0.002, List.of(), 0, Vector3D.of(8, 0, 0),
                0.022, Angle.ofDegrees(5), true, 0.002, List.of(), false));
    }
}
