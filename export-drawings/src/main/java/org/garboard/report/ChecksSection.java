package org.garboard.report;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.xml.stream.XMLStreamException;
import org.garboard.answer.Answer;
import org.garboard.answer.CheckWords;
import org.garboard.answer.PlaceWords;
import org.garboard.mount.Check;
import org.garboard.mount.Verdict;
import org.garboard.siting.MountSiting;
import org.garboard.siting.Site;
import org.garboard.siting.Window;
import org.garboard.units.FixedDecimal;

/** Every check at the best place of each mount, the advised first; where a mount has none, the nearest place and why it is refused. */
final class ChecksSection {
    private final ReportTask task;
    private final Reported one;
    private final String id;
    private final PlaceWords words;

    ChecksSection(ReportTask task, Reported one, String id) {
        this.task = task;
        this.one = one;
        this.id = id;
        this.words = new PlaceWords(one.decided().job().drawing().units(), task.table().origin());
    }

    void write(Html page) throws XMLStreamException {
        page.start("section", "aria-labelledby", id).words("h2", Report.of("Every check, and places refused", task, one), "id", id);
        page.words("p", "Utilisation is what a place asks for over what is allowed; a check is met up to 1. NOT KNOWN never counts as met.");
        Optional<MountSiting> advised = one.decided().advised();
        if (advised.isPresent()) {
            mount(page, advised.get(), one.decided().isGiven() ? ": given by the yard" : ": advised");
        }
        for (MountSiting siting : one.decided().sitings()) {
            if (!one.decided().isAdvised(siting)) {
                mount(page, siting, siting.sites().isEmpty() ? ": refused" : "");
            }
        }
        page.end();
    }

    private void mount(Html page, MountSiting siting, String standing) throws XMLStreamException {
        page.words("h3", capital(siting.mount().words()) + standing);
        page.words("p", "Gains: " + siting.mount().gains() + " Costs: " + siting.mount().costs());
        if (!siting.sites().isEmpty()) {
            place(page, siting, siting.sites().get(0), one.decided().isGiven() && one.decided().isAdvised(siting) ? "Given place" : "Best place");
            others(page, siting);
        } else if (siting.nearest().isPresent()) {
            refused(page, siting.nearest().get());
            place(page, siting, siting.nearest().get(), "Nearest place");
        } else {
            page.words("p", "No site: " + Answer.NOWHERE + ".");
        }
    }

    private void refused(Html page, Site site) throws XMLStreamException {
        Verdict because = site.feasible() ? Verdict.NOT_KNOWN : Verdict.NOT_MET;
        page.words("p", site.feasible() ? "No place on the bottom is known to serve. At the nearest, NOT KNOWN:"
            : "No place on the bottom meets every check that can be made. At the nearest, not met:");
        page.list("ul", site.checks().stream().filter(check -> check.verdict() == because)
            .map(check -> CheckWords.figures(check) + ": " + check.sentence()).toList());
    }

    private void place(Html page, MountSiting siting, Site site, String called) throws XMLStreamException {
        page.start("p").within("strong", called).say(": " + words.place(site) + lying(site));
        page.say(site.window().map(this::moved).orElse("")).end();
        checks(page, capital(siting.mount().words()) + ": checks at the " + called.toLowerCase(Locale.ROOT), site);
    }

    private String lying(Site site) {
        return Double.isNaN(site.z()) ? "." : "; girth from the keel line " + words.length(site.girth()) + ", deadrise " + degrees(site.deadrise())
            + ", slope " + degrees(site.slope()) + " fore and aft.";
    }

    private String moved(Window window) {
        return " May be moved: forward " + words.shortLength(window.forward()) + ", aft " + words.shortLength(window.aft()) + ", inboard "
            + words.shortLength(window.inboard()) + ", outboard " + words.shortLength(window.outboard()) + ".";
    }

    private void others(Html page, MountSiting siting) throws XMLStreamException {
        List<String> others = siting.sites().stream().skip(1).map(site -> words.place(site)
            + site.governing().map(check -> "; governing: " + CheckWords.figures(check)).orElse("") + ".").toList();
        if (!others.isEmpty()) {
            page.words("p", "Best places of its other regions:").list("ul", others);
        }
    }

    private static void checks(Html page, String caption, Site site) throws XMLStreamException {
        Optional<Check> governing = site.governing();
        page.startBroadTable(caption, "Check", "Verdict", "Found", "Wanted", "Utilisation", "In words", "Source");
        for (Check check : site.checks()) {
            boolean governs = governing.isPresent() && governing.get() == check;
            List<String> cells = List.of(check.verdict().words() + (governs ? ", governs" : ""), CheckWords.found(check), CheckWords.limit(check),
                CheckWords.utilisation(check), check.sentence(), check.source());
            if (governs || check.verdict() != Verdict.MET) {
                page.row(check.name(), cells, "class", "strong");
            } else {
                page.row(check.name(), cells);
            }
        }
        page.endTable();
    }

    private static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    private static String degrees(double radians) {
        return Double.isNaN(radians) ? "-" : FixedDecimal.format(Math.toDegrees(radians), 1) + "°";
    }
}
