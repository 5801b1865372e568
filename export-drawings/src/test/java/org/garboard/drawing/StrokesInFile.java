package org.garboard.drawing;

import java.awt.geom.Point2D;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.garboard.drawing.dxf.DxfTags;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** The strokes of a drawing file in paper millimetres: straight ones one by one, the length of all round ones, how many texts. */
public final class StrokesInFile {
    private final List<double[]> straight = new ArrayList<>();
    private double round;
    private int texts;

    private StrokesInFile() {
    }

    public double round() {
        return round;
    }

    public int texts() {
        return texts;
    }

    public int straight() {
        return straight.size();
    }

    public List<double[]> segments() {
        return List.copyOf(straight);
    }

    private void add(double x1, double y1, double x2, double y2) {
        if (Math.hypot(x2 - x1, y2 - y1) > 0.02) {
            straight.add(new double[] {x1, y1, x2, y2});
        }
    }

    /** Straight strokes here that another file lacks, to a distance [mm]. */
    public List<String> lackingIn(StrokesInFile other, double within) {
        List<String> lacking = new ArrayList<>();
        boolean[] used = new boolean[other.straight.size()];
        for (double[] one : straight) {
            boolean found = false;
            for (int i = 0; i < used.length && !found; i++) {
                found = !used[i] && same(one, other.straight.get(i), within);
                used[i] |= found;
            }
            if (!found) {
                lacking.add(String.format(Locale.ROOT, "%.3f %.3f to %.3f %.3f", one[0], one[1], one[2], one[3]));
            }
        }
        return lacking;
    }

    private static boolean same(double[] a, double[] b, double within) {
        return near(a[0], b[0], within) && near(a[1], b[1], within) && near(a[2], b[2], within) && near(a[3], b[3], within)
                || near(a[0], b[2], within) && near(a[1], b[3], within) && near(a[2], b[0], within) && near(a[3], b[1], within);
    }

    private static boolean near(double a, double b, double within) {
        return Math.abs(a - b) < within;
    }

    /** Everything but hatches, whose strokes a sheet DXF does not hold. */
    public static StrokesInFile ofDxf(byte[] file, int scale) {
        StrokesInFile strokes = new StrokesInFile();
        DxfTags tags = DxfTags.of(file);
        List<DxfTags.Part> parts = new ArrayList<>(tags.section("ENTITIES"));
        tags.blocks().values().forEach(parts::addAll);
        for (DxfTags.Part part : parts) {
            strokes.dxf(part, 1.0 / scale);
        }
        return strokes;
    }

    private void dxf(DxfTags.Part part, double k) {
        switch (part.type()) {
            case "TEXT" -> texts++;
            case "LINE" -> add(part.number(10) * k, part.number(20) * k, part.number(11) * k, part.number(21) * k);
            case "CIRCLE" -> round += 2 * Math.PI * part.number(40) * k;
            case "ARC" -> round += Math.toRadians(((part.number(51) - part.number(50)) % 360 + 360) % 360) * part.number(40) * k;
            case "LWPOLYLINE" -> polyline(part, k);
            default -> { }
        }
    }

    private void polyline(DxfTags.Part part, double k) {
        List<double[]> corners = new ArrayList<>();
        for (DxfTags.Tag tag : part.tags()) {
            if (tag.code() == 10) {
                corners.add(new double[] {Double.parseDouble(tag.value()) * k, 0, 0});
            } else if (tag.code() == 20) {
                corners.get(corners.size() - 1)[1] = Double.parseDouble(tag.value()) * k;
            } else if (tag.code() == 42) {
                corners.get(corners.size() - 1)[2] = Double.parseDouble(tag.value());
            }
        }
        int runs = part.has(70, "1") ? corners.size() : corners.size() - 1;
        for (int i = 0; i < runs; i++) {
            double[] a = corners.get(i);
            double[] b = corners.get((i + 1) % corners.size());
            if (a[2] == 0) {
                add(a[0], a[1], b[0], b[1]);
            } else {
                double turn = 4 * Math.atan(Math.abs(a[2]));
                round += Math.hypot(b[0] - a[0], b[1] - a[1]) / (2 * Math.sin(turn / 2)) * turn;
            }
        }
    }

