package org.garboard.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/** The schemas are the handbook of the files: every element says, itself or by its type, what it is. */
class SchemaDocumentationTest {

    @ParameterizedTest
    @ValueSource(strings = {"garboard-job.xsd", "garboard-record.xsd", "garboard-surface.xsd", "garboard-part.xsd"})
    void everyElementIsExplained(String schema) throws Exception {
        Document document = read(schema);
        Set<String> explainedTypes = new HashSet<>();
        List<String> silent = new ArrayList<>();
        for (String kind : List.of("complexType", "simpleType")) {
            for (Element type : elements(document, kind)) {
                if (!type.getAttribute("name").isEmpty() && !isExplained(type)) {
                    silent.add("type " + type.getAttribute("name"));
                }
                explainedTypes.add(type.getAttribute("name"));
            }
        }
        List<Element> elements = elements(document, "element");
        assertTrue(elements.size() > 5, "elements found: " + elements.size());
        for (Element element : elements) {
            if (!isExplained(element) && !explainedTypes.contains(element.getAttribute("type"))) {
                silent.add("element " + element.getAttribute("name"));
            }
        }
        assertEquals(List.of(), silent);
    }

    private static Document read(String schema) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultNSInstance();
        try (InputStream in = SchemaDocumentationTest.class.getResourceAsStream(schema)) {
            return factory.newDocumentBuilder().parse(in);
        }
    }

    private static List<Element> elements(Document document, String kind) {
        NodeList nodes = document.getElementsByTagNameNS("http://www.w3.org/2001/XMLSchema", kind);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            elements.add((Element) nodes.item(i));
        }
        return elements;
    }

    private static boolean isExplained(Element element) {
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if ("annotation".equals(child.getLocalName()) && !child.getTextContent().isBlank()) {
                return true;
            }
        }
        return false;
    }
}
