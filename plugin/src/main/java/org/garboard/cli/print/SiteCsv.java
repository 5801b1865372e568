package org.garboard.cli.print;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import org.garboard.answer.PlaceWords;
import org.garboard.job.Job;
import org.garboard.job.SitingRecord;
import org.garboard.mount.Check;
import org.garboard.siting.MountSiting;
import org.garboard.siting.Site;

/** Sites as CSV, a row for each check; a place that is no site has no rank. */
public final class SiteCsv {
    private static final int METRE_PLACES = 6;
    private static final int CHECK_PLACES = 3;
    private static final int KNOT_PLACES = 3;
    private static final int UTILISATION_PLACES = 4;

    private final Csv csv;
    private final boolean several;
    private int rank;

    /** @param transducers how many are told of; several have a last column each with its name */
    public SiteCsv(PrintWriter out, int transducers) {
        this.csv = new Csv(out);
        this.several = transducers > 1;
        row("transducer", "rank", "mount", "side", "x_m", "y_m", "girth_m", "speed_kn", "check", "demand", "limit", "unit",
            "utilisation", "verdict", "governing", "source");
    }

    /** Every mount of a transducer, the advised one first. */
    public void print(SitingRecord decided) {
        rank = 0;
        decided.advised().ifPresent(siting -> print(decided.job(), siting));
        decided.sitings().stream().filter(siting -> !decided.isAdvised(siting)).forEach(siting -> print(decided.job(), siting));
    }

    private void print(Job job, MountSiting siting) {
        siting.sites().forEach(site -> print(job, site));
        siting.nearest().ifPresent(site -> print(job, site));
    }

    public void print(Job job, Site site) {
        String place = site.feasible() ? Integer.toString(++rank) : "";
        Check governing = site.governing().orElse(null);
        for (Check check : site.checks()) {
            row(job.transducer().name(), place, site.mount().words(), PlaceWords.side(site.y()),
                Csv.number(site.x(), METRE_PLACES), Csv.number(site.y(), METRE_PLACES), Csv.number(site.girth(), METRE_PLACES),
                check.knots().isPresent() ? Csv.number(check.knots().getAsDouble(), KNOT_PLACES) : "", check.name(),
                Csv.number(check.demand(), CHECK_PLACES), Csv.number(check.limit(), CHECK_PLACES),
                check.unit(), Csv.number(check.utilisation(), UTILISATION_PLACES), check.verdict().words(),
                check == governing ? "yes" : "no", check.source());
        }
    }

    private void row(String transducer, String... fields) {
        List<String> row = new ArrayList<>(List.of(fields));
        if (several) {
            row.add(transducer);
        }
        csv.row(row.toArray(String[]::new));
    }
}
