package org.garboard.cli;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.Optional;
import org.garboard.job.Job;
import org.garboard.mount.Check;
import org.garboard.mount.Verdict;
import org.garboard.siting.MountSiting;
import org.garboard.siting.Site;
import org.garboard.siting.Window;
import org.garboard.units.FixedDecimal;

/** Sites with every check, for people. */
final class SiteReport {
    private final PrintWriter out;
    private final PlaceWords words;

    SiteReport(PrintWriter out, Job job) {
        this.out = out;
        this.words = new PlaceWords(job.drawing().units());
    }

    void heading(Job job) {
        out.println(job.boat() + (job.hullNumber().isEmpty() ? "" : ", hull number " + job.hullNumber())
            + ": " + job.transducer().name());
    }

    /** What was found for one mount: every site, or the place that comes nearest. */
    void print(MountSiting siting) {
        out.println();
        out.println(siting.mount().words().toUpperCase(Locale.ROOT));
        for (int i = 0; i < siting.sites().size(); i++) {
            print(siting.sites().get(i), "Site " + (i + 1), "region of "
                + FixedDecimal.format(siting.regions().get(i).area(), 2) + " m2 a side");
        }
        siting.nearest().ifPresent(site -> print(site, "No site. Nearest", "not met"));
        if (siting.sites().isEmpty() && siting.nearest().isEmpty()) {
            out.println("  No site; no place could be measured.");
        }
    }

    /** One place that was asked about. */
    void print(Site site) {
        out.println();
        out.println(site.mount().words().toUpperCase(Locale.ROOT));
        print(site, "Place", site.feasible() ? "every check that could be made is met" : "not met");
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
        printNotKnown(site);
    }

    private void printWindow(Window window) {
        out.println("    may be moved: forward " + words.shortLength(window.forward()) + ", aft "
            + words.shortLength(window.aft()) + ", inboard " + words.shortLength(window.inboard())
            + ", outboard " + words.shortLength(window.outboard()));
    }

    private void printChecks(Site site) {
        Optional<Check> governing = site.governing();
        TextTable table = new TextTable("<check", "found", "<limit", "utilisation", "<verdict", "<source");
        for (Check check : site.checks()) {
            if (check.verdict() != Verdict.NOT_KNOWN) {
                boolean governs = governing.isPresent() && governing.get() == check;
                table.row(check.name(), CheckWords.demand(check), CheckWords.limit(check), CheckWords.utilisation(check),
                    check.verdict().words() + (governs ? ", governs" : ""), check.source());
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

    private void printNotKnown(Site site) {
        if (!site.notKnown().isEmpty()) {
            out.println("    LOOK BEFORE CUTTING, this is NOT KNOWN:");
            site.notKnown().forEach(check -> out.println("      " + check.name() + ": " + check.sentence()));
        }
    }

    private static String degrees(double radians) {
        return Double.isNaN(radians) ? "-" : FixedDecimal.format(Math.toDegrees(radians), 1) + " deg";
    }
}
