package org.garboard.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.xml.sax.ErrorHandler;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/**
 * Collects what schema validation finds fault with, in plain words, each at the tag of its element.
 *
 * <p>The validator reports a bad value twice: first what is wrong with it, then which element or
 * attribute has it. Both together make one fault.
 */
final class SchemaFaults implements ErrorHandler {
    private final String file;
    private final ElementTrail trail;
    private final OptionalElements optional;
    private final List<FileFault> faults = new ArrayList<>();
    private Optional<SchemaMessage> valueFault = Optional.empty();

    SchemaFaults(String file, ElementTrail trail, OptionalElements optional) {
        this.file = file;
        this.trail = trail;
        this.optional = optional;
    }

    List<FileFault> faults() {
        return List.copyOf(faults);
    }

    /** How many were found so far. */
    int count() {
        return faults.size();
    }

    @Override
    public void warning(SAXParseException warning) {
        error(warning);
    }

    @Override
    public void error(SAXParseException error) {
        SchemaMessage message = SchemaMessage.of(error.getMessage());
        if (message.isAboutValue()) {
            valueFault = Optional.of(message);
            return;
        }
        FileFault fault = trail.position().fault(file, words(message));
        // elements inside a number are reported once as such and again as an empty number
        boolean told = message.namesBadContent() && !faults.isEmpty()
            && faults.get(faults.size() - 1).line() == fault.line()
            && faults.get(faults.size() - 1).column() == fault.column();
        if (!told) {
            faults.add(fault);
        }
        valueFault = Optional.empty();
    }

    @Override
    public void fatalError(SAXParseException error) throws SAXException {
        throw error;
    }

    private String words(SchemaMessage message) {
        String tag = "<" + trail.element() + ">";
        if (message.namesBadAttribute()) {
            return "attribute " + message.argument(1) + " of " + tag + ": " + valueWords();
        }
        if (message.namesBadContent()) {
            return tag + ": " + valueWords();
        }
        if (message.isUnexpectedElement()) {
            return unexpected(message);
        }
        if (message.isIncomplete()) {
            return incomplete(message);
        }
        return switch (message.code()) {
            case "cvc-complex-type.3.2.2" -> "attribute " + message.argument(0) + " is not known on " + tag;
            case "cvc-complex-type.4" -> tag + " lacks its attribute " + message.argument(0)
                + "; write " + tag.replace(">", " ") + message.argument(0) + "=\"…\">";
            case "cvc-complex-type.2.3" -> "text stands in " + tag + ", where only elements may stand";
            case "cvc-complex-type.2.1" -> tag + " stays empty; write " + tag.replace(">", "/>");
            case "cvc-type.3.1.1" -> tag + " takes no attributes";
            case "cvc-type.3.1.2" -> "elements stand in " + tag + ", where only text may stand";
            default -> tag + ": " + message.plainText();
        };
    }

    private String valueWords() {
        return valueFault.map(SchemaMessage::valueWords).orElse("elements stand there, where only a number may stand");
    }

    private String unexpected(SchemaMessage message) {
        String tag = "<" + trail.element() + ">";
        String holder = "<" + trail.parent() + ">";
        if (trail.isRepeated()) {
            return tag + " stands again in " + holder + "; it may stand there once";
        }
        Optional<String> meant = Spelling.meant(trail.element(), message.expected());
        if (meant.isPresent() && meant.get().equals(trail.element())) {
            return tag + " belongs to another name space than " + holder + "; leave its xmlns away";
        }
        String hint = meant.map(word -> "did you mean <" + word + ">?").orElseGet(() -> message.expected().isEmpty()
            ? "nothing more is expected there" : "expected there: " + tags(message.expected()));
        return tag + " is not expected in " + holder + "; " + hint;
    }

    private String incomplete(SchemaMessage message) {
        List<String> missing = message.expected().stream().filter(name -> !optional.contains(name)).toList();
        String choice = missing.size() > 1 && List.of("mounts", "at", "beam", "layup", "planking", "rooms").contains(trail.element()) ? " one of " : " ";
        return "<" + trail.element() + "> lacks" + choice + tags(missing);
    }

    private static String tags(List<String> names) {
        return names.stream().map(name -> "<" + name + ">").collect(Collectors.joining(", "));
    }
}
