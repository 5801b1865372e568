package org.garboard.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.garboard.cli.print.PlaceTold;
import org.garboard.cli.print.TrimCsv;
import org.garboard.craft.Craft;
import org.garboard.craft.RunningSpeed;
import org.garboard.flow.attitude.AtSpeed;
import org.garboard.flow.attitude.Attitude;
import org.garboard.flow.place.PlaceInFlow;
import org.garboard.flow.underway.WaterUnderWay;
import org.garboard.mount.BlockSize;
import org.garboard.siting.PlanPoint;

/** The middle of the band and its ends at one speed, a row each. */
record TrimRows(Craft craft, WaterUnderWay waters, Optional<Place> place) {

    /**
     * A place that is asked for.
     *
     * @param within streamlines that pass so near count [m]
     * @param block of the job
     */
    record Place(PlaceInFlow flow, PlanPoint point, double within, BlockSize block) {
    }

    List<TrimCsv.Row> of(AtSpeed each) {
        List<TrimCsv.Row> rows = new ArrayList<>();
        rows.add(row(each.speed(), "middle", mean(), each.middle()));
        each.ends().forEach(end -> rows.add(row(each.speed(), end.name(), end.mass(), end.attitude())));
        return rows;
    }

    private TrimCsv.Row row(RunningSpeed speed, String load, double mass, Attitude attitude) {
        return new TrimCsv.Row(speed.knots(), speed.name(), load, mass, attitude, waters.layerAtTransom(attitude),
            place.map(at -> PlaceTold.of(at.flow(), attitude, waters.at(attitude), at.point(), at.within(), at.block())));
    }

    private double mean() {
        return craft.weights().map(weights -> 0.5 * (weights.light() + weights.full())).orElse(Double.NaN);
    }
}
