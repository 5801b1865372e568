package org.garboard.exchange;

import java.util.List;

/** Ends the reading of a file that cannot be read on; the faults say why. */
final class FaultyFile extends Exception {
    private static final long serialVersionUID = 1;

    private final transient List<FileFault> faults;

    FaultyFile(FileFault fault) {
        this(List.of(fault));
    }

    FaultyFile(List<FileFault> faults) {
        super(faults.get(0).message());
        this.faults = List.copyOf(faults);
    }

    List<FileFault> faults() {
        return faults;
    }
}
