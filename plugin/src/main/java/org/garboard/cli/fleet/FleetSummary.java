package org.garboard.cli.fleet;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import org.garboard.cli.print.Csv;
import org.garboard.answer.PlaceWords;
import org.garboard.mount.Check;
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

    /** One page without anything from elsewhere; each job links to its folder's drawings. */
    public String html() {
        StringBuilder page = new StringBuilder("""
            <!DOCTYPE html>
            <html lang="en">
            <head>
            <meta charset="utf-8">
            <meta name="generator" content="%s">
            <meta name="viewport" content="width=device-width, initial-scale=1">
            <title>Where the transducers go: %d jobs</title>
            <style>
            body { font-family: sans-serif; margin: 1.5em; max-width: 75em; }
            div { overflow-x: auto; }
            table { border-collapse: collapse; }
            th, td { border: 1px solid #777; padding: 0.3em 0.6em; text-align: left; vertical-align: top; }
            thead th { background: #eee; }
            .fault th, .fault td { font-weight: bold; }
            </style>
            </head>
            <body>
            <h1>Where the transducers go</h1>
            <p>%s</p>
            <p>A hole below the waterline in the wrong place sinks a boat: before cutting, the sheets of each boat, and what stands on them as NOT KNOWN.</p>
            <div role="region" aria-label="Jobs" tabindex="0">
            <table>
            <thead><tr><th scope="col">Job</th><th scope="col">Boat</th><th scope="col">Transducer</th><th scope="col">Outcome</th><th scope="col">Mount</th><th scope="col">Answer</th></tr></thead>
            <tbody>
            """.formatted(HTML_MARK, rows.stream().map(FleetRow::job).distinct().count(), counts()));
        for (FleetRow row : rows) {
            page.append(row.outcome().equals("fault") ? "<tr class=\"fault\">" : "<tr>")
                .append("<th scope=\"row\">").append(row.boat().isEmpty() ? text(row.job()) : link(row.job())).append("</th>");
            for (String cell : List.of(row.boat(), row.transducer(), row.outcome(), row.advised().map(site -> site.mount().words()).orElse(""), row.words())) {
                page.append("<td>").append(text(cell)).append("</td>");
            }
            page.append("</tr>\n");
        }
        return page.append("</tbody>\n</table>\n</div>\n</body>\n</html>\n").toString();
    }

    private String counts() {
        return count("site") + " with a site, " + count("site, not all drawn") + " with a site but not all drawn, "
            + count("no site") + " without a site, " + count("fault") + " at fault.";
    }

    /** How many rows ended so. */
    public long count(String outcome) {
        return rows.stream().filter(row -> row.outcome().equals(outcome)).count();
    }

    private static String link(String job) {
        StringBuilder address = new StringBuilder();
        for (byte letter : job.getBytes(StandardCharsets.UTF_8)) {
            boolean plain = letter >= '0' && letter <= '9' || letter >= 'a' && letter <= 'z' || letter >= 'A' && letter <= 'Z'
                || letter == '-' || letter == '_' || letter == '.';
            address.append(plain ? String.valueOf((char) letter) : String.format(Locale.ROOT, "%%%02X", letter & 0xFF));
        }
        return "<a href=\"" + address + "/set.pdf\">" + text(job) + "</a>";
    }

    private static String text(String plain) {
        StringBuilder text = new StringBuilder();
        plain.codePoints().filter(c -> c >= ' ' && c != 0x7F).forEach(c -> {
            switch (c) {
                case '&' -> text.append("&amp;");
                case '<' -> text.append("&lt;");
                case '>' -> text.append("&gt;");
                case '"' -> text.append("&quot;");
                default -> text.appendCodePoint(c);
            }
        });
        return text.toString();
    }
}
