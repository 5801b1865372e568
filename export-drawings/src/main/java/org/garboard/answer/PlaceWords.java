package org.garboard.answer;

import org.garboard.job.DrawingWish;
import org.garboard.siting.Site;
import org.garboard.units.FeetInches;
import org.garboard.units.FixedDecimal;

/** Places in words, lengths in the units of the job's drawing. */
public final class PlaceWords {
    private final DrawingWish.Units units;
    private final String origin;

    /** @param origin where x is measured from, "station 0" */
    public PlaceWords(DrawingWish.Units units, String origin) {
        this.units = units;
        this.origin = origin;
    }

    /** "5.105 m aft of station 0, 0.305 m to starboard of the centreline". */
    public String place(Site site) {
        return length(Math.abs(site.x())) + (site.x() < 0 ? " forward of " : " aft of ") + origin + ", " + athwart(site.y());
    }

    public String length(double metres) {
        String fixed = FixedDecimal.format(metres, 3) + " m";
        return switch (units) {
            case MILLIMETRES -> fixed;
            case FEET_INCHES_EIGHTHS -> FeetInches.toEighth(metres) + " (" + fixed + ")";
        };
    }

    /** Of a part or a window, to the millimetre. */
    public String shortLength(double metres) {
        String fixed = FixedDecimal.format(metres * 1000, 0) + " mm";
        return switch (units) {
            case MILLIMETRES -> fixed;
            case FEET_INCHES_EIGHTHS -> FeetInches.toEighth(metres) + " (" + fixed + ")";
        };
    }

    private String athwart(double y) {
        return y == 0 ? "on the centreline" : length(Math.abs(y)) + " to " + side(y) + " of the centreline";
    }

    public static String side(double y) {
        return y == 0 ? "centreline" : y > 0 ? "starboard" : "port";
    }
}
