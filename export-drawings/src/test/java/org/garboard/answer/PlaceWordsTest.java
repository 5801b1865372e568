package org.garboard.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.garboard.job.DrawingWish.Units;
import org.garboard.mount.FlushThroughHull;
import org.garboard.siting.Site;
import org.junit.jupiter.api.Test;

class PlaceWordsTest {

    private static String words(double x, double y, String origin) {
        Site site = new Site(new FlushThroughHull(), x, y, 0, 0, 0, 0, List.of(), Optional.empty());
        return new PlaceWords(Units.MILLIMETRES, origin).place(site);
    }

    /** A station is never named without the distance from it, nor a distance without its station. */
    @Test
    void exact_placesAreToldFromTheTablesOrigin() {
        assertEquals("5.105 m aft of station 10, 0.300 m to starboard of the centreline", words(5.105, 0.3, "station 10"));
        assertEquals("0.200 m forward of station 0, on the centreline", words(-0.2, 0, "station 0"));
    }
}
