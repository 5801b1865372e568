package org.garboard.cutout.made;

import java.util.List;
import java.util.Optional;
import org.garboard.cutout.fairing.FairingBlock;
import org.garboard.cutout.flush.FlushCutout;
import org.garboard.cutout.inhull.HullBath;
import org.garboard.cutout.part.NamedSolid;
import org.garboard.cutout.template.Template;
import org.garboard.cutout.transom.TransomBracket;

/**
 * The parts of one mount at its place; a keel pocket is none of them. Of the mounts one at most is there.
 *
 * @param solids closed bodies, in the order of the files
 * @param templates flat outlines; what is laid on the skin to mark it by stands first
 * @param flush of a flush through-hull
 * @param fairing of a through-hull with its fairing block
 * @param bath of an in-hull transducer
 * @param bracket of a transom mount
 */
public record PartsMade(List<NamedSolid> solids, List<Template> templates, Optional<FlushCutout> flush, Optional<FairingBlock> fairing,
                        Optional<HullBath> bath, Optional<TransomBracket> bracket) {
    /** Nothing is made, or it cannot be. */
    public static final PartsMade NONE = new PartsMade(List.of(), List.of(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    public PartsMade {
        solids = List.copyOf(solids);
        templates = List.copyOf(templates);
    }

    public static PartsMade of(FlushCutout cutout) {
        return new PartsMade(cutout.solids(), cutout.templates(), Optional.of(cutout), Optional.empty(), Optional.empty(), Optional.empty());
    }

    public static PartsMade of(FairingBlock block) {
        return new PartsMade(block.solids(), block.templates(), Optional.empty(), Optional.of(block), Optional.empty(), Optional.empty());
    }

    public static PartsMade of(HullBath bath) {
        return new PartsMade(bath.solids(), bath.templates(), Optional.empty(), Optional.empty(), Optional.of(bath), Optional.empty());
    }

    public static PartsMade of(TransomBracket bracket) {
        return new PartsMade(bracket.solids(), bracket.templates(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(bracket));
    }
}
