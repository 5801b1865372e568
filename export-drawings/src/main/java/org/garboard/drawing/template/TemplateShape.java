package org.garboard.drawing.template;

import java.util.List;
import org.garboard.drawing.Box;
import org.garboard.drawing.Line;
import org.garboard.drawing.Point;
import org.garboard.drawing.Text;

/**
 * What a template shows, in its own frame.
 *
 * @param title of the file
 * @param lay how it lies
 * @param heading boat, drawing, revision and date, on every page
 * @param outline to be cut, closed, the first corner not repeated
 * @param strokes other lines
 * @param letters that name lines in the checks
 * @param named lines that are named on every tile
 * @param within by how much each of them may be out, in words
 * @param checks what is measured across the joined tiles, a sentence each
 * @param revisions table of revisions in words, a row each
 */
public record TemplateShape(String title, TemplateLay lay, String heading, List<Point> outline, List<Line> strokes, List<Text> letters,
                            List<NamedLine> named, String within, List<String> checks, List<String> revisions) {
    public TemplateShape {
        outline = List.copyOf(outline);
        strokes = List.copyOf(strokes);
        letters = List.copyOf(letters);
        named = List.copyOf(named);
        checks = List.copyOf(checks);
        revisions = List.copyOf(revisions);
    }

    Box extents() {
        return strokes.stream().map(Line::bounds).reduce(Box.around(outline), Box::joinedWith);
    }
}
