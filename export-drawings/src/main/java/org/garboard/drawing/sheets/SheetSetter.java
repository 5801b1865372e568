package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.garboard.drawing.Scale;
import org.garboard.drawing.Sheet;
import org.garboard.drawing.layout.DoesNotFit;
import org.garboard.drawing.layout.Paper;
import org.garboard.drawing.layout.Piece;
import org.garboard.drawing.layout.SheetLayout;
import org.garboard.job.DrawingWish;

/** Sets a sheet at the largest scale of its list at which everything finds room, or says why none will do. */
public final class SheetSetter {

    /** Rather than none at all, views are drawn this much shorter than what reads well: our choice. */
    private static final double HARD_TO_READ = 0.75;

    private SheetSetter() {
    }

    /** Makes a sheet's content for a paper: lettering follows the paper. */
    public interface Maker<T> {
        SheetContent on(T task);
    }

    /** @throws DoesNotFit when the paper is too small */
    public static <T extends SheetSubject<T>> Sheet set(T task, Maker<T> maker) {
        return fitted(task, maker).orElseThrow(() -> refusal(task, maker));
    }

    /**
     * On one sheet where that can be, else on as many pages as it takes; each of them is a sheet of its own.
     *
     * @throws DoesNotFit when the paper is too small for one of the views
     */
    public static <T extends SheetSubject<T>> List<Sheet> pages(T task, Maker<T> maker) {
        return fitted(task, maker).map(List::of).or(() -> runningOn(task, maker)).orElseThrow(() -> refusal(task, maker));
    }

    private static <T extends SheetSubject<T>> Optional<List<Sheet>> runningOn(T task, Maker<T> maker) {
        return runningOn(task, maker, 1).or(() -> runningOn(task, maker, HARD_TO_READ));
    }

    private static <T extends SheetSubject<T>> Optional<List<Sheet>> runningOn(T task, Maker<T> maker, double share) {
        List<T> letterings = new ArrayList<>(List.of(task));
        task.lettering().smaller().map(task::lettered).ifPresent(letterings::add);
        for (T lettered : letterings) {
            SheetContent content = maker.on(lettered);
            for (Scale scale : task.figures().scalesToTheLast()) {
                double drawn = scale.paper(content.longest());
                Optional<List<Sheet>> pages = drawn >= share * content.shortestDrawn() && drawn < task.paper().width()
                        ? pages(scale, lettered, content) : Optional.empty();
                if (pages.isPresent()) {
                    return pages;
                }
            }
        }
        return Optional.empty();
    }

    private static Optional<List<Sheet>> pages(Scale scale, SheetSubject<?> task, SheetContent content) {
        SheetLayout whole = layout(scale, task, content, "");
        return content.runningOn(scale).stream().map(pieces -> whole.pages(pieces, content.onEveryPage())).flatMap(Optional::stream)
                .findFirst().map(pages -> numbered(pages, scale, task, content));
    }

    private static List<Sheet> numbered(List<List<Piece>> pages, Scale scale, SheetSubject<?> task, SheetContent content) {
        List<Sheet> sheets = new ArrayList<>();
        for (int i = 0; i < pages.size(); i++) {
            String page = ", page " + (i + 1) + " of " + pages.size();
            sheets.add(layout(scale, task, content, page).set(task.boat() + ": " + content.title() + page, described(scale, task, content),
                    scale, pages.get(i)).orElseThrow());
        }
        return sheets;
    }

    private static SheetLayout layout(Scale scale, SheetSubject<?> task, SheetContent content, String page) {
        return new SheetLayout(task.paper(), task.lettering(),
                task.titleBlock(content.title(), content.documentType(), content.number() + page, content.scaleWords(scale)));
    }

    private static String described(Scale scale, SheetSubject<?> task, SheetContent content) {
        return content.description() + " Scale " + scale.words() + " on " + task.paper().name() + ".";
    }

    /** In the paper's own lettering, else in smaller. */
    private static <T extends SheetSubject<T>> Optional<Sheet> fitted(T task, Maker<T> maker) {
        List<T> own = new ArrayList<>(List.of(task));
        task.lettering().smallerNotes().map(task::lettered).ifPresent(own::add);
        return fitted(own, maker).or(() -> task.lettering().smaller()
                .flatMap(smaller -> fitted(List.of(task.lettered(smaller)), maker)));
    }

    /** At the largest scale that serves; at each scale in the largest lettering that does. */
    private static <T extends SheetSubject<T>> Optional<Sheet> fitted(List<T> letterings, Maker<T> maker) {
        List<SheetContent> contents = letterings.stream().map(maker::on).toList();
        for (Scale scale : letterings.get(0).figures().scales()) {
            for (int i = 0; i < contents.size(); i++) {
                if (!contents.get(i).legible(scale)) {
                    return Optional.empty();
                }
                Optional<Sheet> sheet = at(scale, letterings.get(i), contents.get(i));
                if (sheet.isPresent()) {
                    return sheet;
                }
            }
        }
        return Optional.empty();
    }

    private static Optional<Sheet> at(Scale scale, SheetSubject<?> task, SheetContent content) {
        if (scale.paper(content.longest()) > task.paper().width()) {
            return Optional.empty();
        }
        SheetLayout layout = layout(scale, task, content, "");
        return content.arrangements(scale).stream()
                .map(pieces -> layout.set(task.boat() + ": " + content.title(), described(scale, task, content), scale, pieces))
                .flatMap(Optional::stream).findFirst();
    }

    private static <T extends SheetSubject<T>> DoesNotFit refusal(T task, Maker<T> maker) {
        SheetContent content = maker.on(task);
        List<Scale> scales = task.figures().scales();
        Scale last = scales.get(scales.size() - 1);
        for (Scale scale : scales) {
            if (!content.legible(scale)) {
                break;
            }
            last = scale;
        }
        String reason = String.format(Locale.ROOT, "%s does not hold the views, tables and notes even at %s, the smallest "
                + "scale at which they can be read", task.paper().name(), last.words());
        return new DoesNotFit(reason, larger(task, maker)
                .map(paper -> "choose the paper " + paper.name() + ", which holds them")
                .orElse("no sheet of that family holds them; draw a shorter part of the boat"));
    }

    /** The next larger sheet of the same family that holds the content. */
    private static <T extends SheetSubject<T>> Optional<Paper> larger(T task, Maker<T> maker) {
        for (DrawingWish.Paper wish : family(task.drawing().paper())) {
            Paper paper = SheetSubject.paper(wish, task.drawing().orientation());
            if (paper.width() > task.paper().width()) {
                T tried = task.on(paper);
                if (fitted(tried, maker).isPresent()) {
                    return Optional.of(paper);
                }
            }
        }
        return Optional.empty();
    }

    /** ISO sizes or ANSI sizes, the smallest first, as they are declared. */
    private static Set<DrawingWish.Paper> family(DrawingWish.Paper paper) {
        Set<DrawingWish.Paper> iso = EnumSet.of(DrawingWish.Paper.A4, DrawingWish.Paper.A3, DrawingWish.Paper.A2,
                DrawingWish.Paper.A1);
        return iso.contains(paper) ? iso : EnumSet.complementOf(EnumSet.copyOf(iso));
    }
}
