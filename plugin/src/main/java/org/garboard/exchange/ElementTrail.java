package org.garboard.exchange;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.Set;
import org.garboard.exchange.SourceText.Position;
import org.xml.sax.Attributes;
import org.xml.sax.Locator;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.XMLFilterImpl;

/**
 * Stands between parser and validation: knows which element is open and where it began, refuses
 * what is not this kind of file in a version that is understood, and stops at a depth and at numbers so
 * long that no sound file has them.
 */
final class ElementTrail extends XMLFilterImpl {
    /** Our choice: four times what the schemas need. */
    private static final int MOST_DEPTH = 32;
    /** Our choice: a hash, the longest word that may be digits alone, has as many. */
    private static final int MOST_DIGITS = 64;

    private final XmlKind kind;
    private final String file;
    private final SourceText source;
    private final Deque<Open> open = new ArrayDeque<>();
    private Locator locator;
    /** At the end of the text that was read so far. */
    private int digits;

    ElementTrail(XmlKind kind, String file, SourceText source) {
        this.kind = kind;
        this.file = file;
        this.source = source;
    }

    /** An open element, the place where the parser was when it had read its tag, its children so far. */
    private record Open(String name, int line, int column, Set<String> children) {
    }

    /** Name of the innermost open element. */
    String element() {
        return open.isEmpty() ? kind.root() : open.peek().name();
    }

    /** Name of the element that holds the innermost one. */
    String parent() {
        return open.stream().skip(1).findFirst().map(Open::name).orElse("");
    }

    /** True when the innermost element's parent already held one of its name. */
    boolean isRepeated() {
        return open.stream().skip(1).findFirst().map(holder -> holder.children().contains(element())).orElse(false);
    }

    /** Where the innermost element's tag begins. */
    Position position() {
        Open innermost = open.peek();
        return innermost == null ? new Position(1, 1) : source.startOfTag(innermost.line(), innermost.column());
    }

    /** How far the file was read. */
    Position reached() {
        return new Position(Math.max(locator.getLineNumber(), 1), Math.max(locator.getColumnNumber(), 1));
    }

    @Override
    public void setDocumentLocator(Locator locator) {
        this.locator = locator;
        super.setDocumentLocator(locator);
    }

    @Override
    public void startElement(String uri, String name, String qualifiedName, Attributes attributes) throws SAXException {
        Open element = new Open(name, locator.getLineNumber(), locator.getColumnNumber(), new HashSet<>());
        boolean root = open.isEmpty();
        open.push(element);
        if (root) {
            checkRoot(uri, name, attributes.getValue("version"));
        }
        if (open.size() > MOST_DEPTH) {
            throw stop("elements stand more than " + MOST_DEPTH + " deep in each other; no "
                + kind.root() + " file needs that");
        }
        for (int i = 0; i < attributes.getLength(); i++) {
            digits = 0;
            count(attributes.getValue(i).toCharArray(), 0, attributes.getValue(i).length());
        }
        digits = 0;
        super.startElement(uri, name, qualifiedName, attributes);
    }

    @Override
    public void characters(char[] chars, int start, int length) throws SAXException {
        count(chars, start, length);
        super.characters(chars, start, length);
    }

    private void count(char[] chars, int start, int length) throws SAXException {
        for (int i = start; i < start + length; i++) {
            digits = chars[i] >= '0' && chars[i] <= '9' || chars[i] == '.' ? digits + 1 : 0;
            if (digits > MOST_DIGITS) {
                throw stop("a number of more than " + MOST_DIGITS + " digits stands in <" + element() + ">; no " + kind.root() + " file needs that");
            }
        }
    }

    @Override
    public void endElement(String uri, String name, String qualifiedName) throws SAXException {
        digits = 0;
        super.endElement(uri, name, qualifiedName);
        open.pop();
        if (!open.isEmpty()) {
            open.peek().children().add(name);
        }
    }

    private void checkRoot(String uri, String name, String version) throws SAXException {
        if (!name.equals(kind.root())) {
            throw stop("this is a <" + name + "> file; expected " + kind.rootTag());
        }
        if (!uri.equals(kind.namespace())) {
            String found = uri.isEmpty() ? "no name space" : "the name space \"" + uri + "\"";
            throw stop("<" + name + "> has " + found + "; write " + kind.rootTag());
        }
        if (version == null) {
            throw stop("<" + name + "> does not say its version; write " + kind.rootTag());
        }
        if (!version.equals(kind.version())) {
            throw stop("version \"" + version + "\" of the " + name + " file is not known to this program, which reads version \""
                + kind.version() + "\"; " + kind.remedy());
        }
    }

    private SAXException stop(String words) {
        return new SAXException(new FaultyFile(position().fault(file, words)));
    }
}
