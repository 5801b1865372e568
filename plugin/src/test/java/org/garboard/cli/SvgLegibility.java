package org.garboard.cli;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.garboard.drawing.pdf.SheetPdf;
import org.w3c.dom.Element;

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

    private final List<Words> words = new ArrayList<>();
    private final List<SvgDrawing.Stroke> strokes;

    private SvgLegibility(SvgDrawing drawing) {
        strokes = drawing.strokes();
        drawing.texts().forEach(text -> words.add(words(text)));
    }

    static List<String> faults(byte[] svg) {
        return new SvgLegibility(SvgDrawing.of(svg)).faults();
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

    private static Words words(Element element) {
        String text = element.getTextContent();
        double size = SvgDrawing.number(element, "font-size");
        double advance = FACE.deriveFont(100f).getStringBounds(text, EXACT).getWidth() / 100 * size;
        double share = switch (element.getAttribute("text-anchor")) {
            case "start" -> 0;
            case "middle" -> 0.5;
            default -> 1;
        };
        double x = SvgDrawing.number(element, "x");
        double y = SvgDrawing.number(element, "y");
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
            for (SvgDrawing.Stroke stroke : strokes) {
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
