package org.garboard.revision;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.garboard.craft.BottomFeatures;
import org.garboard.craft.LaidFeature;
import org.garboard.craft.Sides;
import org.garboard.geometry.Quad;
import org.garboard.job.Chooser;
import org.garboard.job.DrawingWish;
import org.garboard.job.RecordedFigure;
import org.garboard.job.RecordedSet;
import org.garboard.job.RecordedSiting;
import org.garboard.mount.Check;
import org.garboard.mount.FlushThroughHull;
import org.garboard.mount.KeelPocket;
import org.garboard.mount.Mount;
import org.garboard.mount.Verdict;
import org.garboard.siting.MountSiting;
import org.garboard.siting.Site;
import org.junit.jupiter.api.Test;

class ComparisonTest {
    private static final Mount FLUSH = new FlushThroughHull();
    private static final DrawingWish WISH = new DrawingWish(DrawingWish.Units.MILLIMETRES, DrawingWish.Paper.A2, DrawingWish.Orientation.LANDSCAPE,
        DrawingWish.Projection.FIRST_ANGLE, "N-1", "Owner", "Loft", "", "2026-03-14", "A");

    private static RecordedSet set(String draught, List<LaidFeature> features, Optional<Mount> advised, MountSiting... mounts) {
        return new RecordedSet("1.0", "Boat", "", "offsets.csv", "ab", 0.4, new BottomFeatures(features, BottomFeatures.FeatureList.GIVEN), WISH,
            List.of(new RecordedSiting("Body", List.of(mounts), advised, "", Chooser.SEARCH)),
            List.of(new RecordedFigure("inputs, job job.xml", "sha256", "c0" + draught), new RecordedFigure("boat", "draught_m", draught)));
    }

    private static MountSiting flush(double x, double y, Verdict verdict, double demand) {
        Check room = new Check("room to the chine", Check.Sense.AT_LEAST, demand, 100, "mm", 100 / demand, verdict, "our choice", "");
        Site site = new Site(FLUSH, x, y, 0.1, Math.abs(y) / 0.8, Math.toRadians(20), 0, List.of(room), Optional.empty());
        return new MountSiting(FLUSH, List.of(), List.of(site), Optional.empty());
    }

    private static LaidFeature feature(String name, double x) {
        return new LaidFeature(name, "intake", Sides.PORT, List.of(Quad.of(x, 0.1, x + 0.2, 0.1, x + 0.2, 0.2, x, 0.2)), Optional.empty());
    }

    private static List<String> words(RecordedSet earlier, RecordedSet later) {
        return Comparison.of(earlier, later).stream().map(change -> change.kind().word() + " | " + change.words()).toList();
    }

    @Test
    void law_aRecordDiffersInNothingFromItself() {
        RecordedSet set = set("0.400000", List.of(feature("Intake", 2)), Optional.of(FLUSH), flush(5, 0.2, Verdict.MET, 200));
        assertEquals(List.of(), Comparison.of(set, set));
    }

    @Test
    void exact_everyKindOfChange() {
        RecordedSet earlier = set("0.400000", List.of(feature("Intake", 2), feature("Drain", 3)), Optional.of(FLUSH), flush(5, 0.2, Verdict.MET, 200));
        RecordedSet later = set("0.425000", List.of(feature("Intake", 2.5), feature("Anode", 3)), Optional.empty(), flush(5.12, -0.2, Verdict.NOT_KNOWN, Double.NaN),
            new MountSiting(new KeelPocket(), List.of(), List.of(), Optional.empty()));
        assertEquals(List.of(
            "input | inputs, job job.xml: sha256 c00.425000, was c00.400000",
            "figure | boat: draught 0.425000 m, was 0.400000 m",
            "feature | Intake: what it covers 2.500 m aft of origin, was 2.000 m aft of origin",
            "feature | Drain: gone, was intake, port",
            "feature | Anode: intake, port, new",
            "mount | Body: advised none, was flush through-hull",
            "place | Body, flush through-hull: along the boat 5.120 m, was 5.000 m (120 mm aft)",
            "place | Body, flush through-hull: from the centreline to starboard -0.200 m, was 0.200 m (400 mm to port)",
            "check | Body, flush through-hull: governing none, was room to the chine",
            "check | Body, flush through-hull, room to the chine: verdict NOT KNOWN, was met",
            "check | Body, flush through-hull, room to the chine: demand gone, was 200.000 mm",
            "mount | Body, keel pocket: asked for yes, was no"), words(earlier, later));
    }

