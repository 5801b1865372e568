package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.garboard.job.SitingRecord;
import org.garboard.siting.MountSiting;
import org.garboard.siting.Site;

/**
 * The place of one mount that the sheets mark with a balloon.
 *
 * @param number in the balloon; the advised site is 1
 * @param standing what the place is worth
 * @param siting of its mount
 */
record MarkedSite(int number, Standing standing, Site site, MountSiting siting) {

    /** What a marked place is worth. */
    enum Standing {
        ADVISED("ADVISED"), BEST("best of its mount"), NO_PLACE("NO PLACE: least exceeded");

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
        record.advised().ifPresent(advised -> mark(advised, Standing.ADVISED, marked));
        for (MountSiting siting : record.sitings()) {
            if (!record.advised().equals(Optional.of(siting))) {
                mark(siting, siting.sites().isEmpty() ? Standing.NO_PLACE : Standing.BEST, marked);
            }
        }
        return marked;
    }

    private static void mark(MountSiting siting, Standing standing, List<MarkedSite> marked) {
        Optional<Site> site = siting.sites().stream().findFirst().or(siting::nearest);
        site.ifPresent(place -> marked.add(new MarkedSite(marked.size() + 1, standing, place, siting)));
    }

    boolean serves() {
        return standing != Standing.NO_PLACE;
    }

    String mark() {
        return String.valueOf(number);
    }
}
