package org.garboard.exchange;

import java.util.List;
import org.garboard.exchange.xml.job.Mounts;
import org.garboard.mount.Mount;

/** The mounts in the two kinds of file. */
final class MountWords {

    private MountWords() {
    }

    /** The mount that an element of the job or a word of the record stands for. */
    static Mount mount(String element) {
        return Mount.all().stream().filter(mount -> mount.word().equals(element)).findFirst()
            .orElseThrow(() -> new IllegalArgumentException("no mount is known for " + element));
    }

    /** As the file lists them. */
    static List<Mount> mounts(Mounts mounts) {
        return mounts.getTransomMountOrInHullOrFlushThroughHull().stream().map(element -> mount(element.getName().getLocalPart())).toList();
    }
}
