package org.garboard.cli.fleet;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import javax.xml.stream.XMLStreamException;
import org.garboard.cli.print.Csv;
import org.garboard.answer.PlaceWords;
import org.garboard.mount.Check;
import org.garboard.report.Html;
import org.garboard.report.Report;
import org.garboard.siting.Site;

/** The results of a fleet as one table: CSV to be counted, HTML to be read. The same results, the same bytes. */
public final class FleetSummary {
    /** The first words of the CSV, by which it is known again. */
    public static final String CSV_MARK = "job,boat,transducer,exit,outcome";
    /** Words near the beginning of the page, by which it is known again. */
    public static final String HTML_MARK = "garboard fleet summary";
    private static final int METRE_PLACES = 3;
    private static final int UTILISATION_PLACES = 4;

    private final List<FleetRow> rows;

    public FleetSummary(List<FleetRow> rows) {
        this.rows = List.copyOf(rows);
    }

    /** A row for each transducer of each job, in the order of the jobs. */
    public String csv() {
        StringWriter text = new StringWriter();
        PrintWriter out = new PrintWriter(text);
        Csv csv = new Csv(out);
        csv.row("job", "boat", "transducer", "exit", "outcome", "mount", "side", "x_m", "y_m", "governing_check", "utilisation",
            "checks_not_known", "answer");
        for (FleetRow row : rows) {
            Site site = row.advised().orElse(null);
            Check governing = site == null ? null : site.governing().orElse(null);
            csv.row(row.job(), row.boat(), row.transducer(), Integer.toString(row.code()), row.outcome(),
                site == null ? "" : site.mount().words(), site == null ? "" : PlaceWords.side(site.y()),
                site == null ? "" : Csv.number(site.x(), METRE_PLACES), site == null ? "" : Csv.number(site.y(), METRE_PLACES),
                governing == null ? "" : governing.name(), governing == null ? "" : Csv.number(governing.utilisation(), UTILISATION_PLACES),
                site == null ? "" : Integer.toString(site.notKnown().size()), row.words());
        }
        out.flush();
        return text.toString();
    }

    /** One page without anything from elsewhere; each job links to its report. */
    public byte[] html() {
        return Html.page("Where the transducers go: " + jobs(), HTML_MARK, page -> {
            page.start("header").words("h1", "Where the transducers go").end().start("main").words("p", counts());
            page.words("p", "A hole below the waterline in the wrong place sinks a boat: before cutting, the sheets of each boat, and what stands on them as NOT KNOWN.");
            page.startBroadTable("Jobs", "Job", "Boat", "Transducer", "Outcome", "Mount", "Answer");
            for (FleetRow row : rows) {
                row(page, row);
            }
            page.endTable().end();
        });
    }

    private static void row(Html page, FleetRow row) throws XMLStreamException {
        page.start("tr", row.outcome().equals("fault") ? new String[] {"class", "strong"} : new String[0]).start("th", "scope", "row");
        if (row.boat().isEmpty()) {
            page.say(row.job());
        } else {
            page.within("a", row.job(), "href", address(row.job()) + "/" + Report.NAME);
        }
        page.end();
        for (String cell : List.of(row.boat(), row.transducer(), row.outcome(), row.advised().map(site -> site.mount().words()).orElse(""), row.words())) {
            page.words("td", cell);
        }
        page.end();
    }

    private String jobs() {
        long jobs = rows.stream().map(FleetRow::job).distinct().count();
        return jobs + (jobs == 1 ? " job" : " jobs");
    }

    private String counts() {
        return count("site") + " with a site, " + count("site, not all drawn") + " with a site but not all drawn, "
            + count("no site") + " without a site, " + count("fault") + " at fault.";
    }

    /** How many rows ended so. */
    public long count(String outcome) {
        return rows.stream().filter(row -> row.outcome().equals(outcome)).count();
    }

    private static String address(String job) {
        StringBuilder address = new StringBuilder();
        for (byte letter : job.getBytes(StandardCharsets.UTF_8)) {
            boolean plain = letter >= '0' && letter <= '9' || letter >= 'a' && letter <= 'z' || letter >= 'A' && letter <= 'Z'
                || letter == '-' || letter == '_' || letter == '.';
            address.append(plain ? String.valueOf((char) letter) : String.format(Locale.ROOT, "%%%02X", letter & 0xFF));
        }
        return address.toString();
    }
}
