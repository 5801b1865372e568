package org.garboard.exchange;

/** The kinds of XML file that are read, and what tells them apart. */
enum XmlKind {
    JOB("job", "urn:garboard:job", "1", "garboard-job.xsd", "org.garboard.exchange.xml.job",
        "write version=\"1\" and bring the elements in line with garboard-job.xsd, or use the program that the file was written for"),
    RECORD("record", "urn:garboard:record", "1", "garboard-record.xsd", "org.garboard.exchange.xml.record",
        "use the program that wrote it, or make the record anew with garboard run");

    private final String root;
    private final String namespace;
    private final String version;
    private final String schema;
    private final String beans;
    private final String remedy;

    XmlKind(String root, String namespace, String version, String schema, String beans, String remedy) {
        this.root = root;
        this.namespace = namespace;
        this.version = version;
        this.schema = schema;
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
        return schema;
    }

    /** Package of the classes made from the schema. */
    String beans() {
        return beans;
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
