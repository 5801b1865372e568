package org.garboard.mount.told;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.garboard.craft.StemHole;
import org.garboard.finding.Finding;
import org.garboard.finding.NotKnown;
import org.garboard.finding.Ruling;
import org.garboard.mount.Bed;
import org.garboard.mount.Check;
import org.garboard.mount.Demand;
import org.garboard.mount.Installation;
import org.garboard.mount.Limit;
import org.garboard.mount.LimitName;
import org.garboard.mount.OpenQuestion;
import org.garboard.mount.Surroundings;
import org.garboard.skin.DeadriseRule;
import org.garboard.skin.FittingRule;
import org.garboard.skin.HullSkin;
import org.garboard.skin.PlankLine;
import org.garboard.skin.PlankingRule;
import org.garboard.skin.SkinMaterial;
import org.garboard.skin.ThicknessHere;
import org.garboard.units.Angle;
import org.garboard.units.FixedDecimal;

/** What a hole through the skin asks of it: housing, stem, planking; and whether the boat is the boat of the table. */
public final class SkinAsked {
    private static final String THREAD = "stem beyond the skin";
    private static final String CONNECTOR = "hole large enough for the connector";
    private static final String MAKER = "as the maker tells the plug";

    private SkinAsked() {
    }

    /**
     * Of a mount whose stem goes through the skin.
     *
     * @param through what the stem reaches through besides the skin at a place [m]
     */
    public static List<Demand> ofHole(Installation installation, Surroundings around, ToDoubleFunction<Bed> through) {
        if (around.skin().isEmpty()) {
            return List.of();
        }
        HullSkin skin = around.skin().get();
        List<Demand> demands = new ArrayList<>();
        if (installation.transducer().stemDiameter() > 0) {
            demands.add(thread(installation, skin, through));
            double hole = rule(installation, skin).holeDiameter();
            planking(demands, installation, skin, hole);
        }
        demands.addAll(ofBoat(installation, around));
        return demands;
    }

    /** Of every mount: deadrise as measured against the table. A difference makes a place not known, never refused. */
    public static List<Demand> ofBoat(Installation installation, Surroundings around) {
        if (around.skin().isEmpty()) {
            return List.of();
        }
        HullSkin skin = around.skin().get();
        Limit most = installation.limits().of(LimitName.MEASURED_DEADRISE);
        return List.of(Demand.atMost("measured deadrise", most,
            bed -> DeadriseRule.difference(skin, bed.x(), bed.y(), bed.deadrise(), most.value()),
            "Boat and table agree here.", "").leavingOpen()
            .telling(bed -> DeadriseRule.at(skin, bed.x(), bed.y(), Angle.ofRadians(bed.deadrise())).sentence()));
    }

    /** Whether the housing may go into this skin, the same everywhere; whether the plug on the cable passes the hole; and whether nothing is told of the skin. */
    public static List<Check> settled(Installation installation, Surroundings around) {
        List<Check> settled = new ArrayList<>();
        settled.add(around.skin().map(skin -> Check.of(rule(installation, skin).housingFits())).orElseGet(OpenQuestion.SKIN::check));
        double stem = installation.transducer().stemDiameter();
        if (stem > 0) {
            double hole = around.skin().map(skin -> rule(installation, skin).holeDiameter()).orElseGet(() -> StemHole.diameter(stem));
            settled.add(Check.of(installation.details().connector().map(plug -> passes(hole, plug)).orElseGet(() -> new NotKnown(CONNECTOR, MAKER,
                "The thickness of the plug on the cable is not told: measure it, the hole for the stem is " + millimetres(hole) + "."))));
        }
        return settled;
    }

    private static Finding passes(double hole, double plug) {
        String both = "The plug on the cable is " + millimetres(plug) + " thick, the hole for the stem " + millimetres(hole) + ": ";
        return plug <= hole ? Ruling.allowed(CONNECTOR, MAKER, both + "it passes.")
            : Ruling.refused(CONNECTOR, MAKER, both + "it does not pass. A plug that comes off the cable would serve, or a hole sleeved to the stem.");
    }

    private static String millimetres(double metres) {
        return FixedDecimal.format(1000 * metres, 1) + " mm";
    }

    private static FittingRule rule(Installation installation, HullSkin skin) {
        return new FittingRule(skin, installation.details().housing(), installation.transducer().stemDiameter());
    }

    private static Demand thread(Installation installation, HullSkin skin, ToDoubleFunction<Bed> through) {
        OptionalDouble stem = installation.details().stemLength().stream().mapToDouble(Double::doubleValue).findFirst();
        OptionalDouble everywhere = skin.readings().isEmpty() && skin.layup().isPresent()
            ? OptionalDouble.of(skin.layup().get().thickness()) : OptionalDouble.empty();
        ToDoubleFunction<Bed> thickest = everywhere.isPresent() ? bed -> everywhere.getAsDouble() : bed -> thickest(skin, bed);
        return Demand.atLeast(THREAD, installation.limits().of(LimitName.STEM_BEYOND_SKIN),
            bed -> stem.orElse(Double.NaN) - through.applyAsDouble(bed) - thickest.applyAsDouble(bed),
            "The stem reaches through with room for washer and nut.", "The stem is too short for skin, block, washer and nut.")
            .leavingOpen().telling(bed -> rule(installation, skin).thread(bed.x(), bed.y(), installation.details().stemLength(),
                through.applyAsDouble(bed)).sentence());
    }

    private static double thickest(HullSkin skin, Bed bed) {
        return skin.thicknessAt(bed.x(), bed.y()) instanceof ThicknessHere.Told told ? told.largest() : Double.NaN;
    }

    private static void planking(List<Demand> demands, Installation installation, HullSkin skin, double hole) {
        if (skin.material() != SkinMaterial.PLANKED) {
            return;
        }
        for (PlankLine.Kind kind : PlankLine.Kind.values()) {
            LimitName limit = switch (kind) {
                case SEAM -> LimitName.HOLE_TO_SEAM;
                case BUTT -> LimitName.HOLE_TO_BUTT;
                case FASTENINGS -> LimitName.HOLE_TO_FASTENINGS;
            };
            demands.add(Demand.atLeast("hole clear of " + PlankingRule.words(kind), installation.limits().of(limit),
                bed -> PlankingRule.gap(skin, kind, bed.x(), bed.y(), hole),
                "No " + kind.words() + " is near the hole.", "The hole would cut a " + kind.words() + ", or come too near one.").leavingOpen()
                .telling(bed -> skin.planking().isPresent() ? ""
                    : "The lines of the planking are not told: mark seams, butts and fastenings on the bottom before drilling.")
                .ofPlaceAlone());
        }
    }
}
