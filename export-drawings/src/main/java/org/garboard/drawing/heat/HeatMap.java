package org.garboard.drawing.heat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.garboard.drawing.svg.XmlText;
import org.garboard.hull.Hull;
import org.garboard.siting.Site;
import org.garboard.siting.UtilisationMap;
import org.garboard.units.FixedDecimal;

/** The picture: a panel for each mount, one below the other, and the scale. SVG in millimetres; the same input gives the same bytes. */
public final class HeatMap {
    /** What stands near the beginning of every such file. */
    public static final String MARK = "<!-- how the bottom serves each mount -->";
    private static final double WIDTH = 297;
    private static final double MARGIN = 12;
    private static final double LINE = 4.2;
    private static final double HEAD = 30;
    private static final int EDGE_PIECES = 120;

    private final Hull hull;
    private final String id;
    private final StringBuilder svg = new StringBuilder();

    private HeatMap(Hull hull, String id) {
        this.hull = hull;
        this.id = id;
    }

    /**
     * Draws it.
     *
     * @param title "Outboard 39"
     * @param panels at least one
     */
    public static byte[] draw(String title, Hull hull, List<HeatPanel> panels) {
        return ("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + MARK + "\n" + new HeatMap(hull, "").write(title, panels)).getBytes(StandardCharsets.UTF_8);
    }

    /**
     * The same as an element of a page.
     *
     * @param id with which all of its own begin; of a page every one is another
     */
    public static String inline(String id, String title, Hull hull, List<HeatPanel> panels) {
        return new HeatMap(hull, id + "-").write(title, panels);
    }

    private String write(String title, List<HeatPanel> panels) {
        double length = hull.afterEnd() - hull.forwardEnd();
        double scale = (WIDTH - 2 * MARGIN - 8) / length;
        double half = widest() * scale;
        StringBuilder body = new StringBuilder();
        double top = HEAD;
        for (HeatPanel panel : panels) {
            Governing governing = new Governing(panel.maps());
            PlanPaper paper = new PlanPaper(MARGIN + 5, top + 7 + half, hull.afterEnd(), scale);
            svg.setLength(0);
            panel(panel, governing, paper, top);
            body.append(svg);
            top += 7 + 2 * half + 6 + LINE * Math.max(1, (governing.names().size() + 1) / 2) + 6;
        }
        svg.setLength(0);
        head(title, panels, top + 4, scale);
        return svg.append(body).append("</svg>\n").toString();
    }

    private double widest() {
        double widest = 0;
        for (int i = 0; i <= EDGE_PIECES; i++) {
            widest = Math.max(widest, hull.bottomEdge().y(edgeX(i)));
        }
        return widest;
    }

    private double edgeX(int piece) {
        return hull.firstSection() + (hull.bottomEnd() - hull.firstSection()) * piece / EDGE_PIECES;
    }

    private void head(String title, List<HeatPanel> panels, double height, double scale) {
        String size = PlanPaper.number(WIDTH) + " " + PlanPaper.number(height);
        svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" xml:lang=\"en\" width=\"").append(PlanPaper.number(WIDTH)).append("mm\" height=\"")
            .append(PlanPaper.number(height)).append("mm\" viewBox=\"0 0 ").append(size).append("\" role=\"img\" aria-labelledby=\"").append(id).append("title ").append(id).append("description\"")
            .append(" font-family=\"'Liberation Sans',Arial,Helvetica,sans-serif\" font-size=\"3\">\n");
        svg.append("<title id=\"").append(id).append("title\">").append(escaped(title)).append(": how well the bottom serves</title>\n<desc id=\"").append(id).append("description\">")
            .append("The bottom seen from below, bow to the right, starboard up, once for each of ").append(panels.size())
            .append(" mounts. Colours show the governing utilisation, lighter is better; a heavy line bounds where every check that could be made is met;"
                + " numbered fields tell which check governs, by the list below each.</desc>\n");
        svg.append("<style>.n{font-size:2.6px;text-anchor:middle;fill:#000;stroke:#fff;stroke-width:.7px;paint-order:stroke;font-weight:bold}"
            + ".h{font-size:3.8px;font-weight:bold}.t{font-size:5px;font-weight:bold}</style>\n");
        svg.append("<rect width=\"").append(PlanPaper.number(WIDTH)).append("\" height=\"").append(PlanPaper.number(height)).append("\" fill=\"#fff\"/>\n");
        text(MARGIN, 10, "class=\"t\"", title + ": how well the bottom serves");
        text(MARGIN, 15.5, "", "SEEN FROM BELOW. BOW TO THE RIGHT, STARBOARD IS UP. Governing utilisation: demand to limit of the check that is nearest to failing,"
            + " or fails worst.");
        for (int number = 0; number < HeatScale.classes(); number++) {
            double at = MARGIN + 20 * number;
            svg.append("<rect x=\"").append(PlanPaper.number(at)).append("\" y=\"18\" width=\"20\" height=\"4\" fill=\"").append(HeatScale.colour(number)).append("\"/>\n");
            text(at + 1, 25.6, "", HeatScale.words(number));
        }
        double limit = MARGIN + 20 / HeatScale.STEP;
        svg.append("<path d=\"M").append(PlanPaper.number(limit)).append(" 17.2V22.8\" stroke=\"#000\" stroke-width=\"0.45\"/>\n");
        text(limit - 19, 29, "font-weight=\"bold\"", "met up to 1.0 | not met");
        double metre = MARGIN + 20 * HeatScale.classes() + 8;
        svg.append("<path d=\"M").append(PlanPaper.number(metre)).append(" 19V22H").append(PlanPaper.number(metre + scale)).append("V19\" fill=\"none\" stroke=\"#000\" stroke-width=\"0.3\"/>\n");
        text(metre, 25.6, "", "1 m");
    }

