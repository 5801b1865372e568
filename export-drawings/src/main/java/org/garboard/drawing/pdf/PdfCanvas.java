package org.garboard.drawing.pdf;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.util.Matrix;
import org.garboard.drawing.Arc;
import org.garboard.drawing.Canvas;
import org.garboard.drawing.Circle;
import org.garboard.drawing.Hatch;
import org.garboard.drawing.HatchStrokes;
import org.garboard.drawing.Layer;
import org.garboard.drawing.LetterWidths;
import org.garboard.drawing.Line;
import org.garboard.drawing.Point;
import org.garboard.drawing.Polyline;
import org.garboard.drawing.Solid;
import org.garboard.drawing.Text;

/** Draws plain entities on a page, black on white, in the pen and the line type of their layer. */
final class PdfCanvas implements Canvas {
    private static final float POINTS_PER_MM = 72 / 25.4f;
    /** An arc of so much is drawn as one cubic, true to 3 in 10 000 of its radius (textbook). */
    private static final double MOST_PER_CUBIC = 90;

    /** One writing step. */
    private interface Step {
        void write() throws IOException;
    }

    private final PDPageContentStream content;
    private final EmbeddedFace face;
    private float sizeSet;
    private IOException failure;

    PdfCanvas(PDPageContentStream content, EmbeddedFace face) {
        this.content = content;
        this.face = face;
    }

    static float points(double mm) {
        return (float) (mm * POINTS_PER_MM);
    }

    /** Throws what went wrong while drawing, if anything did. */
    void rethrow() throws IOException {
        if (failure != null) {
            throw failure;
        }
    }

    private void step(Step step) {
        if (failure == null) {
            try {
                step.write();
            } catch (IOException e) {
                failure = e;
            }
        }
    }

    private void pen(Layer layer) throws IOException {
        content.setLineWidth(points(layer.width()));
        List<Double> pattern = layer.lineType().pattern();
        float[] dashes = new float[pattern.size()];
        for (int i = 0; i < dashes.length; i++) {
            // dots are dashes as long as the pen is wide
            dashes[i] = points(pattern.get(i) == 0 ? layer.width() : Math.abs(pattern.get(i)));
        }
        content.setLineDashPattern(dashes, 0);
    }

    private void to(Point point) throws IOException {
        content.lineTo(points(point.x()), points(point.y()));
    }

    private void from(Point point) throws IOException {
        content.moveTo(points(point.x()), points(point.y()));
    }

    @Override
    public void line(Line line) {
        step(() -> {
            pen(line.layer());
            from(line.from());
            to(line.to());
            content.stroke();
        });
    }

    @Override
    public void arc(Arc arc) {
        step(() -> {
            pen(arc.layer());
            from(arc.start());
            sweep(arc.centre(), arc.radius(), arc.startDeg(), arc.sweepDeg());
            content.stroke();
        });
    }

    @Override
    public void circle(Circle circle) {
        step(() -> {
            pen(circle.layer());
            from(circle.centre().towards(0, circle.radius()));
            sweep(circle.centre(), circle.radius(), 0, 360);
            content.closePath();
            content.stroke();
        });
    }

    /** From where the pen stands, by cubics whose handles are 4/3 tan(a/4) of the radius long (textbook). */
    private void sweep(Point centre, double radius, double startDeg, double sweepDeg) throws IOException {
        int pieces = Math.max(1, (int) Math.ceil(Math.abs(sweepDeg) / MOST_PER_CUBIC));
        double each = sweepDeg / pieces;
        double handle = 4.0 / 3 * Math.tan(Math.toRadians(each) / 4) * radius;
        for (int i = 0; i < pieces; i++) {
            double begin = startDeg + i * each;
            double end = begin + each;
            Point leave = centre.towards(begin, radius).towards(begin + 90, handle);
            Point stop = centre.towards(end, radius);
            Point arrive = stop.towards(end - 90, handle);
            content.curveTo(points(leave.x()), points(leave.y()), points(arrive.x()), points(arrive.y()),
                    points(stop.x()), points(stop.y()));
        }
    }

    @Override
    public void polyline(Polyline polyline) {
        step(() -> {
            pen(polyline.layer());
            from(polyline.vertices().get(0).at());
            for (int run = 0; run < polyline.runs(); run++) {
                if (polyline.vertices().get(run).straight()) {
                    to(polyline.end(run));
                } else {
                    Arc arc = polyline.arc(run);
                    boolean left = polyline.vertices().get(run).bulge() > 0;
                    sweep(arc.centre(), arc.radius(), left ? arc.startDeg() : arc.endDeg(), left ? arc.sweepDeg() : -arc.sweepDeg());
                }
            }
            if (polyline.run() == Polyline.Run.CLOSED) {
                content.closePath();
            }
            content.stroke();
        });
    }

    @Override
    public void text(Text text) {
        step(() -> {
            float size = points(text.height() / LetterWidths.CAP_HEIGHT);
            String words = face.written(text.words());
            double width = face.width(words) / 1000 * size / POINTS_PER_MM;
            Point start = text.at().towards(text.rotationDeg(), -width * text.anchor().before());
            content.beginText();
            // setting a font costs more than all else of a line of text
            if (size != sizeSet) {
                content.setFont(face.font(), size);
                sizeSet = size;
            }
            content.setTextMatrix(Matrix.getRotateInstance(Math.toRadians(text.rotationDeg()), points(start.x()), points(start.y())));
            content.showText(words);
            content.endText();
        });
    }

    @Override
    public void solid(Solid solid) {
        step(() -> {
            from(solid.corners().get(0));
            for (Point corner : solid.corners().subList(1, solid.corners().size())) {
                to(corner);
            }
            content.closePath();
            content.fill();
        });
    }

    @Override
    public void hatch(Hatch hatch) {
        HatchStrokes.of(hatch).forEach(this::line);
    }
}
