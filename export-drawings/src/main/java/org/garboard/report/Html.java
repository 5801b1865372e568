package org.garboard.report;

import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.garboard.drawing.View;
import org.garboard.drawing.svg.InlineSvg;
import org.garboard.drawing.svg.XmlText;

/** One page of HTML as it is written, element by element; every text is escaped here and nowhere else. */
public final class Html {
    /** Greys and lines alone, for any printer, but for what is coloured by measure, whose colours keep their order in grey; no letter that XML would escape. */
    private static final String STYLE = """
        body { font-family: "Liberation Sans", Arial, Helvetica, sans-serif; line-height: 1.45; margin: 0 auto; padding: 0.5em 1em 2em; max-width: 70em; color: #000; background: #fff; overflow-wrap: break-word; }
        h1, h2, h3 { line-height: 1.2; }
        .answer h2 { border: 0; margin-top: 0.4em; padding: 0; }
        h2 { border-top: 2px solid #000; padding-top: 0.5em; margin-top: 1.8em; }
        a { color: #000; }
        a:focus, [tabindex]:focus { outline: 3px solid #000; outline-offset: 2px; }
        .answer { border: 2px solid #000; padding: 0 1em; }
        dt { font-weight: bold; margin-top: 0.7em; }
        dd { margin: 0 0 0 1em; }
        figure { margin: 1em 0; }
        figure svg { width: 100%; max-width: 38em; height: auto; display: block; }
        figcaption { font-size: 0.9em; }
        .wide { overflow-x: auto; }
        table { border-collapse: collapse; font-size: 0.9em; }
        caption { text-align: left; font-weight: bold; padding: 0.4em 0; }
        .broad table { min-width: 62em; }
        .coloured svg { min-width: 68rem; max-width: none; }
        th, td { border: 1px solid #777; padding: 0.25em 0.5em; text-align: left; vertical-align: top; }
        thead th { background: #e8e8e8; }
        .strong th, .strong td { font-weight: bold; background: #e8e8e8; }
        code { overflow-wrap: anywhere; font-size: 0.85em; }
        @media print { @page { margin: 15mm; } body { padding: 0; max-width: none; font-size: 9.5pt; } nav { display: none; } .wide { overflow-x: visible; } .broad table, .coloured svg { min-width: 0; } table { font-size: 8pt; } tr, figure { break-inside: avoid; } h2, h3, caption { break-after: avoid; } }
        """;

    private final StringWriter text = new StringWriter();
    private final XMLStreamWriter xml;

    private Html() throws XMLStreamException {
        this.xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(text);
    }

    /** What stands in the body of a page. */
    public interface Body {
        void write(Html page) throws XMLStreamException;
    }

    /**
     * The bytes of a page.
     *
     * @param title of the page
     * @param generator what made it, by which it is known again
     */
    public static byte[] page(String title, String generator, Body body) {
        try {
            Html page = new Html();
            page.write(title, generator, body);
            return page.text.toString().getBytes(StandardCharsets.UTF_8);
        } catch (XMLStreamException e) {
            throw new IllegalStateException("a page could not be written to memory", e);
        }
    }

    private void write(String title, String generator, Body body) throws XMLStreamException {
        xml.writeDTD("<!DOCTYPE html>");
        start("html", "lang", "en");
        start("head");
        empty("meta", "charset", "utf-8");
        empty("meta", "name", "generator", "content", generator);
        empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
        words("title", title);
        words("style", "\n" + STYLE);
        end();
        start("body");
        body.write(this);
        end();
        end();
        newLine();
        xml.flush();
    }

    /** Opens an element; names and values of attributes by turns. */
    public Html start(String element, String... attributes) throws XMLStreamException {
        newLine();
        open(element, attributes);
        return this;
    }

    /** Closes the element that was opened last. */
    public Html end() throws XMLStreamException {
        xml.writeEndElement();
        return this;
    }

    /** An element with words and nothing else. */
    public Html words(String element, String words, String... attributes) throws XMLStreamException {
        start(element, attributes);
        return say(words).end();
    }

    /** Words inside the element that is open. */
    public Html say(String words) throws XMLStreamException {
        xml.writeCharacters(XmlText.allowed(words));
        return this;
    }

    /** An element in the midst of words. */
    public Html within(String element, String words, String... attributes) throws XMLStreamException {
        open(element, attributes);
        return say(words).end();
    }

    private void open(String element, String... attributes) throws XMLStreamException {
        xml.writeStartElement(element);
        attributes(attributes);
    }

    private void empty(String element, String... attributes) throws XMLStreamException {
        newLine();
        xml.writeEmptyElement(element);
        attributes(attributes);
    }

    private void attributes(String... attributes) throws XMLStreamException {
        for (int i = 0; i < attributes.length; i += 2) {
            xml.writeAttribute(attributes[i], XmlText.allowed(attributes[i + 1]));
        }
    }

    private void newLine() throws XMLStreamException {
        xml.writeCharacters("\n");
    }

    /** A list, an item for each of these. */
    public Html list(String element, List<String> items) throws XMLStreamException {
        start(element);
        for (String item : items) {
            words("li", item);
        }
        return end();
    }

    /** A term and what is said of it, inside a list of such. */
    public Html term(String term, String words) throws XMLStreamException {
        return words("dt", term).words("dd", words);
    }

    /** Opens a table that scrolls by itself where the page is narrow, reached by keyboard; {@link #endTable} closes it. */
    public Html startTable(String caption, String... headings) throws XMLStreamException {
        return table("wide", caption, headings);
    }

    /** Likewise one of many columns with sentences in them. */
    public Html startBroadTable(String caption, String... headings) throws XMLStreamException {
        return table("wide broad", caption, headings);
    }

    private Html table(String look, String caption, String... headings) throws XMLStreamException {
        start("div", "class", look, "role", "region", "aria-label", caption, "tabindex", "0");
        start("table").words("caption", caption).start("thead").start("tr");
        for (String heading : headings) {
            words("th", heading, "scope", "col");
        }
        return end().end().start("tbody");
    }

    /** Closes body, table and what it scrolls in. */
    public Html endTable() throws XMLStreamException {
        return end().end().end();
    }

    /** A row whose first cell names it. */
    public Html row(String name, List<String> cells, String... attributes) throws XMLStreamException {
        start("tr", attributes).words("th", name, "scope", "row");
        for (String cell : cells) {
            words("td", cell);
        }
        return end();
    }

    /**
     * A broad, coloured picture that scrolls by itself where the page is narrow, reached by keyboard, and a line below.
     *
     * @param svg a whole element, every text in it escaped
     */
    public Html colouredFigure(String svg, String label, String caption) throws XMLStreamException {
        start("figure").start("div", "class", "wide coloured", "role", "region", "aria-label", label, "tabindex", "0");
        say("\n");
        xml.flush();
        text.write(svg);
        return end().words("figcaption", caption).end();
    }

    /** A picture with what it shows, told to who cannot see it, and a line below. */
    public Html figure(View picture, String id, String title, String description, String caption) throws XMLStreamException {
        start("figure");
        newLine();
        InlineSvg.write(picture, id, title, description, xml);
        return words("figcaption", caption).end();
    }
}
