package org.garboard.cli.files;

import java.util.List;

/** The folder that the results were to go to cannot take them; nothing in it was changed unless a message says so. */
public final class FolderRefused extends Exception {
    private static final long serialVersionUID = 1;

    private final transient List<String> messages;

    FolderRefused(List<String> messages) {
        super(messages.get(0));
        this.messages = List.copyOf(messages);
    }

    public List<String> messages() {
        return messages;
    }
}
