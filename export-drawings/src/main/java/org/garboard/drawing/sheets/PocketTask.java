package org.garboard.drawing.sheets;

import java.util.List;
import org.garboard.craft.Transducer;
import org.garboard.cutout.Pocket;
import org.garboard.cutout.PocketSection;
import org.garboard.drawing.Scale;
import org.garboard.drawing.layout.Lettering;

/** A pocket, the body that goes into it, and how both are drawn at one scale. */
record PocketTask(Pocket pocket, Transducer body, PocketOnPaper paper, Figures figures, Lettering lettering) {

    static PocketTask of(SheetTask task, Scale scale) {
        Pocket pocket = task.record().pocket().orElseThrow();
        return new PocketTask(pocket, task.job().transducer(), new PocketOnPaper(pocket, scale), task.figures(),
                task.lettering());
    }

    /** Whether its middle lies on the keel line. */
    boolean athwartKeel() {
        return pocket.site().getY() == 0;
    }

    /** "350 to port of CL"; empty on it. */
    String aside() {
        double y = pocket.site().getY();
        return athwartKeel() ? "" : figures.length(Math.abs(y)) + (y < 0 ? " to port of CL" : " to starboard of CL");
    }

    double letter() {
        return lettering.figures();
    }

    /** Whether the body's outline can be told from the pocket's on paper. */
    boolean bodyStandsClear() {
        return paper.paper((pocket.length() - body.length()) / 2) > 1;
    }

    /** First dimension line from the outline [mm], and the next ones from it. */
    double firstRow() {
        return 10;
    }

    double nextRow() {
        return 2.2 * letter();
    }

    PocketSection longSection() {
        return pocket.sections().stream().filter(PocketTask::lengthwise).findFirst().orElseThrow();
    }

    static boolean lengthwise(PocketSection section) {
        return section.name().equals("LONG");
    }

    /** The cross sections that are drawn: all, or the middle one alone where their marks would stand on each other. */
    List<PocketSection> crossSections() {
        List<PocketSection> all = pocket.sections().stream().filter(section -> !lengthwise(section)).toList();
        double nearest = all.stream().filter(section -> section != middleSection())
                .mapToDouble(section -> paper.paper(Math.abs(section.along() - middleSection().along()))).min()
                .orElse(Double.POSITIVE_INFINITY);
        return nearest < 3.2 * letter() ? List.of(middleSection()) : all;
    }

    /** The cross section through the pocket's middle. */
    PocketSection middleSection() {
        return pocket.sections().stream().filter(section -> !lengthwise(section))
                .min((a, b) -> Double.compare(Math.abs(a.along()), Math.abs(b.along()))).orElseThrow();
    }

    /** "285 forward of the middle". */
    String whereabouts(PocketSection section) {
        if (Math.abs(section.along()) < 1e-4) {
            return "through the middle of the pocket";
        }
        return figures.bench(Math.abs(section.along())) + (section.along() < 0 ? " forward of" : " aft of") + " the middle";
    }
}
