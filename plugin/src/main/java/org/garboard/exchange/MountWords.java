package org.garboard.exchange;

import org.garboard.mount.FlushThroughHull;
import org.garboard.mount.KeelPocket;
import org.garboard.mount.Mount;

/** The mounts in the two kinds of file. */
final class MountWords {

    private MountWords() {
    }

    /** The mount that an element of the job stands for. */
    static Mount mount(Object element) {
        if (element instanceof org.garboard.exchange.xml.job.FlushThroughHull) {
            return new FlushThroughHull();
        }
        if (element instanceof org.garboard.exchange.xml.job.KeelPocket) {
            return new KeelPocket();
        }
        throw new IllegalArgumentException("no mount is known for " + element.getClass());
    }

    /** The record's word for a mount. */
    static org.garboard.exchange.xml.record.Mount word(Mount mount) {
        if (mount instanceof FlushThroughHull) {
            return org.garboard.exchange.xml.record.Mount.FLUSH_THROUGH_HULL;
        }
        if (mount instanceof KeelPocket) {
            return org.garboard.exchange.xml.record.Mount.KEEL_POCKET;
        }
        throw new IllegalArgumentException("no word is known for " + mount);
    }
}
