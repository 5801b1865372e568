package org.garboard.siting;

import org.garboard.mount.Installation;
import org.garboard.mount.Mount;

/** The bed that a mount's seat calls for. */
final class Beds {

    private Beds() {
    }

    /** Few samples, for the search of the whole bottom. */
    static MeasuredBed coarse(Ground ground, Mount mount, Installation installation) {
        return switch (mount.seat()) {
            case BESIDE_KEEL -> SkinBed.coarse(ground, Lattice.coarse(mount.footprint(installation)));
            case ATHWART_KEEL -> KeelBed.coarse(ground, mount, installation);
            case BEHIND_TRANSOM -> new TransomBed(ground, mount.footprint(installation));
        };
    }

    /** Many samples, for the checks of one place. */
    static MeasuredBed fine(Ground ground, Mount mount, Installation installation) {
        return switch (mount.seat()) {
            case BESIDE_KEEL -> SkinBed.fine(ground, Lattice.fine(mount.footprint(installation)));
            case ATHWART_KEEL -> KeelBed.fine(ground, mount, installation);
            case BEHIND_TRANSOM -> new TransomBed(ground, mount.footprint(installation));
        };
    }
}
