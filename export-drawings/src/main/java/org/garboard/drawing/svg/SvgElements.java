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

    /** The group of a layer, with its pen. */
    void startLayer(Layer layer) throws XMLStreamException {
        newLine();
        xml.writeStartElement(SVG, "g");
        attribute("id", layer.name());
        xml.writeAttribute("inkscape", INKSCAPE, "groupmode", "layer");
        xml.writeAttribute("inkscape", INKSCAPE, "label", layer.name());
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
        newLine();
        xml.writeStartElement(SVG, element);
        attributes(attributes);
        xml.writeCharacters(allowed(words));
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

    /** Leaves out what XML 1.0 cannot hold; the platform's writer would write it raw. */
    static String allowed(String words) {
        return words.codePoints()
                .filter(letter -> letter == 0x9 || letter == 0xA || letter == 0xD || letter >= 0x20 && letter <= 0xD7FF
                        || letter >= 0xE000 && letter <= 0xFFFD || letter >= 0x10000)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }
}
