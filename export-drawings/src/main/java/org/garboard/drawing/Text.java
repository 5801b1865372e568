package org.garboard.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * One line of text.
 *
 * @param words what it says, full Unicode
 * @param at the anchor on the base line
 * @param height of capitals [mm], of the ISO 3098 series
 * @param rotationDeg of the base line
 */
public record Text(Layer layer, String words, Point at, double height, Anchor anchor, double rotationDeg)
        implements Entity {

    /** Brackets and descenders hang this far below the base line, in capital heights. */
    private static final double BELOW = 0.3;
    private static final double ABOVE = 1.05;

    public Text {
        words = harmless(words);
        if (words.isBlank()) {
            throw new IllegalArgumentException("a text without words at " + at);
        }
        if (!(height > 0)) {
            throw new IllegalArgumentException("letters have a positive height, not " + height + " mm");
        }
    }

    /** Controls and signs that turn the direction of writing would act on a viewer: blanks stand for them, a box where nothing else is said. */
    private static String harmless(String words) {
        String legible = words.codePoints().map(letter -> switch (Character.getType(letter)) {
            case Character.CONTROL, Character.FORMAT, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR,
                    Character.SURROGATE, Character.UNASSIGNED -> ' ';
            default -> letter;
        }).collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append).toString().strip();
        return legible.isEmpty() && !words.isBlank() ? "\u25a1" : legible;
    }

    public static Text level(Layer layer, String words, Point at, double height, Anchor anchor) {
        return new Text(layer, words, at, height, anchor, 0);
    }

    /** A text whose capitals are centred on a point, up and down as well. */
    public static Text centred(Layer layer, String words, Point middle, double height, double rotationDeg) {
        Point base = middle.towards(rotationDeg - 90, height / 2);
        return new Text(layer, words, base, height, Anchor.MIDDLE, rotationDeg);
    }

    /** Extent along the base line with reserve [mm]. */
    public double extent() {
        return LetterWidths.extent(words, height);
    }

    /** Middle of its capitals. */
    public Point middle() {
        return at.towards(rotationDeg, extent() * (0.5 - anchor.before())).towards(rotationDeg + 90, height / 2);
    }

    /** The four corners of its extent, from the start of the base line counter-clockwise. */
    public List<Point> corners() {
        Point start = at.towards(rotationDeg, -extent() * anchor.before());
        Point end = start.towards(rotationDeg, extent());
        List<Point> corners = new ArrayList<>();
        corners.add(start.towards(rotationDeg - 90, BELOW * height));
        corners.add(end.towards(rotationDeg - 90, BELOW * height));
        corners.add(end.towards(rotationDeg + 90, ABOVE * height));
        corners.add(start.towards(rotationDeg + 90, ABOVE * height));
        return corners;
    }

    @Override
    public Box bounds() {
        return Box.around(corners());
    }

    @Override
    public Text movedBy(double dx, double dy) {
        return new Text(layer, words, at.movedBy(dx, dy), height, anchor, rotationDeg);
    }

    @Override
    public void drawOn(Canvas canvas) {
        canvas.text(this);
    }
}
