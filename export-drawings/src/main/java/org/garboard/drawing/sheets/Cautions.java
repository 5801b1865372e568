package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.garboard.drawing.layout.Notes;
import org.garboard.offsets.HullOffsets;

/** What every sheet warns of. Trade knowledge, no source, but for the standards it names. */
public final class Cautions {

    /** The trade's words; the flow is that of a sharp hole, 0.6 A sqrt(2 g h) (textbook): 51 mm at 0.5 m, 230 L/min. */
    private static final List<String> FIRST = List.of(
            "HOLE BELOW THE WATERLINE. A wrong hole can sink the boat: 51 mm open, 0.5 m under water, lets in 230 L a minute.",
            "Hauled out and chocked, never in slings. Battery tools. Keep a blank aboard that closes the hole.");
    private static final List<String> THEN = List.of(
            "Look inside before drilling, then a pilot hole. Cut no structural member, tank, fuel line, pipe or cable.",
            "Cored hull: take the core out round the hole and seal its edge.",
            "Dust and resin: wear eye, skin and lung protection.",
            "Wiring clear of the bilge, metal bonded as the boat is. Bilge pump tried; after launching watch the bilge, at once and again "
                    + "hours later.",
            "Antifouling on the face only as its maker says.",
            "Makers' instructions, local codes, class or a licensed surveyor go before this sheet. Where to look: ISO 9093 and the "
                    + "ABYC standards.");

    private Cautions() {
    }

    public static Notes of(HullOffsets from) {
        return with(from, List.of());
    }

    /** For every page of a sheet that runs on. */
    public static Notes brief() {
        return new Notes("CAUTIONS", Stream.concat(FIRST.stream(), Stream.of("All the others stand on one page of this sheet."))
                .map(words -> new Notes.Paragraph("-", words)).toList());
    }

    static Notes with(HullOffsets from, List<String> more) {
        List<String> all = new ArrayList<>(FIRST);
        all.add("Figures come from " + from.comesFrom() + ": check them on the boat first.");
        all.addAll(THEN);
        all.addAll(more);
        return Notes.numbered("CAUTIONS", all);
    }
}
