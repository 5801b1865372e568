package org.garboard.cli;

import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Scanner;
import java.util.TreeMap;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/** What a sheet's SVG file draws, in millimetres of the paper with y down. Hatches are left out: a DXF has them as patterns. */
final class SvgDrawing {
    private static final int CHORDS = 24;

    /** A straight stroke, or a chord of a round one. */
    record Stroke(String layer, Line2D line) {
    }

    private final List<Element> texts = new ArrayList<>();
    private final List<Stroke> strokes = new ArrayList<>();
    private final Map<String, Double> lengths = new TreeMap<>();

    private SvgDrawing() {
    }

    static SvgDrawing of(byte[] svg) {
        SvgDrawing drawing = new SvgDrawing();
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
            NodeList groups = factory.newDocumentBuilder().parse(new ByteArrayInputStream(svg)).getElementsByTagName("g");
            for (int i = 0; i < groups.getLength(); i++) {
                Element layer = (Element) groups.item(i);
                NodeList drawn = layer.getElementsByTagName("*");
                for (int j = 0; j < drawn.getLength(); j++) {
                    drawing.read((Element) drawn.item(j), layer.getAttribute("id"));
                }
            }
        } catch (ParserConfigurationException | SAXException e) {
            throw new IllegalStateException(e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return drawing;
    }

    List<Element> texts() {
        return texts;
    }

    List<Stroke> strokes() {
        return strokes;
    }

    /** True length of all strokes of a layer, round ones along their arcs [mm]. */
    double length(String layer) {
        return lengths.getOrDefault(layer, 0.0);
    }

    static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }

    private void read(Element drawn, String layer) {
        switch (drawn.getTagName()) {
            case "text" -> texts.add(drawn);
            case "line" -> straight(layer, new Point2D.Double(number(drawn, "x1"), number(drawn, "y1")),
                new Point2D.Double(number(drawn, "x2"), number(drawn, "y2")));
            case "circle" -> {
                double r = number(drawn, "r");
                add(layer, 2 * Math.PI * r);
                outline(layer, new Ellipse2D.Double(number(drawn, "cx") - r, number(drawn, "cy") - r, 2 * r, 2 * r));
            }
            case "path" -> {
                if (!"HATCH".equals(layer)) {
                    path(layer, drawn.getAttribute("d"));
                }
            }
            default -> throw new IllegalStateException("an element that this reader does not know: " + drawn.getTagName());
        }
    }

    private void add(String layer, double length) {
        lengths.merge(layer, length, Double::sum);
    }

    private void straight(String layer, Point2D from, Point2D to) {
        add(layer, from.distance(to));
        strokes.add(new Stroke(layer, new Line2D.Double(from, to)));
    }

    /** Moves, straight runs and arcs of circles, as the sheets have them. */
    private void path(String layer, String d) {
        Scanner in = new Scanner(d.replaceAll("([MLAZ])", " $1 ")).useLocale(Locale.ROOT);
        Point2D start = null;
        Point2D at = null;
        while (in.hasNext()) {
            String step = in.next();
            switch (step) {
                case "M" -> {
                    at = new Point2D.Double(in.nextDouble(), in.nextDouble());
                    start = at;
                }
                case "L" -> {
                    Point2D to = new Point2D.Double(in.nextDouble(), in.nextDouble());
                    straight(layer, at, to);
                    at = to;
                }
                case "A" -> {
                    double r = in.nextDouble();
                    in.next();
                    in.next();
                    boolean large = in.nextInt() == 1;
                    boolean clockwise = in.nextInt() == 1;
                    Point2D to = new Point2D.Double(in.nextDouble(), in.nextDouble());
                    arc(layer, at, r, large, clockwise, to);
                    at = to;
                }
                default -> {
                    straight(layer, at, start);
                    at = start;
                }
            }
        }
    }

    private void arc(String layer, Point2D from, double r, boolean large, boolean clockwise, Point2D to) {
        double dx = to.getX() - from.getX();
        double dy = to.getY() - from.getY();
        double chord = Math.hypot(dx, dy);
        double off = Math.sqrt(Math.max(0, r * r - chord * chord / 4)) * (large == clockwise ? -1 : 1);
        double cx = (from.getX() + to.getX()) / 2 - off * dy / chord;
        double cy = (from.getY() + to.getY()) / 2 + off * dx / chord;
        double start = Math.atan2(from.getY() - cy, from.getX() - cx);
        double sweep = Math.atan2(to.getY() - cy, to.getX() - cx) - start;
        double full = 2 * Math.PI;
        sweep = clockwise ? (sweep + full) % full : -((full - sweep) % full);
        add(layer, r * Math.abs(sweep));
        Point2D last = from;
        for (int i = 1; i <= CHORDS; i++) {
            Point2D next = new Point2D.Double(cx + r * Math.cos(start + sweep * i / CHORDS), cy + r * Math.sin(start + sweep * i / CHORDS));
            strokes.add(new Stroke(layer, new Line2D.Double(last, next)));
            last = next;
        }
    }

    private void outline(String layer, Shape shape) {
        double[] at = new double[6];
        Point2D start = null;
        Point2D last = null;
        for (PathIterator run = shape.getPathIterator(null, 0.02); !run.isDone(); run.next()) {
            int kind = run.currentSegment(at);
            Point2D next = kind == PathIterator.SEG_CLOSE ? start : new Point2D.Double(at[0], at[1]);
            if (kind == PathIterator.SEG_MOVETO) {
                start = next;
            } else {
                strokes.add(new Stroke(layer, new Line2D.Double(last, next)));
            }
            last = next;
        }
    }
}
