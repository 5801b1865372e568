package org.garboard.takeoff;

import java.util.List;

/** Finds the pose in which port lies as starboard does, the keel on the centreline and the trim's marks level. */
final class PoseSearch {
    private static final int ROUNDS = 50;
    private static final double CLOSE = 1e-12;

    private final TakeOff takeOff;
    private final List<Pair> pairs;
    /** By station: points whose mean lies on the centreline. */
    private final List<List<Integer>> keel;
    /** By station: points whose mean lies on the lowest line of the centreline; none where it was not measured. */
    private final List<List<Integer>> lowest;

    PoseSearch(TakeOff takeOff, List<MarkedLine> lines) {
        this.takeOff = takeOff;
        this.pairs = Pair.of(takeOff);
        this.keel = MarkedLine.middle(lines).orElseThrow().stations();
        this.lowest = MarkedLine.lowest(lines).orElseThrow().stations();
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
            z[j] = measured(lowest.get(run.from() + j))[2];
        }
        return StraightLine.through(x, z);
    }

    /** The keel's points on the centreline, as nearly as a straight line lets them. */
    private Pose centred(Pose pose) {
        Pose free = pose.beside(0, 0);
        double[] x = new double[keel.size()];
        double[] y = new double[x.length];
        for (int j = 0; j < x.length; j++) {
            double[] place = own(free, keel.get(j));
            x[j] = place[0] - free.aft();
            y[j] = place[1];
        }
        StraightLine line = StraightLine.through(x, y);
        return pose.beside(line.at(0), line.slope());
    }

    private double[] own(Pose pose, List<Integer> points) {
        double[] mean = measured(points);
        return pose.own(mean[0], mean[1], mean[2]);
    }

    /** The mean of points of one station, as measured. */
    private double[] measured(List<Integer> points) {
        double[] mean = new double[3];
        for (int point : points) {
            TakenPoint taken = takeOff.points().get(point);
            mean[0] += takeOff.stations().get(taken.station()).x() / points.size();
            mean[1] += taken.y() / points.size();
            mean[2] += taken.z() / points.size();
        }
        return mean;
    }

    /** With the datum at x = 0 and the base at z = 0. */
    private Pose placed(Pose pose) {
        Pose free = pose.movedBy(-pose.aft(), -pose.up());
        double[] datum = free.own(0, 0, takeOff.datum().z().orElseGet(this::heightOfNearestKeel));
        return free.movedBy(-datum[0], -base(free));
    }

    private double heightOfNearestKeel() {
        double[] nearest = measured(keel.get(0));
        for (List<Integer> station : keel) {
            double[] mean = measured(station);
            nearest = Math.abs(mean[0]) < Math.abs(nearest[0]) ? mean : nearest;
        }
        return nearest[2];
    }

    private double base(Pose pose) {
        if (takeOff.trimFrom() instanceof TrimFrom.StraightKeel run) {
            double sum = 0;
            for (int j = run.from(); j <= run.to(); j++) {
                sum += own(pose, lowest.get(j))[2];
            }
            return sum / (run.to() - run.from() + 1);
        }
        TrimFrom.FloatMarks marks = (TrimFrom.FloatMarks) takeOff.trimFrom();
        if (marks.height().isPresent()) {
            double mean = takeOff.floatMarks().stream().mapToDouble(mark -> pose.own(mark.x(), mark.y(), mark.z())[2]).average().orElseThrow();
            return mean - marks.height().getAsDouble();
        }
        return lowest.stream().filter(station -> !station.isEmpty()).mapToDouble(station -> own(pose, station)[2]).min().orElseThrow();
    }
}
