package org.garboard.hull;

/** Stations counted 0, 1, 2, …: the length in which fairness along the hull is measured. */
final class StationIndex {

    private StationIndex() {
    }

    static double[] upTo(int stations) {
        double[] index = new double[stations];
        for (int i = 0; i < stations; i++) {
            index[i] = i;
        }
        return index;
    }
}
