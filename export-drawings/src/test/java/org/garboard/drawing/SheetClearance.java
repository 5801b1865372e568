package org.garboard.drawing;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Proves that a sheet can be read: what overlaps or leaves its frame, each as a sentence. */
public final class SheetClearance {

    /** Lines that a text keeps clear of with all its reserve. */
    private static final Set<Layer> OUTLINES = EnumSet.of(Layer.HULL, Layer.CUT, Layer.POCKET, Layer.HIDDEN, Layer.BORDER);
    /** Lines that run close to words by their nature (under them, up to them), but never through their letters. */
    private static final Set<Layer> THIN_LINES = EnumSet.of(Layer.CENTRE, Layer.ADJACENT, Layer.SECTION, Layer.GRID,
            Layer.WATER, Layer.WAKE, Layer.MARK, Layer.DIM);

    private SheetClearance() {
    }

    /**
     * What is wrong with a sheet's layout.
     *
     * @param frame the line that nothing may cross but the paper's own marks
     */
    public static List<String> faults(Sheet sheet, Box frame) {
        List<String> faults = new ArrayList<>();
        List<Text> texts = Flattened.of(sheet).texts();
        for (int i = 0; i < texts.size(); i++) {
            if (!frame.contains(texts.get(i).bounds())) {
                faults.add("\"" + texts.get(i).words() + "\" leaves the frame");
            }
            for (int j = i + 1; j < texts.size(); j++) {
                if (Ink.meets(texts.get(i).corners(), texts.get(j).corners())) {
                    faults.add("\"" + texts.get(i).words() + "\" overlaps \"" + texts.get(j).words() + "\"");
                }
            }
        }
        throughTexts(sheet, faults);
        for (int i = 0; i < sheet.views().size(); i++) {
            View view = sheet.views().get(i);
            if (!frame.contains(view.frame())) {
                faults.add("view " + view.name() + " leaves the frame");
            }
            for (View other : sheet.views().subList(i + 1, sheet.views().size())) {
                if (view.frame().overlaps(other.frame())) {
                    faults.add("view " + view.name() + " overlaps view " + other.name());
                }
            }
            view.entities().stream().filter(entity -> !view.frame().grownBy(1e-6).contains(entity.bounds()))
                    .forEach(entity -> faults.add("something leaves the view " + view.name() + ": " + entity));
        }
        return faults;
    }

    private static void throughTexts(Sheet sheet, List<String> faults) {
        Flattened drawn = Flattened.of(sheet);
        for (Text text : drawn.texts()) {
            crossed(text, text.corners(), OUTLINES, drawn, faults);
            crossed(text, letters(text), THIN_LINES, drawn, faults);
        }
    }

    private static void crossed(Text text, List<Point> room, Set<Layer> layers, Flattened drawn, List<String> faults) {
        for (Layer layer : layers) {
            if (drawn.on(layer).stream().filter(entity -> !(entity instanceof Text))
                    .flatMap(entity -> Ink.of(entity).stream()).anyMatch(figure -> Ink.meets(room, figure))) {
                faults.add("\"" + text.words() + "\" is crossed by a line of " + layer);
            }
        }
    }

    /** The capitals alone, without the reserve for other faces. */
    private static List<Point> letters(Text text) {
        double half = text.extent() / LetterWidths.RESERVE / 2;
        Point start = text.middle().towards(text.rotationDeg(), -half).towards(text.rotationDeg() - 90, text.height() / 2);
        Point end = start.towards(text.rotationDeg(), 2 * half);
        return List.of(start, end, end.towards(text.rotationDeg() + 90, text.height()),
                start.towards(text.rotationDeg() + 90, text.height()));
    }
}
