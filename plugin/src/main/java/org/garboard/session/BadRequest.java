package org.garboard.session;

/** A line that is no request; the message says what stands there and what is wanted. */
final class BadRequest extends Exception {
    private static final long serialVersionUID = 1;

    private final String id;

    /** @param id by which the reply is known */
    BadRequest(String id, String message) {
        super(message);
        this.id = id;
    }

    String id() {
        return id;
    }
}
