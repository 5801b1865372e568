package org.garboard.flow.panels;

/** In which planes a body is mirrored. A plane of mirrors is one that no water crosses. */
public enum Images {
    /** The panels are the whole body. */
    NONE(1),
    /** Mirrored in the centreline y = 0 and in the water's surface z = 0: the panels are a quarter. */
    CENTRELINE_AND_WATER(4);

    private final int count;

    Images(int count) {
        this.count = count;
    }

    /** How many bodies there are with the true one. */
    int count() {
        return count;
    }

    /** Sign of y in an image. */
    static double acrossIn(int image) {
        return (image & 1) == 0 ? 1 : -1;
    }

    /** Sign of z in an image. */
    static double upIn(int image) {
        return (image & 2) == 0 ? 1 : -1;
    }
}
