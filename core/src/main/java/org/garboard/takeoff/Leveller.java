package org.garboard.takeoff;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.garboard.hull.Fit;
import org.garboard.hull.Hull;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.PanelOffsets;
import org.garboard.offsets.Station;
import org.garboard.units.Angle;
import org.garboard.units.FixedDecimal;

/**
 * Brings a sound take-off into the boat's own frame, by turns: the pose from the pairs and marks, the skin from
 * the points in that pose, and along that skin the points into their stations, which in turn betters the pose.
 */
final class Leveller {
    private static final int MOST_ROUNDS = 12;
    /** Moves that change by less than this are settled [m]; our choice, far below any reading. */
    private static final double SETTLED = 2e-6;
    private static final double MOST_HEEL = Math.toRadians(20);
    private static final double MOST_TRIM = Math.toRadians(15);
    /** A line stretched more askew than this to the keel is stretched anew [rad]; our choice, 20 mm in a metre. */
    private static final double MOST_ASKEW = 0.02;

    private final TakeOff takeOff;
    private final List<MarkedLine> lines;
    private final BesideSkin beside;
    private final PoseSearch poses;
    private double[][] moves;
    private Pose pose = Pose.UPRIGHT;

    Leveller(TakeOff takeOff) {
        this.takeOff = takeOff;
        this.moves = new double[takeOff.points().size()][2];
        List<MarkedLine> marked = MarkedLine.of(takeOff);
        this.poses = new PoseSearch(takeOff, marked);
        this.pose = poses.find(pose, moves);
        this.beside = new BesideSkin(takeOff, marked);
        this.lines = bounding(marked, new PlacedPoints(takeOff, pose, moves));
    }

    /** From the keel outward: y + z rises from one line to the next one out, over bottoms and sides. */
    private static List<MarkedLine> bounding(List<MarkedLine> marked, PlacedPoints placed) {
        List<MarkedLine> knuckles = new ArrayList<>(marked.stream().map(Leveller::bySiding)
            .filter(line -> line.kind() == LineKind.RABBET || line.kind() == LineKind.HALF_SIDING || line.kind() == LineKind.KEEL_TOP || line.kind() == LineKind.CHINE).toList());
        knuckles.sort(Comparator.comparing(MarkedLine::kind).thenComparingDouble(line -> line.stations().stream()
            .flatMap(List::stream).mapToDouble(point -> placed.y(point) + placed.z(point)).average().orElseThrow()));
        List<MarkedLine> bounding = new ArrayList<>();
        bounding.add(MarkedLine.middle(marked).orElseThrow());
        bounding.addAll(knuckles);
        MarkedLine.outer(marked).ifPresent(bounding::add);
        return bounding;
    }

    /** A rabbet's two sides are named as tables name them, apart from the centreline between them. */
    private static MarkedLine bySiding(MarkedLine line) {
        return line.kind() == LineKind.RABBET ? new MarkedLine("Half-siding at rabbet", line.kind(), line.stations()) : line;
    }

    Levelling levelled() {
        List<TakeOffFault> faults = new ArrayList<>(stance());
        SkinSections sections = new SkinSections(takeOff, lines);
        sections.panels(new PlacedPoints(takeOff, pose, moves));
        faults.addAll(sections.faults());
        faults.addAll(disorder(new PlacedPoints(takeOff, pose, moves)));
        faults.addAll(beside.faults(new PlacedPoints(takeOff, pose, moves)));
        if (!faults.isEmpty()) {
            return new Levelling.Refused(faults);
        }
        Optional<String> obstacle = Fit.WITHIN_ROUNDING.obstacle(offsets(sections));
        if (obstacle.isPresent()) {
            return new Levelling.Refused(List.of(TakeOffFault.inWhole(obstacle.get())));
        }
        settle(sections);
        LevelledOffsets levelled = offsets(sections);
        faults.addAll(sections.faults());
        faults.addAll(new Symmetry(takeOff, new PlacedPoints(takeOff, pose, moves)).faults());
        faults.addAll(new TrimCheck(takeOff, pose).faults());
        return faults.isEmpty() ? new Levelling.Levelled(levelled) : new Levelling.Refused(faults);
    }

