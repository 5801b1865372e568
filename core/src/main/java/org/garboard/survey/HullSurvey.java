package org.garboard.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.craft.LaidFeature;
import org.garboard.craft.Sides;
import org.garboard.hull.Hull;
import org.garboard.offsets.HullOffsets;
import org.garboard.offsets.Station;
import org.garboard.survey.SurveyPlace.Side;
import org.garboard.units.FixedDecimal;

/**
 * A surveyor's findings on a hull.
 *
 * @param findings in their order, without those at fault
 * @param faults why others could not be laid
 */
public record HullSurvey(List<LaidFinding> findings, List<PlaceFault> faults) {
    public HullSurvey {
        findings = List.copyOf(findings);
        faults = List.copyOf(faults);
    }

    /**
     * Lays findings on a hull.
     *
     * @param table from which it is drawn, for its stations
     * @param features that a finding may name
     */
    public static HullSurvey lay(List<SurveyFinding> findings, Hull hull, HullOffsets table, List<LaidFeature> features) {
        Laying laying = new Laying(hull, table, new Regions(hull, features));
        for (int i = 0; i < findings.size(); i++) {
            laying.lay(i, findings.get(i));
        }
        return new HullSurvey(laying.laid, laying.faults);
    }

    private static final class Laying {
        private final Hull hull;
        private final HullOffsets table;
        private final Regions regions;
        private final List<LaidFinding> laid = new ArrayList<>();
        private final List<PlaceFault> faults = new ArrayList<>();

        Laying(Hull hull, HullOffsets table, Regions regions) {
            this.hull = hull;
            this.table = table;
            this.regions = regions;
        }

        void lay(int index, SurveyFinding finding) {
            int before = faults.size();
            SurveyPlace place = finding.place();
            OptionalDouble x = place.along().map(along -> x(index, along)).orElse(OptionalDouble.empty());
            if (faults.size() > before) {
                return;
            }
            if (place.out() instanceof SurveyPlace.InRegion named) {
                region(index, finding, x, named);
            } else if (x.isEmpty()) {
                fault(index, PlaceFault.Part.ALONG, "how far along the boat is not told; write a station, a distance, or a region");
            } else {
                skin(index, finding, x.getAsDouble());
            }
        }

        private OptionalDouble x(int index, SurveyPlace.Along along) {
            if (along instanceof SurveyPlace.AftOfOrigin aft) {
                return onHull(index, aft.metres());
            }
            if (along instanceof SurveyPlace.AheadOfAfterEnd ahead) {
                return onHull(index, hull.foot() - ahead.metres());
            }
            String name = ((SurveyPlace.AtStation) along).name();
            Optional<Station> station = table.skinStations().stream().filter(each -> each.name().equals(name)).findFirst();
            if (station.isEmpty()) {
                fault(index, PlaceFault.Part.ALONG, "is no station of the " + table.word() + "; it has "
                    + String.join(", ", table.stations().stream().map(Station::name).toList()));
                return OptionalDouble.empty();
            }
            return OptionalDouble.of(station.get().x());
        }

        private OptionalDouble onHull(int index, double x) {
            if (x < hull.forwardEnd() || x > hull.afterEnd()) {
                fault(index, PlaceFault.Part.ALONG, "lies off the hull, which runs from x = " + metres(hull.forwardEnd()) + " to "
                    + metres(hull.afterEnd()) + " aft of " + table.origin());
                return OptionalDouble.empty();
            }
            return OptionalDouble.of(x);
        }

        private void skin(int index, SurveyFinding finding, double x) {
            SectionWalk walk = new SectionWalk(hull, x);
            if (walk.isEmpty()) {
                fault(index, PlaceFault.Part.ALONG, "has no skin from keel line to sheer; tell a region");
                return;
            }
            // girth 0 is the rabbet of one side where a keel hangs below it
            boolean onCentreline = out(finding.place().out()) == 0 && hull.skinLine() == 0;
            Optional<Side> side = finding.place().side();
            if (side.isEmpty() && !onCentreline) {
                fault(index, PlaceFault.Part.SIDE, "is not told of a place off the centreline; write port, starboard or both");
                return;
            }
            Optional<Spot> spot = spot(walk, finding.place().out(), x);
            if (spot.isEmpty()) {
                fault(index, PlaceFault.Part.OUT, "lies off the skin: at x = " + metres(x) + " it is " + metres(walk.whole())
                    + " from " + (hull.skinLine() == 0 ? "keel line" : "rabbet") + " to sheer along the skin");
                return;
            }
            laid.add(new LaidFinding(finding, OptionalDouble.of(x), onCentreline ? List.of(spot.get()) : sides(spot.get(), side.get())));
        }

        private static double out(SurveyPlace.Out out) {
            if (out instanceof SurveyPlace.Girth girth) {
                return girth.metres();
            }
            return out instanceof SurveyPlace.HalfBreadth half ? half.metres() : Double.NaN;
        }

        private Optional<Spot> spot(SectionWalk walk, SurveyPlace.Out out, double x) {
            if (out instanceof SurveyPlace.Girth girth) {
                return walk.at(girth.metres());
            }
            if (out instanceof SurveyPlace.HalfBreadth half) {
                double girth = hull.girth(x, half.metres());
                return girth == girth ? walk.at(girth) : Optional.empty();
            }
            return walk.at(walk.bottom() / 2);
        }

        private void region(int index, SurveyFinding finding, OptionalDouble x, SurveyPlace.InRegion named) {
            Optional<Regions.Region> found = regions.named(named.name());
            if (found.isEmpty()) {
                fault(index, PlaceFault.Part.OUT, "is no region of this boat; it has " + regions.words());
                return;
            }
            Regions.Region region = found.get();
            Optional<Side> side = finding.place().side();
            if (region.sides().isEmpty() ? side.isPresent() : !agree(region.sides().get(), side)) {
                fault(index, PlaceFault.Part.SIDE, region.sides().isEmpty() ? "is told of a region without sides; leave it out"
                    : "is not the side of that region; write " + words(region.sides().get()));
                return;
            }
            Optional<Spot> spot = region.spot(x);
            boolean general = region instanceof Regions.General;
            if (spot.isEmpty() && (!general || x.isPresent())) {
                fault(index, PlaceFault.Part.ALONG, general || region instanceof Regions.OnBottom ? "is told with a region that is meant as a whole; leave it out"
                    : "lies off that region");
                return;
            }
            laid.add(new LaidFinding(finding, x, spot.map(one -> region.sides().isEmpty() ? List.of(one) : sides(one, side.orElseThrow()))
                .orElse(List.of())));
        }

        private static List<Spot> sides(Spot spot, Side side) {
            return side == Side.BOTH ? List.of(on(spot, Side.STARBOARD), on(spot, Side.PORT)) : List.of(on(spot, side));
        }

        /** Port or starboard of what is on one side, any of what is on both. */
        private static boolean agree(Sides sides, Optional<Side> told) {
            return told.isPresent() && (sides == Sides.BOTH || told.get().name().equals(sides.name()));
        }

        private static String words(Sides sides) {
            return sides == Sides.BOTH ? "port, starboard or both" : sides.words();
        }

        private static Spot on(Spot starboard, Side side) {
            Vector3D at = starboard.point();
            return side == Side.PORT ? new Spot(starboard.face(), Vector3D.of(at.getX(), -at.getY(), at.getZ()), starboard.girth()) : starboard;
        }

        private void fault(int index, PlaceFault.Part part, String reason) {
            faults.add(new PlaceFault(index, part, reason));
        }

        private static String metres(double metres) {
            return FixedDecimal.format(metres, 3) + " m";
        }
    }
}
