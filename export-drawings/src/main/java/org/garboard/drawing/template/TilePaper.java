package org.garboard.drawing.template;

import org.garboard.drawing.Box;

/** Office paper, portrait, and what of it is used. */
public enum TilePaper {
    /** ISO 216. */
    A4("A4", 210, 297),
    LETTER("Letter", 215.9, 279.4);

    /** Printers leave so much white at most [mm]: common practice, no source. */
    private static final double MARGIN = 12;
    /** Below the window for rulers and words, and beside it for the upright rulers [mm]: our choice. */
    private static final double FOOT = 26;
    private static final double SIDE = 16;

    private final String words;
    private final double width;
    private final double height;

    TilePaper(String words, double width, double height) {
        this.words = words;
        this.width = width;
        this.height = height;
    }

    public String words() {
        return words;
    }

    public double width() {
        return width;
    }

    public double height() {
        return height;
    }

    /** The part that shows the template. */
    Box window() {
        return new Box(MARGIN, MARGIN + FOOT, width - MARGIN - SIDE, height - MARGIN);
    }

    double left() {
        return MARGIN;
    }

    double foot() {
        return MARGIN;
    }
}