    /** A place that the yard gave is called so, in either record, and never advised. */
    @Test
    void exact_aGivenPlaceIsNotAdvised() {
        RecordedSet advised = set("0.4", List.of(), Optional.of(FLUSH), flush(5, 0.2, Verdict.MET, 200));
        RecordedSiting siting = advised.sitings().get(0);
        RecordedSet given = new RecordedSet(advised.programVersion(), advised.boat(), advised.hullNumber(), advised.tableFile(), advised.tableHash(), advised.draught(),
            advised.features(), advised.drawing(), List.of(new RecordedSiting(siting.transducer(), siting.mounts(), siting.advised(), "", Chooser.YARD)), advised.figures());
        assertEquals(List.of("mount | Body: drawn flush through-hull, place given by the yard, was flush through-hull, advised"), words(advised, given));
        assertEquals(List.of(), words(given, given));
        assertEquals(List.of("1 siting", "7 check"), SheetsMoved.of(advised, given, Comparison.of(advised, given)));
    }

    /** A moved place moves all that is marked and cut; another anode stands on sheet 1 alone, and is looked at by the check sheet. */
    @Test
    void exact_sheetsOnWhichSomethingMoved() {
        RecordedSet here = set("0.4", List.of(), Optional.of(FLUSH), flush(5, 0.2, Verdict.MET, 200));
        RecordedSet there = set("0.4", List.of(), Optional.of(FLUSH), flush(5.12, 0.2, Verdict.MET, 200));
        RecordedSet more = set("0.4", List.of(feature("Anode", 3)), Optional.of(FLUSH), flush(5, 0.2, Verdict.MET, 200));
        assertEquals(List.of(), SheetsMoved.of(here, here, Comparison.of(here, here)));
        assertEquals(List.of("1 siting", "2 marking out", "3 template", "4 cutout or pocket", "5 blocks", "7 check"), SheetsMoved.of(here, there, Comparison.of(here, there)));
        assertEquals(List.of("1 siting", "7 check"), SheetsMoved.of(here, more, Comparison.of(here, more)));
    }

    /** What is gone one way is new the other, and a move is as long both ways. */
    @Test
    void law_thereAndBackIsTheSame() {
        RecordedSet earlier = set("0.4", List.of(feature("Intake", 2)), Optional.of(FLUSH), flush(5, 0.2, Verdict.MET, 200));
        RecordedSet later = set("0.5", List.of(), Optional.of(FLUSH), flush(4.75, 0.3, Verdict.NOT_MET, 90));
        List<Change> there = Comparison.of(earlier, later);
        List<Change> back = Comparison.of(later, earlier);
        List<Change> turned = new ArrayList<>();
        back.forEach(change -> turned.add(new Change(change.kind(), change.subject(), change.what(), change.after(), change.before(), change.unit(), "")));
        assertEquals(there.stream().map(change -> new Change(change.kind(), change.subject(), change.what(), change.before(), change.after(), change.unit(), "")).toList(), turned);
        Shift shift = Shift.drawn(earlier, later, 0).orElseThrow();
        assertEquals(-0.25, shift.aft(), 1e-12);
        assertEquals(0.1, shift.toStarboard(), 1e-12);
        assertEquals(0.25, Shift.drawn(later, earlier, 0).orElseThrow().aft(), 1e-12);
    }
}
