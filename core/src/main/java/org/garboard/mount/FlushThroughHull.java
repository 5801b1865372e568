package org.garboard.mount;

/** At the skin: the housing flush through the hull, beside the keel. */
public record FlushThroughHull() implements Mount {
    @Override
    public String words() {
        return "flush through-hull";
    }
}
