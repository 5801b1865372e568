package org.garboard.flow.shadow;

import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.garboard.flow.streams.HullStreams;
import org.garboard.flow.streams.Streamline;
import org.garboard.flow.streams.Traced;

/** The streamlines of a displacement hull. */
public record AlongStreams(HullStreams streams) implements FlowLines {

    @Override
    public Found downFrom(double x, double y) {
        Traced traced = streams.through(x, y);
        if (traced instanceof Streamline line) {
            List<Vector2D> points = line.down().stream().map(point -> Vector2D.of(point.x(), point.y())).toList();
            return new Line(points, line.abaft() == Streamline.Followed.LOST ? line.lost() : Optional.empty());
        }
        return new OffTheBottom(((Traced.OffTheSkin) traced).reason());
    }
}
