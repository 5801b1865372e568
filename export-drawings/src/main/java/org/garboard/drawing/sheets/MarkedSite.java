package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.garboard.job.SitingRecord;
import org.garboard.mount.Seat;
import org.garboard.siting.MountSiting;
import org.garboard.siting.Site;

/**
 * The place of one mount that the sheets mark with a balloon.
 *
 * @param number in the balloon; the advised site, or the one that the yard gave, is 1
 * @param standing what the place is worth
 * @param siting of its mount
 */
record MarkedSite(int number, Standing standing, Site site, MountSiting siting) {

    /** What a marked place is worth. */
    enum Standing {
        ADVISED("ADVISED"), GIVEN("GIVEN by the yard"), BEST("best of its mount"), NO_PLACE("NO PLACE: least exceeded"),
        /** Every check is met, and yet no pocket can be built there. */
        REFUSED("REFUSED, see NOTES");

        private final String words;

        Standing(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }
    }

    /** Each mount's best place, the advised first, the others in the order of the job. */
    static List<MarkedSite> of(SitingRecord record) {
        List<MarkedSite> marked = new ArrayList<>();
        record.advised().ifPresent(advised -> mark(advised, record.isGiven() ? Standing.GIVEN : Standing.ADVISED, marked));
        for (MountSiting siting : record.sitings()) {
            if (!record.advised().equals(Optional.of(siting))) {
                mark(siting, standing(siting, record), marked);
            }
        }
        return marked;
    }

    private static Standing standing(MountSiting siting, SitingRecord record) {
        if (siting.sites().isEmpty()) {
            return Standing.NO_PLACE;
        }
        boolean wantsPocket = siting.mount().seat() == Seat.ATHWART_KEEL;
        return wantsPocket && record.pocket().isEmpty() ? Standing.REFUSED : Standing.BEST;
    }

    private static void mark(MountSiting siting, Standing standing, List<MarkedSite> marked) {
        Optional<Site> site = siting.sites().stream().findFirst().or(siting::nearest);
        site.ifPresent(place -> marked.add(new MarkedSite(marked.size() + 1, standing, place, siting)));
    }

    boolean serves() {
        return standing != Standing.NO_PLACE && standing != Standing.REFUSED;
    }

    String mark() {
        return String.valueOf(number);
    }
}
