package org.garboard.skin;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.garboard.craft.FeaturePlace;
import org.garboard.craft.Sides;
import org.garboard.hull.Hull;
import org.garboard.units.Angle;

/**
 * The skin as a yard tells it, places as the tape gave them; laid on a hull it answers questions.
 *
 * @param material what it is built of
 * @param layup how thick it was built
 * @param readings of a gauge
 * @param planking its lines; none where they are not told
 * @param deadrises as measured
 */
public record SurveyedSkin(SkinMaterial material, Optional<Layup> layup, List<Reading> readings,
                           Optional<List<Line>> planking, List<Deadrise> deadrises) {
    public SurveyedSkin {
        readings = List.copyOf(readings);
        planking = planking.map(List::copyOf);
        deadrises = List.copyOf(deadrises);
    }

    /**
     * A gauge reading.
     *
     * @param sides both where the two sides read the same
     * @param place where
     * @param thickness [m]
     */
    public record Reading(Sides sides, FeaturePlace place, double thickness) {
    }

    /**
     * A line of the planking.
     *
     * @param kind seam, butt or fastenings
     * @param sides both where the two sides are alike
     * @param places from end to end, two at least
     */
    public record Line(PlankLine.Kind kind, Sides sides, List<FeaturePlace> places) {
        public Line {
            places = List.copyOf(places);
        }
    }

    /**
     * Deadrise as measured at one place on either side.
     *
     * @param place where
     * @param starboard none where not measured
     * @param port none where not measured
     */
    public record Deadrise(FeaturePlace place, Optional<Angle> starboard, Optional<Angle> port) {
    }

    /** Laid on a hull; every place must lie on its skin. */
    public HullSkin on(Hull hull) {
        List<GaugeReading> laid = new ArrayList<>();
        for (Reading reading : readings) {
            double x = reading.place().x(hull);
            double y = reading.place().y(hull);
            if (reading.sides().meets(Sides.STARBOARD)) {
                laid.add(new GaugeReading(x, y, reading.thickness()));
            }
            if (reading.sides().meets(Sides.PORT)) {
                laid.add(new GaugeReading(x, -y, reading.thickness()));
            }
        }
        return new HullSkin(material, layup, laid, planking.map(lines -> lines(hull, lines)),
            deadrises.stream().map(each -> new MeasuredDeadrise(each.place().x(hull), each.place().y(hull), each.starboard(), each.port()))
                .toList());
    }

    private static List<PlankLine> lines(Hull hull, List<Line> lines) {
        List<PlankLine> laid = new ArrayList<>();
        for (Line line : lines) {
            PlankLine starboard = new PlankLine(line.kind(), line.places().stream().map(place -> place.x(hull)).toList(),
                line.places().stream().map(place -> place.y(hull)).toList());
            if (line.sides().meets(Sides.STARBOARD)) {
                laid.add(starboard);
            }
            if (line.sides().meets(Sides.PORT)) {
                laid.add(starboard.mirrored());
            }
        }
        return laid;
    }

    /** Places that are off the skin, each told by what it is of. */
    public List<String> offSkin(Hull hull) {
        List<String> off = new ArrayList<>();
        for (int i = 0; i < readings.size(); i++) {
            tell(off, hull, readings.get(i).place(), "gauge reading " + (i + 1));
        }
        List<Line> lines = planking.orElse(List.of());
        for (int i = 0; i < lines.size(); i++) {
            for (FeaturePlace place : lines.get(i).places()) {
                tell(off, hull, place, lines.get(i).kind().words() + ", line " + (i + 1) + " of the planking,");
            }
        }
        for (int i = 0; i < deadrises.size(); i++) {
            tell(off, hull, deadrises.get(i).place(), "measured deadrise " + (i + 1));
        }
        return off;
    }

    private static void tell(List<String> off, Hull hull, FeaturePlace place, String what) {
        if (Double.isNaN(place.y(hull))) {
            off.add(what + " is off the skin");
        }
    }
}
