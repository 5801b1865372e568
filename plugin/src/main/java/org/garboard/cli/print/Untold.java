package org.garboard.cli.print;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import org.garboard.cli.start.JobText;
import org.garboard.job.Job;
import org.garboard.job.SitingRecord;
import org.garboard.mount.Check;
import org.garboard.siting.MountSiting;
import org.garboard.siting.Site;

/** What a sound job leaves open: which of its parts are not told, and what therefore is not known where the transducer would go. */
public final class Untold {

    private Untold() {
    }

    /** A line for each part that the job could tell and does not, with the line of the element that would hold it. */
    public static List<String> parts(Job job, JobText text) {
        List<String> lines = new ArrayList<>();
        part(lines, text, job.features().isPresent(), "job", "features", "what is on the bottom");
        part(lines, text, job.particulars().craft().isPresent(), "job", "craft", "drive, weights and speeds, and so how she runs and where the water is clean");
        if (job.particulars().craft().isPresent()) {
            part(lines, text, job.particulars().craft().get().weights().isPresent(), "craft", "weights", "what she weighs and where, and so how she runs");
        }
        part(lines, text, job.particulars().skin().isPresent(), "job", "skin", "what the skin is and how thick");
        part(lines, text, job.particulars().rooms().isPresent(), "job", "rooms", "what is inside; a fuel tank or fuel line rules a place out");
        part(lines, text, job.particulars().supports().isPresent(), "job", "supports", "what she rests on or hangs from");
        return lines;
    }

    private static void part(List<String> lines, JobText text, boolean told, String holder, String element, String what) {
        if (!told) {
            OptionalInt line = text.lineOf(holder);
            lines.add((line.isPresent() ? "line " + line.getAsInt() + ", in <" + holder + ">: <" : "<") + element + "> is not told: " + what);
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
