package org.garboard.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.HashSet;
import java.util.Set;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * The elements that a schema lets a file leave out. The validator's list of what is missing
 * holds them too, and would send people looking for what they need not write.
 */
final class OptionalElements {
    private final XmlKind kind;

    OptionalElements(XmlKind kind) {
        this.kind = kind;
    }

    boolean contains(String name) {
        return read().contains(name);
    }

    private Set<String> read() {
        Set<String> names = new HashSet<>();
        try (InputStream schema = OptionalElements.class.getResourceAsStream(kind.schema())) {
            XMLStreamReader reader = XMLInputFactory.newDefaultFactory().createXMLStreamReader(schema);
            while (reader.hasNext()) {
                if (reader.next() == XMLStreamConstants.START_ELEMENT
                        && "0".equals(reader.getAttributeValue(null, "minOccurs"))) {
                    names.add(reader.getAttributeValue(null, "name"));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (XMLStreamException e) {
            throw new IllegalStateException("our own schema " + kind.schema() + " is broken", e);
        }
        return names;
    }
}
