package org.garboard.cli.start;

import java.io.StringReader;
import java.util.OptionalInt;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** The text of a job that the program reads otherwise: where in it things stand. */
public final class JobText {
    private final String text;

    public JobText(String text) {
        this.text = text;
    }

    /** The line in which the first element of that name begins, counted from 1; none where there is no such element. */
    public OptionalInt lineOf(String element) {
        try {
            for (XMLStreamReader xml = reader(); xml.hasNext(); xml.next()) {
                if (xml.isStartElement() && xml.getLocalName().equals(element)) {
                    String before = text.substring(0, text.lastIndexOf('<', xml.getLocation().getCharacterOffset() - 1));
                    return OptionalInt.of(1 + (int) before.chars().filter(letter -> letter == '\n').count());
                }
            }
        } catch (XMLStreamException notWellFormed) {
            // told by whoever reads the job
        }
        return OptionalInt.empty();
    }

    XMLStreamReader reader() throws XMLStreamException {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_COALESCING, true);
        return factory.createXMLStreamReader(new StringReader(text));
    }
}
