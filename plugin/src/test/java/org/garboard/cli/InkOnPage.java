package org.garboard.cli;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Whether a picture of a sheet, fitted to a page by another program, has ink wherever the sheet draws a full line. */
final class InkOnPage {
    private static final Set<String> FULL_LINES = Set.of("HULL", "CUT", "POCKET", "GRID", "MARK", "BORDER", "TITLE");
    /** Darker than the paper's edge of a thin line [of 255]. */
    private static final int INK = 200;
    /** Where the page is fitted by whole dots a thin line may fall beside its place: 0.3 mm of the page. */
    private static final int DOTS = 2;
    private static final double[] LOOKED_AT = {0.1, 0.3, 0.5, 0.7, 0.9};

    private final BufferedImage page;
    private final List<SvgDrawing.Stroke> strokes;
    private final Rectangle2D drawn;
    private final Rectangle2D inked;

    InkOnPage(BufferedImage page, SvgDrawing drawing) {
        this.page = page;
        strokes = drawing.strokes();
        drawn = strokes.stream().map(stroke -> stroke.line().getBounds2D()).reduce(Rectangle2D::createUnion).orElseThrow();
        inked = extents();
    }

    private Rectangle2D extents() {
        int left = page.getWidth();
        int right = 0;
        int top = page.getHeight();
        int bottom = 0;
        for (int y = 0; y < page.getHeight(); y++) {
            for (int x = 0; x < page.getWidth(); x++) {
                if (dark(x, y)) {
                    left = Math.min(left, x);
                    right = Math.max(right, x);
                    top = Math.min(top, y);
                    bottom = Math.max(bottom, y);
                }
            }
        }
        return new Rectangle2D.Double(left, top, right - left, bottom - top);
    }

    private boolean dark(int x, int y) {
        return (page.getRGB(x, y) & 0xff) < INK;
    }

    private boolean inkAt(double x, double y) {
        int column = (int) Math.round(inked.getX() + (x - drawn.getX()) / drawn.getWidth() * inked.getWidth());
        int row = (int) Math.round(inked.getY() + (y - drawn.getY()) / drawn.getHeight() * inked.getHeight());
        for (int dx = -DOTS; dx <= DOTS; dx++) {
            for (int dy = -DOTS; dy <= DOTS; dy++) {
                int at = Math.max(0, Math.min(page.getWidth() - 1, column + dx));
                if (dark(at, Math.max(0, Math.min(page.getHeight() - 1, row + dy)))) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Full lines that lack ink somewhere. */
    List<String> lacking() {
        List<String> lacking = new ArrayList<>();
        for (SvgDrawing.Stroke stroke : strokes) {
            Line2D line = stroke.line();
            for (double share : LOOKED_AT) {
                double x = line.getX1() + share * (line.getX2() - line.getX1());
                double y = line.getY1() + share * (line.getY2() - line.getY1());
                if (FULL_LINES.contains(stroke.layer()) && !inkAt(x, y)) {
                    lacking.add(String.format(Locale.ROOT, "%s at %.1f, %.1f mm", stroke.layer(), x, y));
                    break;
                }
            }
        }
        return lacking;
    }
}
