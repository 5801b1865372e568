package org.garboard.flow.attitude;

/** Where an attitude comes from. */
public enum Basis {
    /** The balance of forces and moments. */
    WORKED_OUT("worked out"),
    /** At a trim that was asked for, the load carried. */
    TRIM_ASKED("at a trim that was asked for"),
    /** Even keel at the draught that is told; what she weighs is not. */
    DRAUGHT_TOLD("even keel at the draught that is told"),
    MEASURED_TRIM("measured trim"),
    MEASURED_KEEL("measured wetted keel"),
    MEASURED_TRIM_AND_KEEL("measured trim and wetted keel");

    private final String words;

    Basis(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
