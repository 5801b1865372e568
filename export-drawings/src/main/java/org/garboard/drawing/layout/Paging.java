package org.garboard.drawing.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Deals pieces out to pages: each page takes, in their order, all that it holds; a list that no page holds whole is
 * broken between its rows and goes on at the head of the next.
 */
final class Paging {
    /** Ways tried before a piece is left for the next page: our choice. */
    private static final int TRIALS = 1500;
    /** More pages than these nobody reads: our choice. */
    private static final int MOST_PAGES = 12;

    private final FreeSpace space;
    private final List<Piece> onEveryPage;
    private final List<List<Piece>> pages = new ArrayList<>();

    private Paging(FreeSpace space, List<Piece> onEveryPage) {
        this.space = space;
        this.onEveryPage = onEveryPage;
    }

    /**
     * The pieces of each page; empty when one of them fits on no page.
     *
     * @param onEveryPage what each page holds beside
     */
    static Optional<List<List<Piece>>> of(List<Piece> pieces, List<Piece> onEveryPage, FreeSpace space) {
        Paging paging = new Paging(space, onEveryPage);
        List<Piece> left = new ArrayList<>(pieces);
        while (!left.isEmpty()) {
            int before = rows(left);
            left = paging.page(left);
            if (rows(left) == before || paging.pages.size() > MOST_PAGES) {
                return Optional.empty();
            }
        }
        return Optional.of(paging.pages);
    }

    private static int rows(List<Piece> pieces) {
        return pieces.stream().mapToInt(piece -> piece.rows().map(Piece.Rows::count).orElse(1)).sum();
    }

    /** Fills a page and tells what is left for the next. */
    private List<Piece> page(List<Piece> pieces) {
        List<Piece> page = new ArrayList<>(onEveryPage);
        List<Piece> broken = new ArrayList<>();
        List<Piece> left = new ArrayList<>();
        for (Piece piece : pieces) {
            if (holds(page, piece)) {
                page.add(piece);
            } else if (piece.rows().isEmpty() || holds(onEveryPage, piece)) {
                left.add(piece);
            } else {
                int rows = rowsThatFit(page, piece.rows().get());
                if (rows > 0) {
                    page.add(piece.rows().get().part().of(0, rows));
                    broken.add(piece.rows().get().part().of(rows, piece.rows().get().count()));
                } else {
                    left.add(piece);
                }
            }
        }
        pages.add(page);
        broken.addAll(left);
        return broken;
    }

    private int rowsThatFit(List<Piece> page, Piece.Rows rows) {
        int fit = 0;
        int no = rows.count();
        while (no - fit > 1) {
            int middle = (fit + no) / 2;
            if (holds(page, rows.part().of(0, middle))) {
                fit = middle;
            } else {
                no = middle;
            }
        }
        return fit;
    }

    private boolean holds(List<Piece> page, Piece piece) {
        List<Piece> both = new ArrayList<>(page);
        both.add(piece);
        return Packing.of(both, space, TRIALS).isPresent();
    }
}
