package org.garboard.cli.print;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.garboard.job.Job;
import org.garboard.job.SitingRecord;
import org.garboard.mount.Check;
import org.garboard.siting.MountSiting;
import org.garboard.siting.Site;

/** What a sound job leaves open: which of its parts are not told, and what therefore is not known where the transducer would go. */
public final class Untold {

    private Untold() {
    }

    /** A line for each part that the job could tell and does not. */
    public static List<String> parts(Job job) {
        List<String> lines = new ArrayList<>();
        part(lines, job.features().isPresent(), "features", "what is on the bottom");
        part(lines, job.particulars().craft().isPresent(), "craft", "drive, weights and speeds, and so how she runs and where the water is clean");
        if (job.particulars().craft().isPresent()) {
            part(lines, job.particulars().craft().get().weights().isPresent(), "weights", "what she weighs and where, and so how she runs");
        }
        part(lines, job.particulars().skin().isPresent(), "skin", "what the skin is and how thick");
        part(lines, job.particulars().rooms().isPresent(), "rooms", "what is inside; a fuel tank or fuel line rules a place out");
        part(lines, job.particulars().supports().isPresent(), "supports", "what she rests on or hangs from");
        return lines;
    }

    private static void part(List<String> lines, boolean told, String element, String what) {
        if (!told) {
            lines.add("<" + element + "> is not told: " + what);
        }
    }

    /** Every check that could not be made at the advised place, or where there is none at the nearest of each mount; each once. */
    public static List<String> checks(List<SitingRecord> all) {
        Set<String> lines = new LinkedHashSet<>();
        for (SitingRecord decided : all) {
            for (MountSiting siting : decided.advised().map(List::of).orElse(decided.sitings())) {
                Stream.concat(siting.sites().stream(), siting.nearest().stream()).findFirst().map(Site::notKnown).orElse(List.of()).stream()
                    .map(Untold::words).forEach(lines::add);
            }
        }
        return List.copyOf(lines);
    }

    private static String words(Check check) {
        return check.name() + ": " + check.sentence();
    }
}
