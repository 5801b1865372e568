package org.garboard.drawing.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.garboard.drawing.Anchor;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.LetterWidths;
import org.garboard.drawing.Point;
import org.garboard.drawing.Text;
import org.garboard.drawing.Wrap;

/**
 * A heading and paragraphs, wrapped to the width of a column.
 *
 * @param heading above them
 * @param paragraphs each with its mark ("1", "[ ]"), which stands clear to the left
 */
public record Notes(String heading, List<Paragraph> paragraphs) {

    private static final double WIDEST = TitleBlockDrawing.WIDTH;
    private static final String CONTINUED = " (continued)";
    private static final double NARROWER = 0.9;
    /** A column of fewer letter heights breaks every other word: our choice. */
    private static final double NARROWEST = 20;

    /** One paragraph. */
    public record Paragraph(String mark, String words) {
    }

    public Notes {
        paragraphs = List.copyOf(paragraphs);
    }

    /** Paragraphs numbered from 1. */
    public static Notes numbered(String heading, List<String> words) {
        List<Paragraph> paragraphs = new ArrayList<>();
        for (String paragraph : words) {
            paragraphs.add(new Paragraph(String.valueOf(paragraphs.size() + 1), paragraph));
        }
        return new Notes(heading, paragraphs);
    }

    /** As a piece that may run on to another page between its paragraphs. */
    public Piece piece(Lettering lettering, List<Piece.Corner> corners) {
        return new Piece(shapes(lettering), corners, Optional.of(new Piece.Rows(paragraphs.size(), (from, before) ->
                new Notes(from > 0 ? continued(heading) : heading, paragraphs.subList(from, before)).piece(lettering, corners))));
    }

    /** A heading over what runs on from an earlier page. */
    public static String continued(String heading) {
        return heading.endsWith(CONTINUED) ? heading : heading + CONTINUED;
    }

    /** Shapes from the title block's width down to a narrow column that breaks no word, the widest first. */
    public List<Cluster> shapes(Lettering lettering) {
        double narrowest = Math.max(NARROWEST * lettering.tables(), indent(lettering) + longestWord(lettering.tables()));
        List<Cluster> shapes = new ArrayList<>();
        double width = WIDEST;
        do {
            shapes.add(Cluster.column(column(lettering, width), width));
            width *= NARROWER;
        } while (width > narrowest);
        return shapes;
    }

    private double longestWord(double height) {
        return paragraphs.stream().flatMap(paragraph -> Stream.of(paragraph.words().split("\\s+")))
                .mapToDouble(word -> LetterWidths.extent(word, height)).max().orElse(0);
    }

    private List<Entity> column(Lettering lettering, double width) {
        List<Entity> texts = new ArrayList<>();
        double y = -lettering.headings();
        for (String line : Wrap.lines(heading, width, lettering.headings())) {
            texts.add(text(line, 0, y, lettering.headings()));
            y -= 1.5 * lettering.headings();
        }
        double indent = indent(lettering);
        for (Paragraph paragraph : paragraphs) {
            texts.add(text(paragraph.mark(), 0, y, lettering.tables()));
            for (String line : Wrap.lines(paragraph.words(), width - indent, lettering.tables())) {
                texts.add(text(line, indent, y, lettering.tables()));
                y -= 1.6 * lettering.tables();
            }
            y -= 0.2 * lettering.tables();
        }
        return texts;
    }

    private double indent(Lettering lettering) {
        return paragraphs.stream().mapToDouble(p -> LetterWidths.extent(p.mark(), lettering.tables())).max().orElse(0)
                + lettering.tables();
    }

    private static Text text(String words, double x, double y, double height) {
        return Text.level(Layer.TEXT, words, new Point(x, y), height, Anchor.LEFT);
    }
}
