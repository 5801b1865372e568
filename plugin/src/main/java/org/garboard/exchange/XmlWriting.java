package org.garboard.exchange;

import jakarta.xml.bind.JAXBContext;
import jakarta.xml.bind.JAXBException;
import jakarta.xml.bind.Marshaller;
import java.io.ByteArrayOutputStream;
import org.glassfish.jaxb.runtime.marshaller.NamespacePrefixMapper;

/** Writes a bound root element as a file: UTF-8, indented, the root's namespace without prefix. */
final class XmlWriting {

    /** Dear to make, and alike for every file of a kind. */
    private static final ClassValue<JAXBContext> CONTEXTS = new ClassValue<>() {
        @Override
        protected JAXBContext computeValue(Class<?> root) {
            try {
                return JAXBContext.newInstance(root.getPackageName());
            } catch (JAXBException e) {
                throw new IllegalStateException("cannot bind " + root.getPackageName(), e);
            }
        }
    };

    private XmlWriting() {
    }

    /** @param namespace the root's */
    static byte[] bytes(Object root, String namespace) {
        try {
            Marshaller marshaller = CONTEXTS.get(root.getClass()).createMarshaller();
            marshaller.setProperty(Marshaller.JAXB_FORMATTED_OUTPUT, Boolean.TRUE);
            marshaller.setProperty(Marshaller.JAXB_ENCODING, "UTF-8");
            marshaller.setProperty("org.glassfish.jaxb.namespacePrefixMapper", new Prefixes(namespace));
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            marshaller.marshal(root, out);
            return out.toByteArray();
        } catch (JAXBException e) {
            throw new IllegalStateException("cannot write a " + root.getClass().getSimpleName(), e);
        }
    }

    /** The surface within a record is {@code hull:surface}, what a part has of a record {@code record:…}. */
    private static final class Prefixes extends NamespacePrefixMapper {
        private final String root;

        Prefixes(String root) {
            this.root = root;
        }

        @Override
        public String getPreferredPrefix(String namespace, String suggestion, boolean requirePrefix) {
            if (namespace.equals(root)) {
                return "";
            }
            return namespace.equals(SurfaceFile.NAMESPACE) ? "hull" : namespace.equals(XmlKind.RECORD.namespace()) ? "record" : suggestion;
        }
    }
}
