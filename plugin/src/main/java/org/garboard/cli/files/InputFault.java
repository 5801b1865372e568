package org.garboard.cli.files;

import java.util.List;

/** An input file is at fault; everything that is wrong with it, a line each. */
public final class InputFault extends Exception {
    private static final long serialVersionUID = 1;

    private final transient List<String> messages;

    public InputFault(List<String> messages) {
        super(messages.get(0));
        this.messages = List.copyOf(messages);
    }

    InputFault(String message) {
        this(List.of(message));
    }

    public List<String> messages() {
        return messages;
    }
}
