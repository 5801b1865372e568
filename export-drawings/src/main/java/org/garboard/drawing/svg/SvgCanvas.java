package org.garboard.drawing.svg;

import java.util.List;
import java.util.stream.Collectors;
import javax.xml.stream.XMLStreamException;
import org.garboard.drawing.Anchor;
import org.garboard.drawing.Arc;
import org.garboard.drawing.Canvas;
import org.garboard.drawing.Circle;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Hatch;
import org.garboard.drawing.HatchStrokes;
import org.garboard.drawing.LetterWidths;
import org.garboard.drawing.Line;
import org.garboard.drawing.Point;
import org.garboard.drawing.Polyline;
import org.garboard.drawing.Solid;
import org.garboard.drawing.Text;
import org.garboard.drawing.Vertex;

/** Draws plain entities as SVG elements of the layer's group that is open. */
final class SvgCanvas implements Canvas {

    private static final double HALF_TURN = 180;

    /** One XML writing step. */
    private interface Step {
        void write() throws XMLStreamException;
    }

    private final SvgElements svg;
    private XMLStreamException failure;

    private SvgCanvas(SvgElements svg) {
        this.svg = svg;
    }

    /** Draws what stands on one layer. */
    static void draw(List<Entity> entities, SvgElements svg) throws XMLStreamException {
        SvgCanvas canvas = new SvgCanvas(svg);
        for (Entity entity : entities) {
            entity.drawOn(canvas);
        }
        if (canvas.failure != null) {
            throw canvas.failure;
        }
    }

    private void step(Step step) {
        if (failure == null) {
            try {
                step.write();
            } catch (XMLStreamException e) {
                failure = e;
            }
        }
    }

    @Override
    public void line(Line line) {
        step(() -> svg.empty("line", "x1", svg.x(line.from()), "y1", svg.y(line.from()),
                "x2", svg.x(line.to()), "y2", svg.y(line.to())));
    }

    @Override
    public void arc(Arc arc) {
        step(() -> svg.empty("path", "d", "M" + svg.xy(arc.start()) + arcTo(arc, arc.end(), 0)));
    }

    /** With y turned over, counter-clockwise is SVG's sweep 0. */
    private String arcTo(Arc arc, Point end, int sweep) {
        String radius = SvgElements.number(arc.radius());
        int large = arc.sweepDeg() > HALF_TURN ? 1 : 0;
        return "A" + radius + " " + radius + " 0 " + large + " " + sweep + " " + svg.xy(end);
    }

    @Override
    public void circle(Circle circle) {
        step(() -> svg.empty("circle", "cx", svg.x(circle.centre()), "cy", svg.y(circle.centre()),
                "r", SvgElements.number(circle.radius())));
    }

    @Override
    public void polyline(Polyline polyline) {
        StringBuilder path = new StringBuilder("M").append(svg.xy(polyline.vertices().get(0).at()));
        for (int run = 0; run < polyline.runs(); run++) {
            Vertex vertex = polyline.vertices().get(run);
            if (vertex.straight()) {
                path.append("L").append(svg.xy(polyline.end(run)));
            } else {
                path.append(arcTo(polyline.arc(run), polyline.end(run), vertex.bulge() > 0 ? 0 : 1));
            }
        }
        if (polyline.run() == Polyline.Run.CLOSED) {
            path.append("Z");
        }
        step(() -> svg.empty("path", "d", path.toString()));
    }

    @Override
    public void text(Text text) {
        String size = SvgElements.number(text.height() / LetterWidths.CAP_HEIGHT);
        String x = svg.x(text.at());
        String y = svg.y(text.at());
        String anchor = anchor(text.anchor());
        if (text.rotationDeg() == 0) {
            step(() -> svg.words("text", text.words(), "x", x, "y", y, "font-size", size,
                    "text-anchor", anchor, "fill", "#000", "stroke", "none"));
        } else {
            String turn = "rotate(" + SvgElements.number(-text.rotationDeg()) + " " + x + " " + y + ")";
            step(() -> svg.words("text", text.words(), "x", x, "y", y, "font-size", size,
                    "text-anchor", anchor, "fill", "#000", "stroke", "none", "transform", turn));
        }
    }

    private static String anchor(Anchor anchor) {
        return switch (anchor) {
            case LEFT -> "start";
            case MIDDLE -> "middle";
            case RIGHT -> "end";
        };
    }

    @Override
    public void solid(Solid solid) {
        String path = solid.corners().stream().map(svg::xy).collect(Collectors.joining("L", "M", "Z"));
        step(() -> svg.empty("path", "d", path, "fill", "#000", "stroke", "none"));
    }

    @Override
    public void hatch(Hatch hatch) {
        String path = HatchStrokes.of(hatch).stream()
                .map(stroke -> "M" + svg.xy(stroke.from()) + "L" + svg.xy(stroke.to()))
                .collect(Collectors.joining());
        if (!path.isEmpty()) {
            step(() -> svg.empty("path", "d", path));
        }
    }
}
