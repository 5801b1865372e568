package org.garboard.mount;

/** In a recess athwart the keel. */
public record KeelPocket() implements Mount {
    @Override
    public String words() {
        return "keel pocket";
    }
}
