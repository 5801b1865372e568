package org.garboard.exchange;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.garboard.job.RecordedFigure;

/** Every plain value of a record, as it stands: of inputs, boat, transducer, craft, wishes and pocket, of whatever is added there later. */
final class RecordedFigures {
    /** What is compared by itself, or is no figure. */
    private static final Set<String> LEFT_OUT = Set.of("features", "siting", "answer", "surface", "survey", "outputs");
    /** Rings of points are longer; our choice. */
    private static final int LONGEST = 200;

    private final List<RecordedFigure> figures = new ArrayList<>();
    private final Map<String, Integer> seen = new HashMap<>();

    private RecordedFigures() {
    }

    /** Of a record that is known to be sound. */
    static List<RecordedFigure> of(byte[] bytes) {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_COALESCING, true);
        RecordedFigures reading = new RecordedFigures();
        try {
            XMLStreamReader xml = factory.createXMLStreamReader(new ByteArrayInputStream(bytes));
            xml.nextTag();
            while (xml.nextTag() == XMLStreamConstants.START_ELEMENT) {
                reading.element(xml, "");
            }
        } catch (XMLStreamException e) {
            throw new IllegalArgumentException("no sound record", e);
        }
        return reading.figures;
    }

    private void element(XMLStreamReader xml, String above) throws XMLStreamException {
        String name = xml.getLocalName();
        boolean leftOut = LEFT_OUT.contains(name);
        String subject = leftOut ? "" : subject(xml, above);
        for (int i = 0; !leftOut && i < xml.getAttributeCount(); i++) {
            figures.add(new RecordedFigure(subject, xml.getAttributeLocalName(i), xml.getAttributeValue(i)));
        }
        StringBuilder text = new StringBuilder();
        int event = xml.next();
        while (event != XMLStreamConstants.END_ELEMENT) {
            if (event == XMLStreamConstants.START_ELEMENT) {
                if (leftOut) {
                    skip(xml);
                } else {
                    element(xml, subject);
                }
            } else if (event == XMLStreamConstants.CHARACTERS) {
                text.append(xml.getText());
            }
            event = xml.next();
        }
        if (!leftOut && !text.toString().isBlank() && text.length() <= LONGEST) {
            figures.add(new RecordedFigure(subject, "text", text.toString().strip()));
        }
    }

    /** The same element twice is told apart by its name, or counted. */
    private String subject(XMLStreamReader xml, String above) {
        String own = xml.getLocalName().replace('-', ' ');
        String called = xml.getAttributeValue(null, "name");
        String subject = above.isEmpty() ? own : above + ", " + own + (called == null ? "" : " " + called);
        int count = seen.merge(subject, 1, Integer::sum);
        return count == 1 ? subject : subject + " " + count;
    }

    private static void skip(XMLStreamReader xml) throws XMLStreamException {
        int depth = 1;
        while (depth > 0) {
            int event = xml.next();
            depth += event == XMLStreamConstants.START_ELEMENT ? 1 : event == XMLStreamConstants.END_ELEMENT ? -1 : 0;
        }
    }
}
