package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.garboard.drawing.layout.Cluster;
import org.garboard.drawing.layout.Legend;
import org.garboard.drawing.layout.Lettering;
import org.garboard.drawing.layout.NameColumn;
import org.garboard.drawing.water.PlanArea;
import org.garboard.drawing.water.PlanCurve;
import org.garboard.drawing.water.WaterBelow;
import org.garboard.flow.attitude.StagnationLine;
import org.garboard.flow.shadow.EveryWake;
import org.garboard.flow.shadow.Shedder;
import org.garboard.flow.shadow.Sheds;
import org.garboard.mount.water.BottomWater;
import org.garboard.mount.water.WaterAtSpeed;
import org.garboard.units.FixedDecimal;

/**
 * The water that the places were judged by, as the siting sheet shows it: where solid water begins at each speed, and all wakes.
 *
 * @param lines slowest first
 * @param wakes one for each feature, at whatever speed
 * @param notKnown sentences on speeds at which nothing is drawn
 */
record SitingWater(List<SpeedLine> lines, List<EveryWake> wakes, List<String> notKnown) {
    static final SitingWater NONE = new SitingWater(List.of(), List.of(), List.of());
    /** Letter heights that a sample is long: a dashed line shows its kind. */
    private static final double SAMPLE = 12;

    /** @param speed "28 kn" */
    record SpeedLine(String speed, StagnationLine line) {
    }

    static SitingWater of(BottomWater water) {
        List<SpeedLine> lines = new ArrayList<>();
        List<String> notKnown = new ArrayList<>();
        for (WaterAtSpeed at : water.speeds()) {
            at.solidFrom().ifPresent(line -> lines.add(new SpeedLine(at.knotsInWords(), line)));
            if (at.isUnknown()) {
                notKnown.add(at.words());
            }
        }
        List<String> sentences = new ArrayList<>();
        if (water.speeds().isEmpty()) {
            sentences.add("How she runs is not told, or NOT KNOWN: neither stagnation lines nor wakes are drawn.");
        }
        if (!notKnown.isEmpty()) {
            sentences.add("How the water runs along the bottom is NOT KNOWN at " + String.join("; ", notKnown) + ": neither stagnation line nor wakes"
                + " are drawn for it.");
        }
        if (!water.untraced().isEmpty()) {
            sentences.add("Wakes that are NOT KNOWN are not drawn. " + water.untraced());
        }
        return new SitingWater(lines, water.wakesTogether(), sentences);
    }

    /** @param called how the sheet names what throws a wake */
    void draw(WaterBelow below, Function<Shedder, String> called) {
        for (EveryWake wake : wakes) {
            below.fill(PlanArea.Kind.EDGE, wake.ahead());
            below.wake(PlanArea.Kind.EDGE, wake.wake(), "wake of " + called.apply(wake.feature()));
        }
        lines.forEach(each -> below.curve(new PlanCurve(PlanCurve.Kind.STAGNATION_LINE, each.line().points())));
    }

    /** The speed of each line, and where it ends to starboard. */
    List<NameColumn.Name> speeds(HullOnPaper paper) {
        return lines.stream().map(each -> new NameColumn.Name(each.speed(), paper.below(each.line().aftermost(), each.line().outermost()))).toList();
    }

    Optional<Cluster> legend(Lettering lettering) {
        if (lines.isEmpty() && wakes.isEmpty()) {
            return Optional.empty();
        }
        Legend legend = new Legend("WATER UNDER WAY", lettering, SAMPLE);
        if (!lines.isEmpty()) {
            legend.line(PlanCurve.Kind.STAGNATION_LINE.layer(), "stagnation line at the speed named");
        }
        if (!wakes.isEmpty()) {
            legend.swatch(PlanArea.Kind.EDGE::over, PlanArea.Kind.EDGE.words());
        }
        return Optional.of(legend.cluster());
    }

    List<String> notes() {
        List<String> notes = new ArrayList<>();
        if (!lines.isEmpty()) {
            notes.add("Abaft of a stagnation line the bottom is in solid water at its speed, at every load and trim that is known.");
        }
        if (!wakes.isEmpty()) {
            notes.add("Wakes of what is listed are drawn for all speeds at once, " + FixedDecimal.format(Sheds.LIKELY.degrees(), 0)
                + "° to either side of the flow and more outboard under a planing bottom. What is not listed throws none here.");
        }
        notes.addAll(notKnown);
        return notes;
    }
}
