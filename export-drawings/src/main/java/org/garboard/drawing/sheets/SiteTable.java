package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.garboard.drawing.Anchor;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Point;
import org.garboard.drawing.Table;
import org.garboard.drawing.Text;
import org.garboard.drawing.Wrap;
import org.garboard.drawing.layout.Cluster;
import org.garboard.drawing.layout.Lettering;
import org.garboard.drawing.layout.Notes;
import org.garboard.drawing.layout.Piece;
import org.garboard.lines.TapeInPlane;
import org.garboard.lines.TapeRun;
import org.garboard.mount.Check;
import org.garboard.mount.Seat;
import org.garboard.siting.Site;
import org.garboard.units.FixedDecimal;

/** The marked sites in figures, and what is NOT KNOWN of them. */
final class SiteTable {

    private SiteTable() {
    }

    /** As a piece that may run on to another page between its sites. */
    static Piece piece(SheetTask task, List<MarkedSite> sites, List<Piece.Corner> corners) {
        return new Piece(shapes(task, sites), corners,
                Optional.of(new Piece.Rows(sites.size(), (from, before) -> piece(task, sites.subList(from, before), corners))));
    }

    /** A line per site, or a column per site, the widest shape first and the narrowest last. */
    private static List<Cluster> shapes(SheetTask task, List<MarkedSite> sites) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("No.", "Mount", "Side", "From " + task.afterEnd() + ", PLAN",
                "From " + task.forwardDatum() + ", PLAN", "Off CL, PLAN", "From keel line, SKIN", "Deadrise under footprint",
                "May move fwd, aft, in, out", "Governing check, utilisation", "Verdict"));
        sites.forEach(marked -> rows.add(row(task, marked)));
        Lettering lettering = task.lettering();
        double h = lettering.tables();
        return Stream.of(fitted(rows, 22 * h, lettering), fitted(rows, 16 * h, lettering), turned(rows, 24 * h, lettering),
                turned(rows, 18 * h, lettering), fitted(rows, 13 * h, lettering), turned(rows, 16 * h, lettering),
                turned(rows, 14 * h, lettering), turned(rows, 12 * h, lettering), fitted(rows, 11 * h, lettering),
                fitted(rows, 9.5 * h, lettering))
                .map(table -> headed(table, lettering)).toList();
    }

    private static Cluster headed(Table table, Lettering lettering) {
        Text heading = Text.level(Layer.TEXT, "SITES", new Point(0, 0.6 * lettering.headings()), lettering.headings(),
                Anchor.LEFT);
        return Cluster.of(List.of(heading, table));
    }

    private static List<String> row(SheetTask task, MarkedSite marked) {
        Site site = marked.site();
        Figures figures = task.figures();
        List<String> row = new ArrayList<>(List.of(marked.mark(),
                site.mount().words() + ": " + marked.standing().words(), side(site),
                taped(task, marked, task.fromAfterEnd(site.x())),
                taped(task, marked, Math.abs(site.x())) + (site.x() < 0 ? " forward" : ""),
                figures.length(Math.abs(site.y())), onCentreline(site) ? "0" : fromKeelLine(task, marked),
                athwartKeel(site) ? "athwart the keel" : Figures.slope(site.deadrise()),
                marked.serves() ? window(task, site) : "-"));
        row.add(site.governing().map(SiteTable::governing).orElse("none"));
        row.add(verdict(site));
        return row;
    }

    /** Pressed to the skin all the way; where a tape drawn tight bridges a hollow, what that reads too, as it is marked out. */
    private static String fromKeelLine(SheetTask task, MarkedSite marked) {
        Site site = marked.site();
        if (!marked.serves()) {
            return taped(task, marked, site.girth());
        }
        double keel = Math.signum(site.y()) * task.hull().lines().get(task.hull().skinLine()).y(site.x());
        TapeRun tape = TapeInPlane.athwart(task.hull(), site.x(), keel, site.y());
        return tape.touches() ? taped(task, marked, site.girth())
                : task.figures().length(site.girth()) + "; TAUT " + taped(task, marked, tape.length());
    }

    /** With its tolerance where something may be marked there. */
    private static String taped(SheetTask task, MarkedSite marked, double metres) {
        return marked.serves() ? task.figures().length(metres, Marking.place(metres)) : task.figures().length(metres);
    }

    private static boolean onCentreline(Site site) {
        return site.y() == 0;
    }

    private static String side(Site site) {
        if (onCentreline(site)) {
            return "on CL";
        }
        return site.y() > 0 ? "starboard (port mirrored)" : "port (starboard mirrored)";
    }

    private static boolean athwartKeel(Site site) {
        return site.mount().seat() == Seat.ATHWART_KEEL && onCentreline(site);
    }

    private static String window(SheetTask task, Site site) {
        return site.window().map(window -> String.join(", ", task.figures().brief(window.forward()),
                task.figures().brief(window.aft()), task.figures().brief(window.inboard()),
                task.figures().brief(window.outboard()))).orElse("-");
    }

    private static String governing(Check check) {
        String words = switch (check.sense()) {
            case AT_MOST -> check.name() + ": " + figure(check.demand(), check.unit()) + ", at most " + figure(check.limit(), check.unit());
            case AT_LEAST -> check.name() + ": " + figure(check.demand(), check.unit()) + ", at least " + figure(check.limit(), check.unit());
            case YES_NO, KNOWN_ONLY -> check.name();
        };
        return words + "; " + utilisation(check.utilisation());
    }

    private static String figure(double value, String unit) {
        return Double.isFinite(value) ? Figures.tenths(value) + " " + unit : "none";
    }

    private static String utilisation(double value) {
        return Double.isFinite(value) ? FixedDecimal.format(value, 2) : "-";
    }

    private static String verdict(Site site) {
        String measured = site.feasible() ? "met where measured" : "NOT MET";
        return site.notKnown().isEmpty() ? measured : measured + "; " + site.notKnown().size() + " NOT KNOWN";
    }

    /** As many columns as headings, none wider than its longest cell nor than the widest allowed. */
    private static Table fitted(List<List<String>> rows, double widest, Lettering lettering) {
        List<Double> widths = new ArrayList<>();
        for (int column = 0; column < rows.get(0).size(); column++) {
            double width = 0;
            for (List<String> row : rows) {
                width = Math.max(width, needed(row.get(column), widest, lettering.tables()));
            }
            widths.add(width);
        }
        return Table.wrapped(new Point(0, 0), widths, rows, lettering.tables());
    }

    /** The least column that holds a cell in as many lines as the widest allowed column would. */
    private static double needed(String cell, double widest, double height) {
        return Wrap.lines(cell, widest, height).stream()
                .mapToDouble(line -> Table.columnFor(line, height)).max().orElse(0);
    }

    /** Headings down the side, a column per site: for narrow places. */
    private static Table turned(List<List<String>> rows, double widest, Lettering lettering) {
        List<List<String>> turned = new ArrayList<>();
        for (int line = 0; line < rows.get(0).size(); line++) {
            List<String> cells = new ArrayList<>();
            for (List<String> row : rows) {
                cells.add(row.get(line));
            }
            turned.add(cells);
        }
        return fitted(turned, widest, lettering);
    }

    /** The checks that no table of offsets can answer, once each, with the sites they are open for. */
    static Notes lookBeforeCutting(List<MarkedSite> sites) {
        Map<String, List<String>> open = new LinkedHashMap<>();
        for (MarkedSite marked : sites) {
            for (Check check : marked.site().notKnown()) {
                open.computeIfAbsent(check.name() + ": " + check.sentence(), none -> new ArrayList<>()).add(marked.mark());
            }
        }
        List<Notes.Paragraph> paragraphs = new ArrayList<>();
        open.forEach((words, marks) -> paragraphs.add(new Notes.Paragraph("[ ]",
                (marks.size() == sites.size() ? "" : "Site " + String.join(" and ", marks) + ", ") + words)));
        return new Notes("LOOK BEFORE CUTTING: NOT KNOWN", paragraphs);
    }
}
