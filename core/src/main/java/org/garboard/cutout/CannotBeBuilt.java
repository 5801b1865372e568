package org.garboard.cutout;

/** A request that is sound but cannot be built: the figure that fails, and what would work. */
public final class CannotBeBuilt extends Exception {
    private static final long serialVersionUID = 1;

    private final String reason;
    private final String remedy;

    /**
     * Why, and what instead.
     *
     * @param reason with the figure that fails
     * @param remedy the nearest value that works, in words
     */
    public CannotBeBuilt(String reason, String remedy) {
        super(reason + "; what works: " + remedy);
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
