package org.garboard.drawing.svg;

import java.util.stream.Collectors;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Point;
import org.garboard.units.FixedDecimal;

/** SVG elements, a line each; y is turned over here and nowhere else. */
final class SvgElements {

    private static final String SVG = "http://www.w3.org/2000/svg";
    private static final String INKSCAPE = "http://www.inkscape.org/namespaces/inkscape";
    /** Micrometres on paper. */
    private static final int PLACES = 3;

    private final XMLStreamWriter xml;
    private final double paperHeight;

    SvgElements(XMLStreamWriter xml, double paperHeight) {
        this.xml = xml;
        this.paperHeight = paperHeight;
    }

    /** A number without closing noughts. */
    static String number(double value) {
        String text = FixedDecimal.format(value, PLACES);
        int end = text.length();
        while (text.charAt(end - 1) == '0') {
            end--;
        }
        return text.substring(0, text.charAt(end - 1) == '.' ? end - 1 : end);
    }

    String x(Point point) {
        return number(point.x());
    }

    String y(Point point) {
        return number(paperHeight - point.y());
    }

    String xy(Point point) {
        return x(point) + " " + y(point);
    }

    void startDocument() throws XMLStreamException {
        xml.writeProcessingInstruction("xml", "version=\"1.0\" encoding=\"UTF-8\"");
        newLine();
        xml.setDefaultNamespace(SVG);
        xml.writeStartElement(SVG, "svg");
        xml.writeDefaultNamespace(SVG);
        xml.writeNamespace("inkscape", INKSCAPE);
        xml.writeAttribute("xml", "http://www.w3.org/XML/1998/namespace", "lang", "en");
    }

    void endDocument() throws XMLStreamException {
        newLine();
        xml.writeEndElement();
        newLine();
        xml.writeEndDocument();
        xml.flush();
    }

    /** Inside a page of HTML, where names of layers would stand more than once. */
    void startInside() throws XMLStreamException {
        xml.setDefaultNamespace(SVG);
        xml.writeStartElement(SVG, "svg");
        xml.writeDefaultNamespace(SVG);
    }

    /** The group of a layer, named, with its pen. */
    void startLayer(Layer layer) throws XMLStreamException {
        start("g");
        attribute("id", layer.name());
        xml.writeAttribute("inkscape", INKSCAPE, "groupmode", "layer");
        xml.writeAttribute("inkscape", INKSCAPE, "label", layer.name());
        pen(layer);
    }

    /** The group of a layer without a name. */
    void startPen(Layer layer) throws XMLStreamException {
        start("g");
        pen(layer);
    }

    private void start(String element) throws XMLStreamException {
        newLine();
        xml.writeStartElement(SVG, element);
    }

    private void pen(Layer layer) throws XMLStreamException {
        attribute("fill", "none");
        attribute("stroke", "#000");
        attribute("stroke-width", number(layer.width()));
        if (!layer.lineType().pattern().isEmpty()) {
            attribute("stroke-dasharray", dashes(layer));
        }
    }

    /** Dots are dashes as long as the pen is wide: a dash of no length is not drawn. */
    private static String dashes(Layer layer) {
        return layer.lineType().pattern().stream()
                .map(dash -> number(dash == 0 ? layer.width() : Math.abs(dash)))
                .collect(Collectors.joining(" "));
    }

    void end() throws XMLStreamException {
        newLine();
        xml.writeEndElement();
    }

    void attribute(String name, String value) throws XMLStreamException {
        xml.writeAttribute(name, value);
    }

    /** An element without content; names and values by turns. */
    void empty(String element, String... attributes) throws XMLStreamException {
        newLine();
        xml.writeEmptyElement(SVG, element);
        attributes(attributes);
    }

    /** An element with words. */
    void words(String element, String words, String... attributes) throws XMLStreamException {
        start(element);
        attributes(attributes);
        xml.writeCharacters(XmlText.allowed(words));
        xml.writeEndElement();
    }

    void labelled(String element, String id, String words) throws XMLStreamException {
        words(element, words, "id", id);
    }

    private void attributes(String... attributes) throws XMLStreamException {
        for (int i = 0; i < attributes.length; i += 2) {
            attribute(attributes[i], attributes[i + 1]);
        }
    }

    private void newLine() throws XMLStreamException {
        xml.writeCharacters("\n");
    }
}