    public static StrokesInFile ofSvg(byte[] file, Hatches hatches) {
        StrokesInFile strokes = new StrokesInFile();
        try {
            Document document = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new ByteArrayInputStream(file));
            double height = Double.parseDouble(document.getDocumentElement().getAttribute("height").replace("mm", ""));
            NodeList all = document.getElementsByTagName("*");
            for (int i = 0; i < all.getLength(); i++) {
                Element element = (Element) all.item(i);
                boolean hatch = element.getParentNode() instanceof Element parent && parent.getAttribute("id").equals("HATCH");
                if ((hatches == Hatches.SHOWN || !hatch) && !"none".equals(element.getAttribute("stroke"))) {
                    strokes.svg(element, height);
                }
                strokes.texts += element.getTagName().equals("text") ? 1 : 0;
            }
        } catch (Exception e) {
            throw new AssertionError(e);
        }
        return strokes;
    }

    /** Whether hatches count. */
    public enum Hatches { SHOWN, LEFT_OUT }

    private static double number(Element element, String name) {
        return Double.parseDouble(element.getAttribute(name));
    }

    private void svg(Element element, double height) {
        switch (element.getTagName()) {
            case "line" -> add(number(element, "x1"), height - number(element, "y1"), number(element, "x2"), height - number(element, "y2"));
            case "circle" -> round += 2 * Math.PI * number(element, "r");
            case "path" -> path(element.getAttribute("d"), height);
            default -> { }
        }
    }

    private void path(String d, double height) {
        Matcher step = Pattern.compile("([MLAZ])([^MLAZ]*)").matcher(d);
        double x = 0;
        double y = 0;
        double startX = 0;
        double startY = 0;
        while (step.find()) {
            String[] words = step.group(2).strip().split("[ ,]+");
            if (step.group(1).equals("Z")) {
                add(x, y, startX, startY);
                continue;
            }
            double toX = Double.parseDouble(words[words.length - 2]);
            double toY = height - Double.parseDouble(words[words.length - 1]);
            switch (step.group(1)) {
                case "L" -> add(x, y, toX, toY);
                case "A" -> {
                    double radius = Double.parseDouble(words[0]);
                    double half = Math.asin(Math.min(1, Math.hypot(toX - x, toY - y) / 2 / radius));
                    round += radius * (words[3].equals("1") ? 2 * Math.PI - 2 * half : 2 * half);
                }
                default -> {
                    startX = toX;
                    startY = toY;
                }
            }
            x = toX;
            y = toY;
        }
    }

    public static StrokesInFile ofPdf(byte[] file, int page) {
        StrokesInFile strokes = new StrokesInFile();
        try (PDDocument document = Loader.loadPDF(file)) {
            new Engine(document.getPage(page), strokes).processPage(document.getPage(page));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        return strokes;
    }

    private static final class Engine extends PDFGraphicsStreamEngine {
        private static final double MM = 25.4 / 72;
        private final StrokesInFile strokes;
        private final List<double[]> pieces = new ArrayList<>();
        private double x;
        private double y;
        private double startX;
        private double startY;

        Engine(PDPage page, StrokesInFile strokes) {
            super(page);
            this.strokes = strokes;
        }

        @Override
        public void moveTo(float toX, float toY) {
            x = toX * MM;
            y = toY * MM;
            startX = x;
            startY = y;
        }

        @Override
        public void lineTo(float toX, float toY) {
            pieces.add(new double[] {x, y, toX * MM, toY * MM});
            x = toX * MM;
            y = toY * MM;
        }

        @Override
        public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
            pieces.add(new double[] {x, y, x1 * MM, y1 * MM, x2 * MM, y2 * MM, x3 * MM, y3 * MM});
            x = x3 * MM;
            y = y3 * MM;
        }

        @Override
        public Point2D getCurrentPoint() {
            return new Point2D.Double(x / MM, y / MM);
        }

        @Override
        public void closePath() {
            pieces.add(new double[] {x, y, startX, startY});
            x = startX;
            y = startY;
        }

        @Override
        public void endPath() {
            pieces.clear();
        }

        @Override
        public void strokePath() {
            for (double[] piece : pieces) {
                if (piece.length == 4) {
                    strokes.add(piece[0], piece[1], piece[2], piece[3]);
                } else {
                    strokes.round += length(piece);
                }
            }
            pieces.clear();
        }

        private static double length(double[] p) {
            double sum = 0;
            double beforeX = p[0];
            double beforeY = p[1];
            for (int i = 1; i <= 64; i++) {
                double t = i / 64.0;
                double u = 1 - t;
                double atX = u * u * u * p[0] + 3 * u * u * t * p[2] + 3 * u * t * t * p[4] + t * t * t * p[6];
                double atY = u * u * u * p[1] + 3 * u * u * t * p[3] + 3 * u * t * t * p[5] + t * t * t * p[7];
                sum += Math.hypot(atX - beforeX, atY - beforeY);
                beforeX = atX;
                beforeY = atY;
            }
            return sum;
        }

        @Override
        public void fillPath(int rule) {
            pieces.clear();
        }

        @Override
        public void fillAndStrokePath(int rule) {
            strokePath();
        }

        @Override
        public void beginText() {
            strokes.texts++;
        }

        @Override
        public void appendRectangle(Point2D a, Point2D b, Point2D c, Point2D d) {
        }

        @Override
        public void drawImage(PDImage image) {
        }

        @Override
        public void clip(int rule) {
        }

        @Override
        public void shadingFill(COSName name) {
        }
    }
}
