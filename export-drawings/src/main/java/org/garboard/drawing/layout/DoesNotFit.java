package org.garboard.drawing.layout;

/** A sheet cannot be set out so that it can be read; says why, and what would work. */
public final class DoesNotFit extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final String reason;
    private final String remedy;

    public DoesNotFit(String reason, String remedy) {
        super(reason + "; " + remedy);
        this.reason = reason;
        this.remedy = remedy;
    }

    public String reason() {
        return reason;
    }

    public String remedy() {
        return remedy;
    }
}
