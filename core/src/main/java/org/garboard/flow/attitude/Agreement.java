package org.garboard.flow.attitude;

/** Finds the length that gives itself back: each taken as the last gave it, or by the secant of the last two. */
final class Agreement {
    private static final int MOST_TURNS = 60;
    private static final double STILL = 1e-9;

    private double length;
    private double before = Double.NaN;
    private double missBefore = Double.NaN;
    private int turns;

    Agreement(double first) {
        this.length = first;
    }

    double length() {
        return length;
    }

    boolean isOver() {
        return turns >= MOST_TURNS;
    }

    /** Whether the length has given itself back; if not, there is a next one to try. */
    boolean with(double given) {
        double miss = given - length;
        if (Math.abs(miss) <= STILL * length) {
            return true;
        }
        double secant = length - miss * (length - before) / (miss - missBefore);
        before = length;
        missBefore = miss;
        // farther than the plain step by a factor, or backward, the secant is not to be trusted
        length = Math.abs(secant - length) < 3 * Math.abs(miss) && (secant - length) * miss > 0 ? secant : given;
        turns++;
        return false;
    }
}
