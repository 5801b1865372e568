package org.garboard.exchange;

import jakarta.xml.bind.JAXBContext;
import jakarta.xml.bind.JAXBException;
import java.util.List;
import java.util.stream.Stream;
import javax.xml.XMLConstants;
import javax.xml.transform.Source;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.Schema;
import javax.xml.validation.SchemaFactory;
import org.xml.sax.SAXException;

/** The kinds of XML file that are read, and what tells them apart. */
enum XmlKind {
    /** The demo jobs have 3 kB. */
    JOB("job", "urn:garboard:job", "1", List.of("garboard-job.xsd"), 1 << 20, "org.garboard.exchange.xml.job",
        "write version=\"1\" and bring the elements in line with garboard-job.xsd, or use the program that the file was written for"),
    /** A few hundred kB of regions, and 60 bytes for each pole of the surface. */
    RECORD("record", "urn:garboard:record", "1", List.of("garboard-surface.xsd", "garboard-record.xsd"), 16 << 20,
        "org.garboard.exchange.xml.record",
        "use the program that wrote it, or make the record anew with garboard run");

    private final String root;
    private final String namespace;
    private final String version;
    private final List<String> schemas;
    private final int mostBytes;
    private final String beans;
    private final String remedy;
    private final Once<Schema> grammar = new Once<>(this::readSchemas);
    private final Once<JAXBContext> context = new Once<>(this::bindBeans);

    XmlKind(String root, String namespace, String version, List<String> schemas, int mostBytes, String beans, String remedy) {
        this.root = root;
        this.namespace = namespace;
        this.version = version;
        this.schemas = schemas;
        this.mostBytes = mostBytes;
        this.beans = beans;
        this.remedy = remedy;
    }

    String root() {
        return root;
    }

    String namespace() {
        return namespace;
    }

    String version() {
        return version;
    }

    /** Name of the schema's file beside this class. */
    String schema() {
        return schemas.get(schemas.size() - 1);
    }

    /** The schema and before it those that it imports: nothing else is ever fetched. */
    List<String> schemas() {
        return schemas;
    }

    /** The largest file that is read; our choice, far above what is written. */
    int mostBytes() {
        return mostBytes;
    }

    /** Package of the classes made from the schema. */
    String beans() {
        return beans;
    }

    /** Makes validator and binding side by side, where that was not done yet: they take longer than most files. */
    void prepare() {
        Stream.of(grammar, context).parallel().forEach(Once::get);
    }

    /** What the schemas say, as a validator. */
    Schema grammar() {
        return grammar.get();
    }

    /** What binds elements to the beans. */
    JAXBContext context() {
        return context.get();
    }

    private Schema readSchemas() {
        try {
            SchemaFactory factory = SchemaFactory.newDefaultInstance();
            factory.setProperty(XMLConstants.ACCESS_EXTERNAL_DTD, "");
            factory.setProperty(XMLConstants.ACCESS_EXTERNAL_SCHEMA, "");
            return factory.newSchema(schemas.stream()
                .map(schema -> new StreamSource(XmlKind.class.getResource(schema).toExternalForm()))
                .toArray(Source[]::new));
        } catch (SAXException e) {
            throw new IllegalStateException("cannot set up the reading of " + root + " files", e);
        }
    }

    private JAXBContext bindBeans() {
        try {
            return JAXBContext.newInstance(beans);
        } catch (JAXBException e) {
            throw new IllegalStateException("cannot bind " + beans, e);
        }
    }

    /** What helps when the version is not known. */
    String remedy() {
        return remedy;
    }

    /** How the file has to begin. */
    String rootTag() {
        return "<" + root + " xmlns=\"" + namespace + "\" version=\"" + version + "\">";
    }
}
