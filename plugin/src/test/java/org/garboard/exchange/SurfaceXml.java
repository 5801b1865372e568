package org.garboard.exchange;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** A surface file read back by other means than ours: DOM, and the B-spline recurrence as it stands in the books. */
final class SurfaceXml {
    private static final String NAMESPACE = "urn:garboard:surface";

    /**
     * A panel as the file tells it.
     *
     * @param poles {@code [i][k]} of x, y, z [m]
     */
    record Panel(String inner, String outer, int degreeAlong, int degreeAcross,
                 List<Double> knotsAlong, List<Double> knotsAcross, List<List<List<Double>>> poles) {

        /** The point at surface parameters [m]. */
        double[] at(double u, double v) {
            double[] point = new double[3];
            for (int i = 0; i < poles.size(); i++) {
                double along = basis(knotsAlong, i, degreeAlong, u);
                for (int k = 0; along != 0 && k < poles.get(i).size(); k++) {
                    double weight = along * basis(knotsAcross, k, degreeAcross, v);
                    for (int c = 0; c < 3; c++) {
                        point[c] += weight * poles.get(i).get(k).get(c);
                    }
                }
            }
            return point;
        }

        /** Cox and de Boor's recurrence; the last interval includes its end. */
        private static double basis(List<Double> knots, int i, int degree, double t) {
            double from = knots.get(i);
            double to = knots.get(i + degree + 1);
            double end = knots.get(knots.size() - 1);
            if (degree == 0) {
                return t >= from && t < to || t == end && to == end && from < to ? 1 : 0;
            }
            double rise = knots.get(i + degree) - from;
            double fall = to - knots.get(i + 1);
            return (rise == 0 ? 0 : (t - from) / rise * basis(knots, i, degree - 1, t))
                + (fall == 0 ? 0 : (to - t) / fall * basis(knots, i + 1, degree - 1, t));
        }
    }

    private SurfaceXml() {
    }

    static List<Panel> panels(byte[] file) {
        try {
            Element root = DocumentBuilderFactory.newDefaultNSInstance().newDocumentBuilder()
                .parse(new ByteArrayInputStream(file)).getDocumentElement();
            return elements(root, "panel").stream().map(SurfaceXml::panel).toList();
        } catch (Exception e) {
            throw new AssertionError("not readable as XML", e);
        }
    }

    private static Panel panel(Element element) {
        return new Panel(element.getAttribute("inner-line"), element.getAttribute("outer-line"),
            Integer.parseInt(element.getAttribute("degree-along")), Integer.parseInt(element.getAttribute("degree-across")),
            numbers(elements(element, "knots-along_m").get(0).getTextContent(), " "),
            numbers(elements(element, "knots-across").get(0).getTextContent(), " "),
            elements(element, "row").stream()
                .map(row -> Arrays.stream(row.getTextContent().split(" ")).map(point -> numbers(point, ",")).toList())
                .toList());
    }

    private static List<Double> numbers(String text, String mark) {
        return Arrays.stream(text.split(mark)).map(Double::valueOf).toList();
    }

    private static List<Element> elements(Element within, String name) {
        NodeList nodes = within.getElementsByTagNameNS(NAMESPACE, name);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            elements.add((Element) nodes.item(i));
        }
        return elements;
    }
}
