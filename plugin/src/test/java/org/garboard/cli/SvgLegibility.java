package org.garboard.cli;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Scanner;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.garboard.drawing.pdf.SheetPdf;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/**
 * Reads a sheet's SVG file and tells what cannot be read in it: words on words, words on lines, words beyond the frame.
 * Words are taken as wide as the face that is embedded in the PDF writes them, and 15 % more.
 */
final class SvgLegibility {
    private static final double RESERVE = 1.15;
    /** Of Liberation Sans, in font sizes: capital height and what hangs below the base line. */
    private static final double CAPITALS = 0.716;
    private static final double BELOW = 0.21;
    /** Words keep clear of these with all their reserve; of other lines, which run up to words, with their letters. */
    private static final Set<String> OUTLINES = Set.of("HULL", "CUT", "POCKET", "HIDDEN", "BORDER");
    private static final Set<String> LINES = Set.of("CENTRE", "ADJACENT", "SECTION", "GRID", "MARK", "DIM", "FORM");
    private static final Font FACE = face();
    private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);
    private static final Pattern TURNED = Pattern.compile("rotate\\((\\S+) (\\S+) (\\S+)\\)");

    private record Words(String text, Shape room, Shape letters) {
    }

    private record Stroke(String layer, Line2D line) {
    }

    private final List<Words> words = new ArrayList<>();
    private final List<Stroke> strokes = new ArrayList<>();

    private SvgLegibility() {
    }

    static List<String> faults(byte[] svg) {
        SvgLegibility sheet = new SvgLegibility();
        sheet.read(svg);
        return sheet.faults();
    }

    private static Font face() {
        try (InputStream file = SheetPdf.class.getResourceAsStream("LiberationSans-Regular.ttf")) {
            return Font.createFont(Font.TRUETYPE_FONT, file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (FontFormatException e) {
            throw new IllegalStateException(e);
        }
    }

    private void read(byte[] svg) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
            NodeList groups = factory.newDocumentBuilder().parse(new ByteArrayInputStream(svg)).getElementsByTagName("g");
            for (int i = 0; i < groups.getLength(); i++) {
                Element layer = (Element) groups.item(i);
                NodeList drawn = layer.getElementsByTagName("*");
                for (int j = 0; j < drawn.getLength(); j++) {
                    read((Element) drawn.item(j), layer.getAttribute("id"));
                }
            }
        } catch (ParserConfigurationException | SAXException e) {
            throw new IllegalStateException(e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void read(Element drawn, String layer) {
        switch (drawn.getTagName()) {
            case "text" -> words.add(words(drawn));
            case "line" -> strokes.add(new Stroke(layer, new Line2D.Double(number(drawn, "x1"), number(drawn, "y1"),
                number(drawn, "x2"), number(drawn, "y2"))));
            case "circle" -> {
                double r = number(drawn, "r");
                outline(layer, new java.awt.geom.Ellipse2D.Double(number(drawn, "cx") - r, number(drawn, "cy") - r, 2 * r, 2 * r));
            }
            case "path" -> {
                if (!"HATCH".equals(layer)) {
                    outline(layer, path(drawn.getAttribute("d")));
                }
            }
            default -> throw new IllegalStateException("an element that this reader does not know: " + drawn.getTagName());
        }
    }

    private static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }

    private static Words words(Element element) {
        String text = element.getTextContent();
        double size = number(element, "font-size");
        double advance = FACE.deriveFont(100f).getStringBounds(text, EXACT).getWidth() / 100 * size;
        double share = switch (element.getAttribute("text-anchor")) {
            case "start" -> 0;
            case "middle" -> 0.5;
            default -> 1;
        };
        double x = number(element, "x");
        double y = number(element, "y");
        AffineTransform turn = new AffineTransform();
        Matcher turned = TURNED.matcher(element.getAttribute("transform"));
        if (turned.matches()) {
            turn.rotate(Math.toRadians(Double.parseDouble(turned.group(1))), x, y);
        }
        double wide = RESERVE * advance;
        double top = CAPITALS * size;
        return new Words(text, turn.createTransformedShape(new Rectangle2D.Double(x - share * wide, y - 1.05 * top, wide, 1.05 * top + BELOW * size)),
            turn.createTransformedShape(new Rectangle2D.Double(x - share * wide + (wide - advance) * share, y - top, advance, top)));
    }

    /** Moves, straight runs and arcs of circles, as the sheets have them. */
    private static Path2D path(String d) {
        Path2D path = new Path2D.Double();
        Scanner in = new Scanner(d.replaceAll("([MLAZ])", " $1 ")).useLocale(java.util.Locale.ROOT);
        while (in.hasNext()) {
            String step = in.next();
            switch (step) {
                case "M" -> path.moveTo(in.nextDouble(), in.nextDouble());
                case "L" -> path.lineTo(in.nextDouble(), in.nextDouble());
                case "A" -> {
                    double r = in.nextDouble();
                    in.next();
                    in.next();
                    boolean large = in.nextInt() == 1;
                    boolean clockwise = in.nextInt() == 1;
                    arc(path, r, large, clockwise, new Point2D.Double(in.nextDouble(), in.nextDouble()));
                }
                default -> path.closePath();
            }
        }
        return path;
    }

    private static void arc(Path2D path, double r, boolean large, boolean clockwise, Point2D to) {
        Point2D from = path.getCurrentPoint();
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
        for (int i = 1; i <= 24; i++) {
            path.lineTo(cx + r * Math.cos(start + sweep * i / 24), cy + r * Math.sin(start + sweep * i / 24));
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

    private List<String> faults() {
        List<String> faults = new ArrayList<>();
        Rectangle2D frame = strokes.stream().filter(stroke -> stroke.layer().equals("BORDER")).map(stroke -> stroke.line().getBounds2D())
            .filter(line -> line.getWidth() > 50 || line.getHeight() > 50).reduce(Rectangle2D::createUnion).orElseThrow();
        for (int i = 0; i < words.size(); i++) {
            Words one = words.get(i);
            if (!frame.contains(one.room().getBounds2D())) {
                faults.add("\"" + one.text() + "\" leaves the frame");
            }
            for (Words other : words.subList(i + 1, words.size())) {
                if (meet(one.room(), other.room())) {
                    faults.add("\"" + one.text() + "\" overlaps \"" + other.text() + "\"");
                }
            }
            for (Stroke stroke : strokes) {
                boolean outline = OUTLINES.contains(stroke.layer());
                if ((outline || LINES.contains(stroke.layer())) && crosses(stroke.line(), outline ? one.room() : one.letters())) {
                    faults.add("\"" + one.text() + "\" is crossed by a line of " + stroke.layer());
                    break;
                }
            }
        }
        return faults;
    }

    private static boolean meet(Shape one, Shape other) {
        if (!one.getBounds2D().intersects(other.getBounds2D())) {
            return false;
        }
        Area both = new Area(one);
        both.intersect(new Area(other));
        Rectangle2D shared = both.getBounds2D();
        return Math.min(shared.getWidth(), shared.getHeight()) > 2e-3;
    }

    private static boolean crosses(Line2D line, Shape room) {
        if (!grown(line.getBounds2D()).intersects(room.getBounds2D())) {
            return false;
        }
        int pieces = (int) Math.ceil(line.getP1().distance(line.getP2()) / 0.1) + 1;
        for (int i = 0; i <= pieces; i++) {
            double s = (double) i / pieces;
            if (room.contains(line.getX1() + s * (line.getX2() - line.getX1()), line.getY1() + s * (line.getY2() - line.getY1()))) {
                return true;
            }
        }
        return false;
    }

    /** Level and upright lines have no area of their own. */
    private static Rectangle2D grown(Rectangle2D box) {
        return new Rectangle2D.Double(box.getX() - 1e-3, box.getY() - 1e-3, box.getWidth() + 2e-3, box.getHeight() + 2e-3);
    }
}
