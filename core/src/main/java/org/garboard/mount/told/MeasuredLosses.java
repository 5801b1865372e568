package org.garboard.mount.told;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.garboard.acoustics.inhull.LossByIncidence;
import org.garboard.craft.SoundBeam;
import org.garboard.mount.Bed;
import org.garboard.skin.HullSkin;
import org.garboard.skin.InHullRule;
import org.garboard.skin.ThicknessHere;

/** Loss of a beam through a skin whose thickness a gauge read here and there: a table for each range of readings, made when it is met. */
final class MeasuredLosses {
    private final HullSkin skin;
    private final InHullRule rule;
    private final SoundBeam beam;
    private final Map<ThicknessHere.Told, LossByIncidence> tables = new ConcurrentHashMap<>();

    MeasuredLosses(HullSkin skin, InHullRule rule, SoundBeam beam) {
        this.skin = skin;
        this.rule = rule;
        this.beam = beam;
    }

    /** [dB]; NaN where the thickness is not known. */
    double at(Bed bed, double incidence) {
        return skin.thicknessAt(bed.x(), bed.y()) instanceof ThicknessHere.Told told
            ? tables.computeIfAbsent(told, each -> rule.losses(each.smallest(), each.largest(), beam)).at(incidence) : Double.NaN;
    }
}
