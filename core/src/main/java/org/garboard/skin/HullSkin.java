package org.garboard.skin;

import java.util.List;
import java.util.Optional;
import org.garboard.finding.Bound;
import org.garboard.units.FixedDecimal;

/**
 * The skin of a bottom, as far as the yard tells.
 *
 * @param material what it is built of
 * @param layup how thick it was built; none where it is not told
 * @param readings of a gauge; where there are any, they go before the layup
 * @param planking its lines; none where they are not told, empty where there are none
 * @param deadrises as measured on the boat
 */
public record HullSkin(SkinMaterial material, Optional<Layup> layup, List<GaugeReading> readings,
                       Optional<List<PlankLine>> planking, List<MeasuredDeadrise> deadrises) {
    /** How far a reading speaks for the skin around it. */
    public static final Bound NEAR = new Bound(300, "mm",
        "our choice, because a laminate changes at overlaps, stringers and the keel, and these are seldom more than a foot away");
    /** A reading of less than this share of the layup means a core. */
    private static final double CORE_SHARE = 0.6;
    /** Where this much of the reach is rounding of the machine [m]. */
    private static final double ROUNDING = 1e-9;

    public HullSkin {
        readings = List.copyOf(readings);
        planking = planking.map(List::copyOf);
        deadrises = List.copyOf(deadrises);
        if (layup.isPresent() && (layup.get() instanceof Layup.Sandwich) != (material == SkinMaterial.CORED_GLASS)
                && material != SkinMaterial.CARBON) {
            throw new IllegalArgumentException("a skin of " + material.words() + " with the layup " + layup.get()
                + "; a core goes with cored laminate or carbon alone, and cored laminate has one");
        }
    }

    /** Whether what is told of port and starboard is alike, place by place. */
    public boolean isSymmetrical() {
        return readings.stream().allMatch(each -> readings.contains(new GaugeReading(each.x(), -each.y(), each.thickness())))
            && planking.orElse(List.of()).stream().allMatch(each -> planking.get().contains(each.mirrored()));
    }

    /**
     * Thickness at a place. Where a gauge was used, only readings near there speak for it. Our choice of the share
     * below which a core is suspected, 0.6: lay-up varies by a tenth or two, while the outer skin of a cored hull
     * is seldom half of the whole.
     */
    public ThicknessHere thicknessAt(double x, double y) {
        if (readings.isEmpty()) {
            return layup.<ThicknessHere>map(built -> new ThicknessHere.Told(built.thickness(), built.thickness(), "the layup"))
                .orElseGet(() -> new ThicknessHere.Untold(
                    "Neither layup nor gauge readings are told: drill a pilot hole or use a gauge."));
        }
        List<GaugeReading> near = readings.stream()
            .filter(reading -> reading.from(x, y) <= NEAR.value() / 1000 + ROUNDING).toList();
        if (near.isEmpty()) {
            return new ThicknessHere.Untold("No gauge reading near here, the nearest is "
                + FixedDecimal.format(readings.stream().mapToDouble(reading -> reading.from(x, y)).min().orElseThrow() * 1000, 0)
                + " mm away: take one within 300 mm.");
        }
        double largest = near.stream().mapToDouble(GaugeReading::thickness).max().orElseThrow();
        double smallest = near.stream().mapToDouble(GaugeReading::thickness).min().orElseThrow();
        if (layup.isPresent() && layup.get() instanceof Layup.Sandwich sandwich) {
            // a gauge sees no further than the core
            return new ThicknessHere.Told(Math.max(largest, sandwich.thickness()), Math.min(smallest, sandwich.thickness()),
                "layup and gauge, which reads the outer skin alone");
        }
        if (layup.isPresent() && smallest < CORE_SHARE * layup.get().thickness()) {
            return new ThicknessHere.CoreSuspected(smallest, layup.get().thickness());
        }
        if (material == SkinMaterial.CORED_GLASS) {
            return new ThicknessHere.Untold("The skin is cored and a gauge reads its outer skin alone: tell the layup.");
        }
        return new ThicknessHere.Told(largest, smallest,
            near.size() == 1 ? "a reading within 300 mm" : near.size() + " readings within 300 mm");
    }
}
