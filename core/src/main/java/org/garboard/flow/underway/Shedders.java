package org.garboard.flow.underway;

import java.util.ArrayList;
import java.util.List;
import org.garboard.craft.BottomFeatures;
import org.garboard.craft.Feature;
import org.garboard.craft.LaidFeature;
import org.garboard.flow.shadow.Shedder;

/** What is on a bottom, as the water meets it. */
final class Shedders {

    private Shedders() {
    }

    /** Those of the table first, which tell less; then those of the job, by what they tell of themselves. */
    static List<Shedder> of(BottomFeatures laid, List<Feature> listed) {
        List<Shedder> all = new ArrayList<>();
        int ofTable = laid.laid().size() - listed.size();
        for (int i = 0; i < laid.laid().size(); i++) {
            LaidFeature feature = laid.laid().get(i);
            all.add(i < ofTable ? Shedder.of(feature) : Shedder.of(listed.get(i - ofTable), feature));
        }
        return all;
    }
}
