package org.garboard.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.garboard.appendage.Keel;
import org.garboard.craft.BottomFeatures;
import org.garboard.craft.Craft;
import org.garboard.craft.RunningSpeed;
import org.garboard.craft.TransducerDetails;
import org.garboard.cutout.fairing.FairingWish;
import org.garboard.cutout.part.ThroughHullWish;
import org.garboard.cutout.pocket.BoatTold;
import org.garboard.cutout.transom.BracketTold;
import org.garboard.handling.Supports;
import org.garboard.flow.attitude.CraftRunning;
import org.garboard.flow.water.Water;
import org.garboard.hull.Hull;
import org.garboard.inside.Inside;
import org.garboard.inside.LaidInside;
import org.garboard.mount.Limits;
import org.garboard.mount.Preference;
import org.garboard.mount.Surroundings;
import org.garboard.mount.LaidBottom;
import org.garboard.mount.water.RunningWater;
import org.garboard.skin.SurveyedSkin;
import org.garboard.units.FixedDecimal;

/**
 * What a job may tell of transducer and boat, and need not. What is missing is not known, never clear.
 *
 * @param transducer beams, housing, weight, stem
 * @param skin what the bottom is made of
 * @param rooms what is inside
 * @param supports what the boat rests on or hangs from
 * @param craft what drives her, what she weighs, at what speeds she runs
 * @param fairing what is asked of a way through the skin, and of a fairing block; its defaults where nothing is
 * @param bracket of a transom mount
 * @param preference which of several mounts that serve is advised
 * @param limits what every check is held to
 */
public record Particulars(TransducerDetails transducer, Optional<SurveyedSkin> skin, Optional<Inside> rooms,
                          Optional<Supports> supports, Optional<Craft> craft, FairingWish fairing,
                          BracketTold bracket, Preference preference, Limits limits) {
    public static final Particulars UNTOLD =
        new Particulars(TransducerDetails.UNTOLD, Optional.empty(), Optional.empty(), Optional.empty(),
            Optional.empty(), FairingWish.of(ThroughHullWish.of(Optional.empty())), BracketTold.NOTHING, Preference.LEAST_INVASIVE, Limits.OWN);

    /** The same with other wishes for a fairing block. */
    Particulars wishing(FairingWish block) {
        return new Particulars(transducer, skin, rooms, supports, craft, block, bracket, preference, limits);
    }

    /**
     * Laid on her hull.
     *
     * @param laid what is on her bottom
     * @param running how she runs
     */
    public Surroundings around(Hull hull, BottomFeatures laid, RunningWater running) {
        return new Surroundings(hull.foot(), skin.map(told -> told.on(hull)), rooms.map(told -> LaidInside.on(hull, told)), supports,
            craft.map(Craft::drive), running.over(laid.laid()), Optional.of(new LaidBottom(hull, laid)));
    }

    /**
     * How she runs; untold where too little is told of it.
     *
     * @param keel what hangs below her skin
     */
    public RunningWater running(Hull hull, Optional<Keel> keel) {
        if (craft.isEmpty() || !(CraftRunning.of(hull, keel, craft.get()) instanceof CraftRunning.Ready ready)) {
            return RunningWater.UNTOLD;
        }
        Water home = new Water(craft.get().water().celsius(), craft.get().water().salinity());
        return RunningWater.of(hull, home, ready.running().profile());
    }

    /** What a pocket cut into her must know of her. */
    public BoatTold forPocket(Hull hull) {
        return new BoatTold(craft.stream().flatMap(told -> told.speeds().stream()).mapToDouble(RunningSpeed::knots).max(),
            skin.map(told -> told.on(hull)), rooms.map(told -> LaidInside.on(hull, told)));
    }

    /** What of it does not lie on or in this hull, each a sentence without its full stop. */
    public List<String> off(Hull hull) {
        List<String> off = new ArrayList<>();
        skin.ifPresent(told -> off.addAll(told.offSkin(hull)));
        rooms.ifPresent(told -> LaidInside.on(hull, told).beyond(hull)
            .forEach(room -> off.add("room \"" + room.name() + "\", from " + FixedDecimal.format(room.ahead().from(), 3) + " to "
                + FixedDecimal.format(room.ahead().to(), 3) + " m ahead of \"" + room.datum() + "\", lies outside the hull")));
        return off;
    }
}
