package org.garboard.drawing.template;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.garboard.drawing.Box;
import org.garboard.drawing.Flattened;
import org.garboard.drawing.Ink;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Line;
import org.garboard.drawing.Point;
import org.garboard.drawing.Sheet;
import org.garboard.drawing.StrokesInFile;
import org.garboard.drawing.Text;
import org.garboard.drawing.pdf.SheetPdf;
import org.garboard.reader.OutsideReader;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class TemplatePagesTest {
    /** A lens of 480 by 320 mm: crosses every seam slantwise. */
    private static final TemplateShape SHAPE = new TemplateShape("Template: lens", TemplateLay.ON_HULL, "Sample boat, SB-01 sheet 3, revision A, 2026-03-14",
            lens(), List.of(new Line(Layer.MARK, new Point(-230, 0), new Point(230, 0))), List.of(), List.of(new NamedLine("CUT HERE", lens()), new NamedLine("FINISHED EDGE, do not cut", inner())), "±2", List.of("length over all: 480", "width over all: 320"), List.of());

    private static List<Point> inner() {
        return lens().stream().map(point -> new Point(0.93 * point.x(), 0.9 * point.y())).toList();
    }

    private static List<Point> lens() {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < 120; i++) {
            double turn = 2 * Math.PI * i / 120;
            points.add(new Point(240 * Math.cos(turn), 160 * Math.sin(turn)));
        }
        return points;
    }

    private static double distance(double x, double y, Point from, Point to) {
        double dx = to.x() - from.x();
        double dy = to.y() - from.y();
        double share = Math.max(0, Math.min(1, ((x - from.x()) * dx + (y - from.y()) * dy) / (dx * dx + dy * dy)));
        return Math.hypot(x - from.x() - share * dx, y - from.y() - share * dy);
    }

    /** On each tile, each line that crosses it is named once, close to it. */
    @ParameterizedTest
    @EnumSource(TilePaper.class)
    void law_linesAreNamedOnEveryTile(TilePaper paper) {
        List<Sheet> pages = TemplatePages.of(SHAPE, paper);
        int named = 0;
        for (TileGrid.Tile tile : TileGrid.over(SHAPE.extents(), paper).tiles()) {
            Optional<Sheet> page = pages.stream().filter(sheet -> sheet.title().endsWith("tile " + tile.name())).findFirst();
            if (page.isEmpty()) {
                continue;
            }
            List<Text> texts = page.get().furniture().stream().filter(Text.class::isInstance).map(Text.class::cast).toList();
            for (NamedLine line : SHAPE.named()) {
                boolean crosses = false;
                for (int i = 0; i < line.ring().size(); i++) {
                    crosses |= Clipped.of(new Line(Layer.CUT, line.ring().get(i), line.ring().get((i + 1) % line.ring().size())), tile.window()).isPresent();
                }
                List<Text> names = texts.stream().filter(text -> text.words().equals(line.words())).toList();
                assertEquals(crosses ? 1 : 0, names.size(), tile.name() + " " + line.words());
                for (Text name : names) {
                    named++;
                    Text back = name.movedBy(tile.window().left() - paper.window().left(), tile.window().bottom() - paper.window().bottom());
                    double nearest = Math.min(away(back.middle(), line), back.corners().stream().mapToDouble(corner -> away(corner, line)).min().orElseThrow());
                    assertTrue(nearest < 5, tile.name() + " " + line.words() + " " + nearest);
                }
            }
        }
        assertTrue(named >= 8, "names " + named);
    }

    private static double away(Point place, NamedLine line) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < line.ring().size(); i++) {
            least = Math.min(least, distance(place.x(), place.y(), line.ring().get(i), line.ring().get((i + 1) % line.ring().size())));
        }
        return least;
    }

    /** Strokes in the window of each page, put back in the template's frame, lie on the outline within 0.05 mm and cover all of it. */
    @ParameterizedTest
    @EnumSource(TilePaper.class)
    void exact_tilesShowTheOutline(TilePaper paper) {
        List<Sheet> pages = TemplatePages.of(SHAPE, paper);
        byte[] file = SheetPdf.write(pages);
        TileGrid grid = TileGrid.over(SHAPE.extents(), paper);
        double[] covered = new double[SHAPE.outline().size()];
        int page = 0;
        for (TileGrid.Tile tile : grid.tiles()) {
            if (page + 1 >= pages.size() || !pages.get(page + 1).title().endsWith("tile " + tile.name())) {
                continue;
            }
            page++;
            Box window = paper.window();
            for (double[] stroke : StrokesInFile.ofPdf(file, page).segments()) {
                double x1 = stroke[0] - window.left() + tile.window().left();
                double y1 = stroke[1] - window.bottom() + tile.window().bottom();
                double x2 = stroke[2] - window.left() + tile.window().left();
                double y2 = stroke[3] - window.bottom() + tile.window().bottom();
                for (int i = 0; i < covered.length; i++) {
                    Point from = SHAPE.outline().get(i);
                    Point to = SHAPE.outline().get((i + 1) % covered.length);
                    if (distance(x1, y1, from, to) < 0.05 && distance(x2, y2, from, to) < 0.05) {
                        covered[i] += Math.hypot(x2 - x1, y2 - y1);
                    }
                }
            }
        }
        assertEquals(pages.size() - 1, page);
        assertTrue(page >= 4, "tiles: " + page);
        for (int i = 0; i < covered.length; i++) {
            assertTrue(covered[i] >= SHAPE.outline().get(i).distanceTo(SHAPE.outline().get((i + 1) % covered.length)) - 0.05, "chord " + i);
        }
    }

    @ParameterizedTest
    @EnumSource(TilePaper.class)
    void law_noTwoTextsOverlapNorLeaveThePage(TilePaper paper) {
        for (Sheet page : TemplatePages.of(SHAPE, paper)) {
            List<Text> texts = Flattened.of(page).texts();
            Box edge = new Box(0, 0, page.width(), page.height());
            for (int i = 0; i < texts.size(); i++) {
                assertTrue(edge.grownBy(-4).contains(texts.get(i).bounds()), page.title() + ": " + texts.get(i));
                for (int j = 0; j < i; j++) {
                    assertTrue(!Ink.meets(texts.get(i).corners(), texts.get(j).corners()), page.title() + ": " + texts.get(i).words() + " / " + texts.get(j).words());
                }
                for (Layer layer : List.of(Layer.CUT, Layer.SCALE_CHECK, Layer.MARK)) {
                    Text text = texts.get(i);
                    assertTrue(Flattened.of(page).on(layer).stream().filter(entity -> !(entity instanceof Text))
                            .flatMap(entity -> Ink.of(entity).stream()).noneMatch(figure -> Ink.meets(text.corners(), figure))
                            || page.title().equals(SHAPE.title()) && layer == Layer.CUT, page.title() + ": " + text.words() + " crossed by " + layer);
                }
            }
        }
    }

    /** What makes a printer keep true size, and a viewer of another system show the same letters. */
    @ParameterizedTest
    @EnumSource(TilePaper.class)
    void exact_printedAtFullSizeWithItsOwnLetters(TilePaper paper) throws IOException {
        List<Sheet> pages = TemplatePages.of(SHAPE, paper);
        byte[] bytes = SheetPdf.write(pages);
        try (PDDocument document = Loader.loadPDF(bytes)) {
            assertEquals(1.7f, document.getVersion());
            PDViewerPreferences wish = document.getDocumentCatalog().getViewerPreferences();
            assertEquals("None", wish.getPrintScaling());
            assertTrue(wish.displayDocTitle());
            assertTrue(wish.getCOSObject().getBoolean(COSName.getPDFName("PickTrayByPDFSize"), false));
            assertEquals(pages.size(), document.getNumberOfPages());
            for (PDPage page : document.getPages()) {
                assertEquals(paper.width() / 25.4 * 72, page.getMediaBox().getWidth(), 0.01);
                assertEquals(paper.height() / 25.4 * 72, page.getMediaBox().getHeight(), 0.01);
                for (COSName name : page.getResources().getFontNames()) {
                    assertTrue(page.getResources().getFont(name).isEmbedded(), name.getName());
                }
                assertTrue(page.getResources().getFontNames().iterator().hasNext());
            }
        }
        assertArrayEquals(bytes, SheetPdf.write(TemplatePages.of(SHAPE, paper)));
        for (int page = 0; page < pages.size(); page++) {
            String words = String.join(" ", Flattened.of(pages.get(page)).texts().stream().map(Text::words).toList());
            assertTrue(words.contains("100 %") && words.contains("99.8"), pages.get(page).title() + ": " + words);
        }
    }

    /** Poppler at 600 dpi: page size, and the level and the upright ruler of 100 mm within 0.1 mm on every page. */
    @ParameterizedTest
    @EnumSource(TilePaper.class)
    void exact_rulersInPoppler(TilePaper paper, @TempDir Path folder) throws IOException {
        OutsideReader.POPPLER.require();
        Path file = folder.resolve("template.pdf");
        byte[] bytes = SheetPdf.write(TemplatePages.of(SHAPE, paper));
        Files.write(file, bytes);
        try (PDDocument document = Loader.loadPDF(bytes)) {
            assertEquals(paper.width() / 25.4 * 72, document.getPage(0).getMediaBox().getWidth(), 0.01);
            assertEquals(paper.height() / 25.4 * 72, document.getPage(0).getMediaBox().getHeight(), 0.01);
        }
        assertEquals(0, OutsideReader.POPPLER.run(List.of("-r", "600", "-gray", "-png", "-f", "2", "-l", "2", "-singlefile", file.toString(),
                folder.resolve("page").toString())).exit());
        BufferedImage image = ImageIO.read(folder.resolve("page.png").toFile());
        Box window = paper.window();
        // across the outer ticks, 2.5 mm off the ruler, where only they reach
        double left = stroke(image, paper.left(), window.bottom() - 7 - 2.5, 1, 0, paper);
        double right = stroke(image, paper.left() + 100, window.bottom() - 7 - 2.5, 1, 0, paper);
        assertEquals(100, right - left, 0.1);
        double low = stroke(image, window.right() + 4 + 2.5, window.bottom(), 0, 1, paper);
        double high = stroke(image, window.right() + 4 + 2.5, window.bottom() + 100, 0, 1, paper);
        assertEquals(100, high - low, 0.1);
    }

    /** Middle of the dark run within 1 mm of a place, along a direction [mm]. */
    private static double stroke(BufferedImage image, double x, double y, int alongX, int alongY, TilePaper paper) {
        double sum = 0;
        int count = 0;
        for (double off = -1; off <= 1; off += 0.01) {
            double atX = x + off * alongX;
            double atY = y + off * alongY;
            if ((image.getRGB((int) (atX / 25.4 * 600), (int) ((paper.height() - atY) / 25.4 * 600)) & 0xff) < 128) {
                sum += alongX * atX + alongY * atY;
                count++;
            }
        }
        assertTrue(count > 0, "no stroke at " + x + ", " + y);
        return sum / count;
    }
}
