package org.garboard.takeoff;

import java.util.List;
import org.garboard.offsets.LineKind;

/** Finds the pose in which port lies as starboard does, the keel on the centreline and the trim's marks level. */
final class PoseSearch {
    private static final int ROUNDS = 50;
    private static final double CLOSE = 1e-12;

    private final TakeOff takeOff;
    private final List<Pair> pairs;
    private final int[] keel;

    PoseSearch(TakeOff takeOff, List<MarkedLine> lines) {
        this.takeOff = takeOff;
        this.pairs = Pair.of(takeOff);
        this.keel = MarkedLine.first(lines, LineKind.KEEL).orElseThrow().stations().stream().mapToInt(at -> at.get(0)).toArray();
    }

    /** @param moved what moving each point into its station adds to half-breadth and height [m] */
    Pose find(Pose from, double[][] moved) {
        Pose pose = from;
        for (int round = 0; round < ROUNDS; round++) {
            Pose before = pose;
            pose = centred(pose.withTrim(trim(pose)));
            pose = pose.withHeel(pose.heel() - slope(pose, moved));
            if (Math.abs(pose.heel() - before.heel()) + Math.abs(pose.trim() - before.trim()) < CLOSE) {
                break;
            }
        }
        return placed(centred(pose.withTrim(trim(pose))));
    }

    /**
     * Slope of the chords from port to starboard that is common to all pairs, by least squares square to them:
     * half the angle whose tangent is 2 sum(dy dz) / sum(dy^2 - dz^2), the principal axis (textbook).
     */
    private double slope(Pose pose, double[][] moved) {
        PlacedPoints placed = new PlacedPoints(takeOff, pose, moved);
        double products = 0;
        double squares = 0;
        for (Pair pair : pairs) {
            double across = placed.y(pair.starboard()) + placed.y(pair.port());
            double up = placed.z(pair.starboard()) - placed.z(pair.port());
            products += 2 * across * up;
            squares += across * across - up * up;
        }
        return 0.5 * Math.atan2(products, squares);
    }

    private double trim(Pose pose) {
        boolean byMarks = takeOff.trimFrom() instanceof TrimFrom.FloatMarks;
        StraightLine line = byMarks ? waterline(pose) : straightKeel();
        return -Math.atan(line.slope());
    }

    /** Plumb heights of the float marks as they would be on the centreline, over x as measured. */
    private StraightLine waterline(Pose pose) {
        int count = takeOff.floatMarks().size();
        double[] x = new double[count];
        double[] z = new double[count];
        for (int i = 0; i < count; i++) {
            FloatMark mark = takeOff.floatMarks().get(i);
            x[i] = mark.x();
            z[i] = mark.z() + mark.y() * Math.tan(pose.heel()) / Math.cos(pose.trim());
        }
        return StraightLine.through(x, z);
    }

    /** The run of the keel that is straight, over x as measured. */
    StraightLine straightKeel() {
        TrimFrom.StraightKeel run = (TrimFrom.StraightKeel) takeOff.trimFrom();
        double[] x = new double[run.to() - run.from() + 1];
        double[] z = new double[x.length];
        for (int j = 0; j < x.length; j++) {
            x[j] = takeOff.stations().get(run.from() + j).x();
            z[j] = takeOff.points().get(keel[run.from() + j]).z();
        }
        return StraightLine.through(x, z);
    }

    /** The keel's points on the centreline, as nearly as a straight line lets them. */
    private Pose centred(Pose pose) {
        Pose free = pose.beside(0, 0);
        double[] x = new double[keel.length];
        double[] y = new double[keel.length];
        for (int j = 0; j < keel.length; j++) {
            double[] place = own(free, keel[j]);
            x[j] = place[0] - free.aft();
            y[j] = place[1];
        }
        StraightLine line = StraightLine.through(x, y);
        return pose.beside(line.at(0), line.slope());
    }

    private double[] own(Pose pose, int point) {
        TakenPoint taken = takeOff.points().get(point);
        return pose.own(takeOff.stations().get(taken.station()).x(), taken.y(), taken.z());
    }

    /** With the datum at x = 0 and the base at z = 0. */
    private Pose placed(Pose pose) {
        Pose free = pose.movedBy(-pose.aft(), -pose.up());
        double[] datum = free.own(0, 0, takeOff.datum().z().orElse(takeOff.points().get(nearestKeel()).z()));
        return free.movedBy(-datum[0], -base(free));
    }

    private int nearestKeel() {
        int nearest = keel[0];
        for (int point : keel) {
            if (Math.abs(x(point)) < Math.abs(x(nearest))) {
                nearest = point;
            }
        }
        return nearest;
    }

    private double x(int point) {
        return takeOff.stations().get(takeOff.points().get(point).station()).x();
    }

    private double base(Pose pose) {
        if (takeOff.trimFrom() instanceof TrimFrom.StraightKeel run) {
            double sum = 0;
            for (int j = run.from(); j <= run.to(); j++) {
                sum += own(pose, keel[j])[2];
            }
            return sum / (run.to() - run.from() + 1);
        }
        TrimFrom.FloatMarks marks = (TrimFrom.FloatMarks) takeOff.trimFrom();
        if (marks.height().isPresent()) {
            double mean = takeOff.floatMarks().stream().mapToDouble(mark -> pose.own(mark.x(), mark.y(), mark.z())[2]).average().orElseThrow();
            return mean - marks.height().getAsDouble();
        }
        double lowest = Double.POSITIVE_INFINITY;
        for (int point : keel) {
            lowest = Math.min(lowest, own(pose, point)[2]);
        }
        return lowest;
    }
}
