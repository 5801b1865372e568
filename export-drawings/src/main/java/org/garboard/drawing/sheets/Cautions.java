package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.List;
import org.garboard.drawing.layout.Notes;
import org.garboard.offsets.HullOffsets;

/** What every sheet warns of. Trade knowledge, no source, but for the standards it names. */
final class Cautions {

    private static final List<String> FIRST = List.of(
            "This cut lies below the waterline. A wrong hole can sink the boat.",
            "Work with the boat hauled out and chocked, never in slings.");
    private static final List<String> THEN = List.of(
            "Look inside before drilling; drill a pilot hole first. Cut no structural member, tank, fuel line or cable.",
            "Cored hull: take the core out round the hole and seal its edge.",
            "Dust and resin: wear eye and lung protection.",
            "Keep wiring clear of the bilge and protected. After launching watch the bilge, at once and again hours later.",
            "Follow the makers' instructions, local codes and a licensed builder or surveyor. Where to look: ISO 9093 "
                    + "and the ABYC standards.");

    private Cautions() {
    }

    static Notes of(HullOffsets from) {
        return with(from, List.of());
    }

    static Notes with(HullOffsets from, List<String> more) {
        List<String> all = new ArrayList<>(FIRST);
        all.add("Figures come from " + from.comesFrom() + ": check them on the boat first.");
        all.addAll(THEN);
        all.addAll(more);
        return Notes.numbered("CAUTIONS", all);
    }
}
