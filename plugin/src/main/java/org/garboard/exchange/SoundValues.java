package org.garboard.exchange;

import java.util.regex.Pattern;
import javax.xml.XMLConstants;
import javax.xml.validation.TypeInfoProvider;
import org.xml.sax.Attributes;
import org.xml.sax.ContentHandler;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.AttributesImpl;
import org.xml.sax.helpers.XMLFilterImpl;

/**
 * Stands between validation and binding, and keeps from the binding what validation has refused: the binding would fall over it,
 * or take 1e1000000, which is no number of a schema, for a number of a million digits.
 */
final class SoundValues extends XMLFilterImpl {
    private static final Pattern NUMBER = Pattern.compile("\\s*[+-]?(?:[0-9]+(?:\\.[0-9]*)?|\\.[0-9]+)\\s*");

    private final TypeInfoProvider types;
    private final SchemaFaults faults;
    private final StringBuilder text = new StringBuilder();
    private int told;

    SoundValues(TypeInfoProvider types, SchemaFaults faults, ContentHandler binding) {
        this.types = types;
        this.faults = faults;
        setContentHandler(binding);
    }

    @Override
    public void characters(char[] chars, int start, int length) {
        text.append(chars, start, length);
    }

    @Override
    public void startElement(String uri, String name, String qualifiedName, Attributes attributes) throws SAXException {
        pass();
        super.startElement(uri, name, qualifiedName, sound(attributes));
        told = faults.count();
    }

    /** Validation looks at a text before it passes on the end of its element. */
    @Override
    public void endElement(String uri, String name, String qualifiedName) throws SAXException {
        if (faults.count() > told) {
            text.setLength(0);
        }
        pass();
        super.endElement(uri, name, qualifiedName);
        told = faults.count();
    }

    private void pass() throws SAXException {
        char[] chars = text.toString().toCharArray();
        text.setLength(0);
        super.characters(chars, 0, chars.length);
    }

    private Attributes sound(Attributes attributes) {
        AttributesImpl sound = new AttributesImpl(attributes);
        for (int i = attributes.getLength() - 1; i >= 0; i--) {
            if (isNumber(i) && !NUMBER.matcher(attributes.getValue(i)).matches()) {
                sound.removeAttribute(i);
            }
        }
        return sound;
    }

    private boolean isNumber(int attribute) {
        return types.getAttributeTypeInfo(attribute) != null
            && types.getAttributeTypeInfo(attribute).isDerivedFrom(XMLConstants.W3C_XML_SCHEMA_NS_URI, "decimal", 0);
    }
}
