package org.garboard.report;

import java.util.ArrayList;
import java.util.List;
import javax.xml.stream.XMLStreamException;
import org.garboard.answer.Answer;
import org.garboard.drawing.heat.HeatMap;
import org.garboard.drawing.layout.Notes;
import org.garboard.drawing.sheets.BottomMap;
import org.garboard.drawing.sheets.Cautions;

/** The report of a run: the answer first, then what it rests on. The same input gives the same bytes. */
public final class Report {
    /** Name of the file. */
    public static final String NAME = "report.html";

    private static final String BESIDES = "Other ways, and what to know beside the sheets";

    private final ReportTask task;
    private final Html page;

    private Report(ReportTask task, Html page) {
        this.task = task;
        this.page = page;
    }

    public static byte[] write(ReportTask task) {
        return Html.page(task.boat() + ": where the transducer goes", "garboard " + task.provenance().version(),
            page -> new Report(task, page).write());
    }

    private void write() throws XMLStreamException {
        page.start("header").words("h1", task.boat() + ": where the transducer goes").end();
        page.start("main");
        for (int k = 0; k < task.all().size(); k++) {
            new AnswerSection(task, task.all().get(k), id("answer", k)).write(page);
        }
        cautions();
        for (int k = 0; k < task.all().size(); k++) {
            notKnown(k);
        }
        contents();
        for (int k = 0; k < task.all().size(); k++) {
            besides(k);
        }
        for (int k = 0; k < task.all().size(); k++) {
            map(k);
        }
        new RunningSection(task).write(page);
        for (int k = 0; k < task.all().size(); k++) {
            new ChecksSection(task, task.all().get(k), id("checks", k)).write(page);
        }
        files();
        page.end();
        page.start("footer").words("p", "Computed by Garboard " + task.provenance().version() + "; not measured on the boat. Maker's instructions, local codes "
            + "and whoever is licensed to judge the boat go before this page.").end();
    }

    private static String id(String what, int number) {
        return number == 0 ? what : what + "-" + (number + 1);
    }

    /** What is said of one transducer of several has its name. */
    static String of(String heading, ReportTask task, Reported one) {
        return task.all().size() == 1 ? heading : heading + ": " + one.decided().job().transducer().name();
    }

    private void cautions() throws XMLStreamException {
        page.start("section", "aria-labelledby", "cautions").words("h2", "Cautions", "id", "cautions");
        page.list("ol", Cautions.of(task.table()).paragraphs().stream().map(Notes.Paragraph::words).toList());
        page.end();
    }

    private void contents() throws XMLStreamException {
        page.start("nav", "aria-label", "Contents").start("ul");
        for (int k = 0; k < task.all().size(); k++) {
            link(id("map", k), of("Bottom map", task, task.all().get(k)));
        }
        link("running", "How she runs");
        for (int k = 0; k < task.all().size(); k++) {
            link(id("checks", k), of("Every check, and places refused", task, task.all().get(k)));
        }
        link("files", "Inputs, files and their hashes");
        page.end().end();
    }

    private void link(String id, String words) throws XMLStreamException {
        page.start("li").within("a", words, "href", "#" + id).end();
    }

    private void notKnown(int number) throws XMLStreamException {
        Reported one = task.all().get(number);
        List<String> lines = one.decided().advised().stream().flatMap(siting -> siting.sites().get(0).notKnown().stream())
            .map(check -> check.name() + ": " + check.sentence()).toList();
        section(id("not-known", number), of("NOT KNOWN: look before cutting", task, one), lines);
    }

    private void section(String id, String heading, List<String> lines) throws XMLStreamException {
        if (!lines.isEmpty()) {
            page.start("section", "aria-labelledby", id).words("h2", heading, "id", id).list("ul", lines).end();
        }
    }

    private void besides(int number) throws XMLStreamException {
        Reported one = task.all().get(number);
        List<String> lines = new ArrayList<>(new Answer(one.decided(), task.table().origin()).besides());
        lines.addAll(one.toCut());
        section(id("besides", number), of(BESIDES, task, one), lines);
    }

    private void map(int number) throws XMLStreamException {
        Reported one = task.all().get(number);
        String id = id("map", number);
        page.start("section", "aria-labelledby", id).words("h2", of("Bottom map", task, one), "id", id);
        page.figure(BottomMap.of(one.decided(), task.table(), task.hull(), task.provenance()), id + "-picture", "Bottom seen from below",
            "Bow to the right, starboard up. Hatched is where a mount meets every check that can be made; numbers in circles are the sites.",
            "Site 1 is the advised or given one where there is one; the others are the best, or least bad, of their mounts. True size is on the sheets.");
        heat(id, one);
        page.end();
    }

    /** A picture in colours that keep their order in grey and to the colour-blind. */
    private void heat(String id, Reported one) throws XMLStreamException {
        if (!one.heat().isEmpty()) {
            page.words("h3", "How well the bottom serves, and what governs where", "id", id + "-heat");
            page.colouredFigure(HeatMap.inline(id + "-heat-picture", one.decided().job().transducer().name(), task.hull(), one.heat()),
                of("How well the bottom serves", task, one), "Drawn from places " + Math.round(1000 * one.heat().get(0).maps().get(0).step())
                + " mm apart: regions narrower than that are on the map above alone. Crosses are the sites. \"garboard site --heat-map\" draws all mounts, and finer.");
        }
    }

    private void files() throws XMLStreamException {
        page.start("section", "aria-labelledby", "files").words("h2", "Inputs, files and their hashes", "id", "files");
        if (!task.notDrawn().isEmpty()) {
            page.words("h3", "Not drawn").list("ul", task.notDrawn());
        }
        page.words("p", "A file is the one told of here if its SHA-256 (sha256sum) is the same. The record, record.xml, holds all of this for machines.");
        List<NamedHash> all = new ArrayList<>(task.inputs());
        all.addAll(task.outputs());
        page.startTable("Files", "File", "What", "SHA-256");
        for (NamedHash file : all) {
            page.start("tr").words("th", file.name(), "scope", "row").words("td", file.what());
            page.start("td").within("code", file.sha256()).end().end();
        }
        page.endTable().end();
    }
}
