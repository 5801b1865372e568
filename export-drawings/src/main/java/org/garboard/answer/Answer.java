package org.garboard.answer;

import java.util.ArrayList;
import java.util.List;
import org.garboard.cutout.Pocket;
import org.garboard.job.SitingRecord;
import org.garboard.mount.Check;
import org.garboard.mount.KeelPocket;
import org.garboard.siting.MountSiting;
import org.garboard.siting.Site;

/** The answer for one transducer of a job: what is advised, and a line for each of its other mounts. */
public final class Answer {
    /** Of a mount for which not even the nearest place could be measured. */
    public static final String NOWHERE = "nowhere on this bottom is there room for its whole footprint, with its ramps";

    /** Where nothing is advised. */
    public static final String NO = "The answer is no: no mount of the job has a place on this bottom.";

    private final SitingRecord decided;
    private final PlaceWords words;

    /** @param origin where x is measured from, "station 0" */
    public Answer(SitingRecord decided, String origin) {
        this.decided = decided;
        this.words = new PlaceWords(decided.job().drawing().units(), origin);
    }

    /** Of all transducers of a job; where there are several, each under its name. */
    public static List<String> lines(List<SitingRecord> all, String origin) {
        List<String> lines = new ArrayList<>();
        for (SitingRecord decided : all) {
            if (all.size() > 1) {
                lines.add(decided.job().transducer().name() + ":");
            }
            lines.addAll(new Answer(decided, origin).lines());
        }
        return lines;
    }

    private boolean isYes() {
        return decided.advised().isPresent();
    }

    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        decided.advised().ifPresentOrElse(siting -> yes(siting, lines), () ->
            lines.add(NO));
        lines.addAll(others());
        return lines;
    }

    /** What else is to be said beside the advised place: of a pocket there, and a line for each of the other mounts. */
    public List<String> besides() {
        List<String> lines = new ArrayList<>();
        decided.advised().ifPresent(siting -> pocket(siting, lines));
        lines.addAll(others());
        return lines;
    }

    private List<String> others() {
        List<String> lines = new ArrayList<>();
        decided.sitings().stream().filter(siting -> !decided.isAdvised(siting)).forEach(siting -> lines.add(other(siting)));
        return lines;
    }

    private void yes(MountSiting siting, List<String> lines) {
        Site site = siting.sites().get(0);
        lines.add((decided.isGiven() ? "Given by the yard, not advised: " : "Advised: ") + siting.mount().words() + ", " + words.place(site) + ".");
        pocket(siting, lines);
        if (decided.isGiven()) {
            lines.add(notMet(decided));
        }
        lines.add(site.governing().map(check -> "Governing: " + CheckWords.figures(check) + ". ").orElse("")
            + "Look before cutting: " + String.join(", ", site.notKnown().stream().map(Check::name).toList()) + ".");
    }

    /** Which checks are not met at a place that the yard gave. */
    public static String notMet(SitingRecord given) {
        List<String> names = given.notMet().stream().map(CheckWords::figures).toList();
        return names.isEmpty() ? "Every check that can be made is met there." : "NOT MET there: " + String.join("; ", names) + ".";
    }

    private void pocket(MountSiting advised, List<String> lines) {
        if (advised.mount() instanceof KeelPocket) {
            decided.pocket().ifPresent(pocket -> lines.add(cut(pocket)));
        }
    }

    private String cut(Pocket pocket) {
        return "Pocket: floor " + words.shortLength(pocket.length()) + " by " + words.shortLength(pocket.width())
            + ", " + words.shortLength(pocket.depth()) + " deep "
            + (pocket.site().getY() == 0 ? "at the keel." : "at its middle, beside the keel.");
    }

    private String other(MountSiting siting) {
        boolean cannotBeBuilt = siting.mount() instanceof KeelPocket && decided.pocket().isEmpty() || !decided.refusal().isEmpty() && !isYes();
        if (!siting.sites().isEmpty() && !cannotBeBuilt) {
            Site site = siting.sites().get(0);
            return "Another way: " + siting.mount().words() + ", " + words.place(site)
                + site.governing().map(check -> "; governing: " + CheckWords.figures(check)).orElse("") + ".";
        }
        return "No " + siting.mount().words() + ": " + reason(siting) + ".";
    }

    private String reason(MountSiting siting) {
        if (!siting.sites().isEmpty()) {
            return decided.refusal();
        }
        return siting.nearest().map(site -> "the nearest is " + words.place(site) + what(site)).orElse(NOWHERE);
    }

    /** Stands in the way there. */
    private static String what(Site nearest) {
        if (nearest.feasible()) {
            return ", where this is NOT KNOWN: " + String.join(", ", nearest.notKnown().stream().map(Check::name).toList());
        }
        return nearest.governing().map(check -> ", where " + CheckWords.figures(check) + " is not met").orElse("");
    }
}
