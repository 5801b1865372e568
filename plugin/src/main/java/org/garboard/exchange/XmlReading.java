package org.garboard.exchange;

import jakarta.xml.bind.JAXBException;
import jakarta.xml.bind.Unmarshaller;
import jakarta.xml.bind.UnmarshallerHandler;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.xml.XMLConstants;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParserFactory;
import javax.xml.validation.ValidatorHandler;
import org.garboard.exchange.SourceText.Position;
import org.xml.sax.InputSource;
import org.xml.sax.Locator;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.XMLReader;

/**
 * Reads one XML file in a single pass: parser, {@link ElementTrail}, validation, binding.
 *
 * <p>Job files come from anywhere, by mail too. So there are no document type definitions, no
 * entities and nothing is fetched; size and depth are bounded.
 */
final class XmlReading {
    private static final String LOCALE = "http://apache.org/xml/properties/locale";

    private final XmlKind kind;
    private final String file;
    private final SourceText source;
    private Object bean;
    private List<FileFault> faults = List.of();

    private XmlReading(XmlKind kind, String file, SourceText source) {
        this.kind = kind;
        this.file = file;
        this.source = source;
    }

    /** Reads the whole file; throws where it cannot be read on. */
    static XmlReading of(XmlKind kind, String file, byte[] bytes) throws FaultyFile {
        if (bytes.length > kind.mostBytes()) {
            throw new FaultyFile(new Position(1, 1).fault(file, "the file has more than " + kind.mostBytes()
                + " bytes; no " + kind.root() + " file needs that"));
        }
        XmlReading reading = new XmlReading(kind, file, SourceText.decode(file, bytes));
        reading.read();
        return reading;
    }

    /** What validation found, in the order of the file. */
    List<FileFault> faults() {
        return faults;
    }

    /** The bound root element; after faults it may lack any part. Empty when nothing could be bound. */
    <T> Optional<T> bean(Class<T> type) {
        return Optional.ofNullable(bean).map(type::cast);
    }

    /** Where the tag begins that a bound element came from. */
    Position position(Locator locator) {
        return source.startOfTag(locator.getLineNumber(), locator.getColumnNumber());
    }

    private void read() throws FaultyFile {
        ElementTrail trail = new ElementTrail(kind, file, source);
        SchemaFaults found = new SchemaFaults(file, trail, new OptionalElements(kind));
        kind.prepare();
        UnmarshallerHandler binding = binding();
        trail.setParent(parser());
        trail.setContentHandler(validator(found, binding));
        trail.setErrorHandler(found);
        try {
            trail.parse(new InputSource(new StringReader(source.text())));
            faults = found.faults();
            bean = bound(binding);
        } catch (SAXParseException e) {
            throw unreadable(found, new Position(Math.max(e.getLineNumber(), 1), Math.max(e.getColumnNumber(), 1)), e.getMessage());
        } catch (SAXException e) {
            if (e.getException() instanceof FaultyFile faulty) {
                throw faulty;
            }
            if (e.getException() != null) {
                throw new IllegalStateException("cannot bind what validation let pass", e);
            }
            // the parser of the Java runtime itself may lose its way, by a DOCTYPE behind the root for one
            throw unreadable(found, trail.reached(), e.getMessage());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private FaultyFile unreadable(SchemaFaults found, Position here, String words) {
        List<FileFault> all = new ArrayList<>(found.faults());
        all.add(here.fault(file, notWellFormed(words)));
        return new FaultyFile(all);
    }

    private ValidatorHandler validator(SchemaFaults found, UnmarshallerHandler binding) {
        ValidatorHandler validator = kind.grammar().newValidatorHandler();
        try {
            validator.setProperty(LOCALE, Locale.ROOT);
        } catch (SAXException e) {
            throw new IllegalStateException("cannot set up the validation of XML", e);
        }
        validator.setErrorHandler(found);
        validator.setContentHandler(new SoundValues(validator.getTypeInfoProvider(), found, binding));
        return validator;
    }

    private XMLReader parser() {
        try {
            SAXParserFactory factory = SAXParserFactory.newDefaultNSInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            factory.setFeature("http://xml.org/sax/features/external-general-entities", false);
            factory.setFeature("http://xml.org/sax/features/external-parameter-entities", false);
            factory.setXIncludeAware(false);
            XMLReader reader = factory.newSAXParser().getXMLReader();
            reader.setProperty(LOCALE, Locale.ROOT);
            return reader;
        } catch (ParserConfigurationException | SAXException e) {
            throw new IllegalStateException("cannot set up the reading of XML", e);
        }
    }

    private UnmarshallerHandler binding() {
        try {
            Unmarshaller unmarshaller = kind.context().createUnmarshaller();
            // validation has told what is wrong; binding need not say it again
            unmarshaller.setEventHandler(event -> true);
            return unmarshaller.getUnmarshallerHandler();
        } catch (JAXBException e) {
            throw new IllegalStateException("cannot bind " + kind.beans(), e);
        }
    }

    private static Object bound(UnmarshallerHandler binding) {
        try {
            return binding.getResult();
        } catch (JAXBException | IllegalStateException e) {
            return null;
        }
    }

    private String notWellFormed(String told) {
        String words = String.valueOf(told);
        if (words.contains("disallow-doctype-decl")) {
            return "a DOCTYPE stands there; leave it away, " + kind.root() + " files have none and none is read";
        }
        if (words.contains("Content is not allowed in prolog")) {
            return "this is no XML file; a " + kind.root() + " is one, and begins with <" + kind.root() + "> or <?xml";
        }
        if (words.startsWith("Scanner State")) {
            return "this is not well-formed XML: a declaration stands there, which only the beginning of a file may hold";
        }
        return "this is not well-formed XML: " + words.strip();
    }
}
