package org.garboard.cutout.made;

import java.util.List;
import java.util.Optional;
import org.garboard.cutout.fairing.FairingBlock;
import org.garboard.cutout.flush.FlushCutout;
import org.garboard.cutout.inhull.HullBath;
import org.garboard.cutout.part.NamedSolid;
import org.garboard.cutout.template.Template;
import org.garboard.cutout.transom.TransomBracket;

/** The parts of one mount at its place; a keel pocket is none of them. */
public sealed interface PartsMade {

    /** Closed bodies, in the order of the files. */
    default List<NamedSolid> solids() {
        return List.of();
    }

    /** Flat outlines; what is laid on the skin to mark it by stands first. */
    default List<Template> templates() {
        return List.of();
    }

    /** Where they are of a flush through-hull. */
    default Optional<FlushCutout> flush() {
        return Optional.empty();
    }

    /** Where they are of a through-hull with its fairing block. */
    default Optional<FairingBlock> fairing() {
        return Optional.empty();
    }

    /** Where they are of an in-hull transducer. */
    default Optional<HullBath> bath() {
        return Optional.empty();
    }

    /** Where they are of a transom mount. */
    default Optional<TransomBracket> bracket() {
        return Optional.empty();
    }

    /** Nothing is made, or it cannot be. */
    record None() implements PartsMade {
    }

    /** Of a flush through-hull. */
    record OfFlush(FlushCutout cutout) implements PartsMade {
        @Override
        public List<NamedSolid> solids() {
            return cutout.solids();
        }

        @Override
        public List<Template> templates() {
            return cutout.templates();
        }

        @Override
        public Optional<FlushCutout> flush() {
            return Optional.of(cutout);
        }
    }

    /** Of a through-hull with its fairing block. */
    record OfFairing(FairingBlock block) implements PartsMade {
        @Override
        public List<NamedSolid> solids() {
            return block.solids();
        }

        @Override
        public List<Template> templates() {
            return block.templates();
        }

        @Override
        public Optional<FairingBlock> fairing() {
            return Optional.of(block);
        }
    }

    /** Of an in-hull transducer. */
    record OfBath(HullBath made) implements PartsMade {
        @Override
        public List<NamedSolid> solids() {
            return made.solids();
        }

        @Override
        public List<Template> templates() {
            return made.templates();
        }

        @Override
        public Optional<HullBath> bath() {
            return Optional.of(made);
        }
    }

    /** Of a transom mount. */
    record OfBracket(TransomBracket made) implements PartsMade {
        @Override
        public List<NamedSolid> solids() {
            return made.solids();
        }

        @Override
        public List<Template> templates() {
            return made.templates();
        }

        @Override
        public Optional<TransomBracket> bracket() {
            return Optional.of(made);
        }
    }
}
