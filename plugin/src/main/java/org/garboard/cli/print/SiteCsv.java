package org.garboard.cli.print;

import java.io.PrintWriter;
import org.garboard.mount.Check;
import org.garboard.siting.MountSiting;
import org.garboard.siting.Site;

/** Sites as CSV, a row for each check; a place that is no site has no rank. */
public final class SiteCsv {
    private static final int METRE_PLACES = 6;
    private static final int CHECK_PLACES = 3;
    private static final int UTILISATION_PLACES = 4;

    private final Csv csv;
    private int rank;

    public SiteCsv(PrintWriter out) {
        this.csv = new Csv(out);
        csv.row("rank", "mount", "side", "x_m", "y_m", "girth_m", "speed_kn", "check", "demand", "limit", "unit",
            "utilisation", "verdict", "governing", "source");
    }

    public void print(MountSiting siting) {
        siting.sites().forEach(this::print);
        siting.nearest().ifPresent(this::print);
    }

    public void print(Site site) {
        String place = site.feasible() ? Integer.toString(++rank) : "";
        Check governing = site.governing().orElse(null);
        for (Check check : site.checks()) {
            csv.row(place, site.mount().words(), PlaceWords.side(site.y()),
                Csv.number(site.x(), METRE_PLACES), Csv.number(site.y(), METRE_PLACES), Csv.number(site.girth(), METRE_PLACES),
                "", check.name(), Csv.number(check.demand(), CHECK_PLACES), Csv.number(check.limit(), CHECK_PLACES),
                check.unit(), Csv.number(check.utilisation(), UTILISATION_PLACES), check.verdict().words(),
                check == governing ? "yes" : "no", check.source());
        }
    }
}
