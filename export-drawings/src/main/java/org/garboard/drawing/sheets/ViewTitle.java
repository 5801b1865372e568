package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.List;
import org.garboard.drawing.Anchor;
import org.garboard.drawing.Box;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.LetterWidths;
import org.garboard.drawing.Point;
import org.garboard.drawing.Text;
import org.garboard.drawing.View;
import org.garboard.drawing.Wrap;
import org.garboard.drawing.layout.Lettering;

/** Puts a view's name, and how it is seen, above it. */
public final class ViewTitle {

    private ViewTitle() {
    }

    /**
     * The view with its title.
     *
     * @param narrowest titles may run so wide [mm] though the view be narrower; a part of the name up to a colon or comma is not broken
     */
    public static View above(String name, String remark, List<Entity> shown, Lettering lettering, double narrowest) {
        Box box = View.around(name, shown).frame();
        List<String> parts = List.of(name.split("(?<=[:,]) "));
        double width = Math.max(Math.max(box.width(), narrowest),
                parts.stream().mapToDouble(part -> LetterWidths.extent(part, lettering.headings())).max().orElse(0));
        List<Entity> entities = new ArrayList<>(shown);
        double y = box.top() + lettering.figures();
        List<String> remarks = remark.isBlank() ? List.of() : Wrap.lines(remark, width, lettering.tables());
        for (int line = remarks.size() - 1; line >= 0; line--) {
            entities.add(text(remarks.get(line), box.left(), y, lettering.tables()));
            y += 1.6 * lettering.tables();
        }
        y += 0.3 * lettering.headings();
        List<String> names = lines(parts, width, lettering.headings());
        for (int line = names.size() - 1; line >= 0; line--) {
            entities.add(text(names.get(line), box.left(), y, lettering.headings()));
            y += 1.5 * lettering.headings();
        }
        return View.around(name, entities);
    }

    /** Parts stay whole: words that tell which side is up stand in one line. */
    private static List<String> lines(List<String> parts, double width, double height) {
        List<String> lines = new ArrayList<>();
        for (String part : parts) {
            String longer = lines.isEmpty() ? part : lines.get(lines.size() - 1) + " " + part;
            if (!lines.isEmpty() && LetterWidths.extent(longer, height) <= width) {
                lines.set(lines.size() - 1, longer);
            } else {
                lines.add(part);
            }
        }
        return lines;
    }

    private static Text text(String words, double x, double y, double height) {
        return Text.level(Layer.TEXT, words, new Point(x, y), height, Anchor.LEFT);
    }
}