    private void settle(SkinSections sections) {
        for (int round = 0; round < MOST_ROUNDS; round++) {
            LevelledOffsets offsets = offsets(sections);
            if (!sections.faults().isEmpty()) {
                return;
            }
            Hull hull = Fit.WITHIN_ROUNDING.draw(offsets);
            PlacedPoints placed = new PlacedPoints(takeOff, pose, moves);
            double[][] before = moves;
            moves = new IntoStations(takeOff, hull, lines, placed.stations(lines)).moves(placed);
            pose = poses.find(pose, moves);
            if (farthest(before) < SETTLED) {
                return;
            }
        }
    }

    private double farthest(double[][] before) {
        return IntStream.range(0, moves.length)
            .mapToDouble(i -> Math.hypot(moves[i][0] - before[i][0], moves[i][1] - before[i][1])).max().orElse(0);
    }

    private LevelledOffsets offsets(SkinSections sections) {
        PlacedPoints placed = new PlacedPoints(takeOff, pose, moves);
        double[] x = placed.stations(lines);
        List<Station> stations = IntStream.range(0, x.length)
            .mapToObj(j -> new Station(takeOff.stations().get(j).name(), x[j])).toList();
        List<PanelOffsets> panels = sections.panels(placed);
        return new LevelledOffsets(takeOff, new AsBlocked(Angle.ofRadians(pose.trim()), Angle.ofRadians(pose.heel())), base(),
            stations, lines.stream().map(MarkedLine::kind).toList(), panels, new Symmetry(takeOff, placed).most(), beside.keel(placed), beside.strakes(placed));
    }

    private String base() {
        if (takeOff.trimFrom() instanceof TrimFrom.FloatMarks marks) {
            return "that of the float marks, " + marks.waterline();
        }
        TrimFrom.StraightKeel keel = (TrimFrom.StraightKeel) takeOff.trimFrom();
        return "that of the straight run of the keel, station " + takeOff.stations().get(keel.from()).name() + " to "
            + takeOff.stations().get(keel.to()).name();
    }

    /** A boat is not blocked so: a side or a sign was mistaken. */
    private List<TakeOffFault> stance() {
        List<TakeOffFault> faults = new ArrayList<>();
        if (Math.abs(pose.heel()) > MOST_HEEL) {
            faults.add(TakeOffFault.inWhole("the pairs tell a heel of " + degrees(pose.heel())
                + ", and 20 deg is the most; see whether port and starboard were changed, or heights were read downward"));
        }
        if (Math.abs(pose.trim()) > MOST_TRIM) {
            faults.add(TakeOffFault.inWhole("the trim comes out at " + degrees(pose.trim())
                + ", and 15 deg is the most; see whether heights were read downward, or distances from the other end"));
        }
        if (Math.abs(pose.yaw()) > MOST_ASKEW) {
            faults.add(TakeOffFault.inWhole("the keel runs askew to the stretched line, by "
                + FixedDecimal.format(Math.abs(pose.yaw()) * 1000, 0) + " mm in a metre, and 20 mm are the most; stretch the line under the keel anew"));
        }
        return faults;
    }

    private static String degrees(double radians) {
        return FixedDecimal.format(Math.toDegrees(radians), 1) + " deg";
    }

    private List<TakeOffFault> disorder(PlacedPoints placed) {
        double[] x = placed.stations(lines);
        List<TakeOffFault> faults = new ArrayList<>();
        for (int j = 1; j < x.length; j++) {
            if (!(x[j] > x[j - 1])) {
                faults.add(TakeOffFault.inWhole("station " + takeOff.stations().get(j).name() + " stands so near station "
                    + takeOff.stations().get(j - 1).name() + " that with the trim taken out they run into each other; leave one out"));
            }
        }
        return faults;
    }
}
