package org.garboard.craft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.garboard.appendage.Keel;
import org.garboard.hull.Hull;
import org.garboard.offsets.HullOffsets;

/**
 * What is on the bottom, as far as job and table tell.
 *
 * @param laid those of the table, then those of the job, in their order
 * @param keel what hangs below the rabbet, as the table gives it; no transducer keeps clear of it by a listed place, but a beam may meet it
 * @param list whether the job lists what is there, if only to say that nothing is
 */
public record BottomFeatures(List<LaidFeature> laid, Optional<Keel> keel, FeatureList list) {
    public static final BottomFeatures NOT_LISTED = new BottomFeatures(List.of(), FeatureList.MISSING);

    /** Where nothing hangs below the rabbet. */
    public BottomFeatures(List<LaidFeature> laid, FeatureList list) {
        this(laid, Optional.empty(), list);
    }

    /** Where nothing is listed, nothing is known to be clear. */
    public enum FeatureList { GIVEN, MISSING }

    public BottomFeatures {
        laid = List.copyOf(laid);
    }

    /**
     * Laid on the hull.
     *
     * @param listed what the job lists, every place on the skin; none where it has no list
     */
    public static BottomFeatures on(Hull hull, Optional<List<Feature>> listed) {
        List<LaidFeature> laid = new ArrayList<>();
        listed.ifPresent(list -> list.forEach(feature -> laid.add(feature.on(hull))));
        return new BottomFeatures(laid, listed.isPresent() ? FeatureList.GIVEN : FeatureList.MISSING);
    }

    /** Which propellers or jets of a drive under the bottom the list does not hold, a sentence; empty where all are there. */
    public String lacks(Drive drive) {
        if (drive.kind().hangsBehind()) {
            return "";
        }
        boolean jet = drive.kind() == Drive.Kind.JET;
        int told = laid.stream().filter(feature -> jet ? feature.is(Fitting.Type.JET_INTAKE) : feature.isPropeller()).mapToInt(LaidFeature::count).sum();
        return told >= drive.number() ? "" : "The job lists " + told + " of the " + (jet ? "intakes" : "propellers") + " of her " + drive.number()
            + (drive.number() == 1 ? " engine (" : " engines (") + drive.kind().words() + "): what it does not list was left out.";
    }

    /** With the strakes that the offsets give, before all others, and the keel that they give. */
    public BottomFeatures with(HullOffsets offsets, Hull hull) {
        List<LaidFeature> all = new ArrayList<>(TableStrakes.of(offsets, hull));
        all.addAll(laid);
        return new BottomFeatures(all, Keel.of(offsets, hull), list);
    }

    /** With what is put on the bottom besides, after all others. */
    public BottomFeatures and(List<LaidFeature> more) {
        List<LaidFeature> all = new ArrayList<>(laid);
        all.addAll(more);
        return new BottomFeatures(all, keel, list);
    }
}