    private void panel(HeatPanel panel, Governing governing, PlanPaper paper, double top) {
        svg.append("<g role=\"img\" aria-label=\"").append(escaped(panel.heading())).append("\">\n");
        text(MARGIN, top + 4, "class=\"h\"", panel.heading());
        for (UtilisationMap map : panel.maps()) {
            if (PaintedStrip.isStrip(map)) {
                new PaintedStrip(map, paper, svg).paint(governing);
            } else {
                new PaintedField(map, paper, svg).paint(governing);
            }
        }
        edge(paper);
        panel.sites().forEach(site -> cross(paper, site));
        double below = paper.middle() + (paper.middle() - top - 7) + 5;
        List<String> names = governing.names();
        int inFirst = (names.size() + 1) / 2;
        for (int k = 0; k < names.size(); k++) {
            int column = k < inFirst ? 0 : 1;
            text(MARGIN + column * (WIDTH - 2 * MARGIN) / 2, below + LINE * (k - column * inFirst), "", (k + 1) + "  " + names.get(k) + ", over "
                + FixedDecimal.format(100 * governing.share(names.get(k)), 1) + " %");
        }
        if (names.isEmpty()) {
            text(MARGIN, below, "", "nowhere is there room for the whole footprint");
        }
        svg.append("</g>\n");
    }

    private void edge(PlanPaper paper) {
        for (int sign : new int[] {1, -1}) {
            svg.append("<path d=\"");
            for (int i = 0; i <= EDGE_PIECES; i++) {
                double x = edgeX(i);
                svg.append(i == 0 ? 'M' : 'L').append(paper.at(x, sign * hull.bottomEdge().y(x)));
            }
            svg.append('L').append(paper.at(hull.bottomEnd(), 0)).append("\" fill=\"none\" stroke=\"#000\" stroke-width=\"0.3\"/>\n");
        }
        svg.append("<path d=\"M").append(paper.at(hull.afterEnd(), 0)).append('L').append(paper.at(hull.forwardEnd(), 0))
            .append("\" stroke=\"#000\" stroke-width=\"0.12\" stroke-dasharray=\"4 1 1 1\"/>\n");
    }

    /** The places found: a cross on white. */
    private void cross(PlanPaper paper, Site site) {
        double u = paper.u(site.x());
        double v = paper.v(site.y());
        String path = "M" + PlanPaper.number(u - 2) + " " + PlanPaper.number(v) + "h4M" + PlanPaper.number(u) + " " + PlanPaper.number(v - 2) + "v4";
        svg.append("<path d=\"").append(path).append("\" stroke=\"#fff\" stroke-width=\"1.1\"/><path d=\"").append(path)
            .append("\" stroke=\"#000\" stroke-width=\"0.5\"/>\n");
    }

    private void text(double u, double v, String look, String words) {
        svg.append("<text x=\"").append(PlanPaper.number(u)).append("\" y=\"").append(PlanPaper.number(v)).append("\" ").append(look).append('>')
            .append(escaped(words)).append("</text>\n");
    }

    private static String escaped(String words) {
        return XmlText.allowed(words).replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;");
    }
}
