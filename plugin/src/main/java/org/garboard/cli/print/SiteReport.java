package org.garboard.cli.print;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.garboard.answer.Answer;
import org.garboard.answer.CheckWords;
import org.garboard.answer.PlaceWords;
import org.garboard.craft.Sides;
import org.garboard.job.Job;
import org.garboard.job.SitingRecord;
import org.garboard.mount.Check;
import org.garboard.mount.Mount;
import org.garboard.mount.Verdict;
import org.garboard.siting.MountSiting;
import org.garboard.siting.Site;
import org.garboard.siting.Window;
import org.garboard.units.FixedDecimal;

/** Sites with every check, for people. What is common to the sites of a mount is told once. */
public final class SiteReport {
    private final PrintWriter out;
    private final PlaceWords words;
    private final Sources sources;

    /** @param origin where x is measured from, "station 0" */
    public SiteReport(PrintWriter out, Job job, String origin) {
        this.out = out;
        this.sources = new Sources(job);
        this.words = new PlaceWords(job.drawing().units(), origin);
        out.println(job.boat() + (job.hullNumber().isEmpty() ? "" : ", hull number " + job.hullNumber())
            + ": " + job.transducer().name());
    }

    /** What was found for every mount, the advised one first: each with its sites, or with the place that comes nearest. */
    public void print(SitingRecord decided) {
        decided.advised().ifPresent(siting -> print(siting, ", ADVISED"));
        decided.sitings().stream().filter(siting -> !decided.isAdvised(siting)).forEach(siting -> print(siting, ""));
    }

    private void print(MountSiting siting, String standing) {
        heading(siting.mount(), standing);
        for (int i = 0; i < siting.sites().size(); i++) {
            Site site = siting.sites().get(i);
            print(site, "Site " + (i + 1), siting.regionOf(site)
                .map(region -> "region of " + FixedDecimal.format(region.area(), 2) + " m2" + (region.sides() == Sides.BOTH && site.y() != 0 ? " a side" : "")).orElse("a narrow region"));
        }
        siting.nearest().ifPresent(site -> print(site, "No site. Nearest", site.feasible() ? "not all is known" : "not met"));
        List<Site> places = Stream.concat(siting.sites().stream(), siting.nearest().stream()).toList();
        if (places.isEmpty()) {
            out.println("  No site: " + Answer.NOWHERE + ".");
        }
        printNotKnown(places);
    }

    /** One place that was asked about. */
    public void print(Site site) {
        heading(site.mount(), "");
        print(site, "Place", site.feasible() ? "every check that could be made is met" : "not met");
        printNotKnown(List.of(site));
    }

    /** Where the limits come from, after all places. */
    public void printSources() {
        sources.print(out);
    }

    private void heading(Mount mount, String standing) {
        out.println();
        out.println(mount.words().toUpperCase(Locale.ROOT) + standing);
        out.println("  Gains: " + mount.gains());
        out.println("  Costs: " + mount.costs());
    }

    private void print(Site site, String title, String note) {
        out.println("  " + title + ": " + words.place(site) + " (" + note + ")");
        if (!Double.isNaN(site.z())) {
            out.println("    girth from the keel line " + words.length(site.girth()) + ", deadrise "
                + degrees(site.deadrise()) + ", slope " + degrees(site.slope()) + " fore and aft");
        }
        site.window().ifPresent(this::printWindow);
        printChecks(site);
        printNotMet(site);
    }

    private void printWindow(Window window) {
        out.println("    may be moved: forward " + words.shortLength(window.forward()) + ", aft "
            + words.shortLength(window.aft()) + ", inboard " + words.shortLength(window.inboard())
            + ", outboard " + words.shortLength(window.outboard()));
    }

    private void printChecks(Site site) {
        Optional<Check> governing = site.governing();
        TextTable table = new TextTable("<check", "found", "<wanted", "utilisation", "<verdict");
        for (Check check : site.checks()) {
            if (check.verdict() != Verdict.NOT_KNOWN) {
                boolean governs = governing.isPresent() && governing.get() == check;
                table.row(check.name(), CheckWords.found(check), CheckWords.limit(check), CheckWords.utilisation(check),
                    check.verdict().words() + (governs ? ", governs" : ""));
                sources.add(check);
            }
        }
        table.print(out, "    ");
    }

    private void printNotMet(Site site) {
        for (Check check : site.checks()) {
            if (check.verdict() == Verdict.NOT_MET) {
                out.println("    NOT MET: " + check.name() + ": " + check.sentence());
            }
        }
    }

    /** Told once where it holds for every place, else with the numbers of the sites. */
    private void printNotKnown(List<Site> places) {
        Map<String, List<Integer>> unknown = new LinkedHashMap<>();
        for (int i = 0; i < places.size(); i++) {
            for (Check check : places.get(i).notKnown()) {
                unknown.computeIfAbsent(check.name() + ": " + check.sentence(), name -> new ArrayList<>()).add(i + 1);
            }
        }
        if (!unknown.isEmpty()) {
            boolean mayBeCut = places.stream().anyMatch(Site::feasible);
            out.println(mayBeCut ? "  LOOK BEFORE CUTTING, this is NOT KNOWN:" : "  This is NOT KNOWN:");
        }
        unknown.forEach((check, sites) -> out.println("    " + (sites.size() == places.size() ? "" : "(site "
            + String.join(", ", sites.stream().map(String::valueOf).toList()) + ") ") + check));
    }

    private static String degrees(double radians) {
        return Double.isNaN(radians) ? "-" : FixedDecimal.format(Math.toDegrees(radians), 1) + " deg";
    }
}
