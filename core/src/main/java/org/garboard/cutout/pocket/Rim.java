package org.garboard.cutout.pocket;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.cutout.FlatPoint;
import org.garboard.solid.Loop;
import org.garboard.solid.Parting;

/** Lines round a pocket's opening as seen along its axis, with points where edges of the skin cross them. */
final class Rim {
    private Rim() {
    }

    /** So far outside a line [m]. */
    static Loop outside(PocketForm form, Loop line, double width) {
        return through(form, PocketLines.outside(IntStream.range(0, line.size()).mapToObj(i -> new FlatPoint(line.u(i), line.v(i))).toList(), width));
    }

    static Loop through(PocketForm form, List<FlatPoint> line) {
        Loop loop = Loop.of(line.stream().flatMapToDouble(point -> DoubleStream.of(point.u(), point.v())).toArray());
        return Parting.crossed(loop.parted(form.step()), form.creases());
    }

    /** Where a line lies on the skin, hull frame; NaN off it. */
    static List<Vector3D> onSkin(PocketForm form, Loop line) {
        return IntStream.range(0, line.size())
            .mapToObj(i -> form.frame().toHull(line.u(i), line.v(i), form.frame().outside(line.u(i), line.v(i)))).toList();
    }
}
