package org.garboard.report;

import java.util.Optional;
import javax.xml.stream.XMLStreamException;
import org.garboard.answer.Answer;
import org.garboard.answer.CheckWords;
import org.garboard.answer.PlaceWords;
import org.garboard.mount.Check;
import org.garboard.siting.MountSiting;
import org.garboard.siting.Site;

/** What is advised, and what must be looked at before anything is cut. */
final class AnswerSection {
    private final ReportTask task;
    private final Reported one;
    private final String id;
    private final PlaceWords words;

    AnswerSection(ReportTask task, Reported one, String id) {
        this.task = task;
        this.one = one;
        this.id = id;
        this.words = new PlaceWords(one.decided().job().drawing().units(), task.table().origin());
    }

    void write(Html page) throws XMLStreamException {
        page.start("section", "class", "answer", "aria-labelledby", id).words("h2", Report.of("Answer", task, one), "id", id);
        Optional<MountSiting> advised = one.decided().advised();
        page.start("dl");
        if (advised.isPresent()) {
            yes(page, advised.get(), advised.get().sites().get(0));
        } else {
            page.term("Site", Answer.NO);
        }
        page.end();
        page.end();
    }

    private void yes(Html page, MountSiting siting, Site site) throws XMLStreamException {
        page.term("Site", words.place(site) + "; girth from the keel line " + words.length(site.girth()));
        page.term("Mount", siting.mount().words());
        if (one.decided().isGiven()) {
            page.term("Given by the yard, not advised", Answer.notMet(one.decided()));
        }
        page.term("Governing check", site.governing().map(CheckWords::figures).orElse("none could be made"));
        String open = String.join(", ", site.notKnown().stream().map(Check::name).toList());
        page.term("NOT KNOWN: look before cutting", open.isEmpty() ? "every check could be made" : open);
    }
}
