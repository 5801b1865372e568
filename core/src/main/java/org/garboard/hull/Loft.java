package org.garboard.hull;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.garboard.offsets.HullOffsets;
import org.garboard.offsets.StationRun;
import org.garboard.offsets.StepLine;
import org.garboard.units.FixedDecimal;

/** From a table to a hull: each length lofted by its own stations, ending at the faces that the table gives. */
final class Loft {
    /** How far apart steps are looked at [m]. */
    private static final double LOOKS = 0.05;
    private static final double SAME = 1e-6;

    private final HullOffsets table;
    private final List<StationRun> runs;
    private final List<LengthLoft> lofts;
    private final double within;

    private Loft(HullOffsets table, List<LengthLoft> lofts, double within) {
        this.table = table;
        this.runs = table.lengths();
        this.lofts = lofts;
        this.within = within;
    }

    static Hull through(HullOffsets table) {
        return new Loft(table, parts(table).stream().map(LengthLoft::through).toList(), 0).hull();
    }

    /** A length of two stations is straight along, and goes through its points. */
    static Hull within(HullOffsets table) {
        boolean fairs = table.leastCount() > 0 && parts(table).stream().anyMatch(part -> part.stations().size() > 2);
        return new Loft(table, parts(table).stream().map(part -> fairs && part.stations().size() > 2
            ? LengthLoft.within(part) : LengthLoft.through(part)).toList(), fairs ? table.leastCount() / 2 : 0).hull();
    }

    private static List<HullOffsets> parts(HullOffsets table) {
        return table.lengths().stream().map(table::part).toList();
    }

    private Hull hull() {
        List<PlanFace> faces = new ArrayList<>();
        for (int i = 0; i + 1 < lofts.size(); i++) {
            faces.add(stepFace(i));
        }
        LengthLoft last = lofts.get(lofts.size() - 1);
        EndFace transom = table.ends().transom().<EndFace>map(outline -> EndFaces.transom(outline, last))
            .orElseGet(() -> PlanFace.square(last.end()));
        List<HullLength> lengths = new ArrayList<>();
        List<List<HullLine>> lines = new ArrayList<>();
        for (int i = 0; i < lofts.size(); i++) {
            EndFace fore = i == 0 ? bow() : faces.get(i - 1);
            EndFace aft = i < faces.size() ? faces.get(i) : transom;
            List<HullLine> drawn = lofts.get(i).lines(fore, aft);
            lines.add(drawn);
            lengths.add(new HullLength(lofts.get(i).panels(drawn, fore, aft)));
        }
        List<Step> steps = IntStream.range(0, faces.size())
            .mapToObj(i -> step(i, faces.get(i), lengths)).toList();
        List<HullLine> joined = IntStream.range(0, lines.get(0).size())
            .mapToObj(l -> HullLine.joined(lines.stream().map(each -> each.get(l)).toList())).toList();
        return new Hull(lengths, joined, steps, within);
    }

    private EndFace bow() {
        LengthLoft first = lofts.get(0);
        return table.ends().stem().<EndFace>map(outline -> EndFaces.stem(outline, first))
            .orElseGet(() -> PlanFace.square(Math.nextDown(first.start())));
    }

    private PlanFace stepFace(int length) {
        Optional<StepLine> line = table.ends().step(runs.get(length).to());
        LengthLoft forward = lofts.get(length);
        return line.map(each -> EndFaces.step(each, forward)).orElseGet(() -> PlanFace.square(forward.end()));
    }

    private Step step(int i, PlanFace face, List<HullLength> lengths) {
        Step step = new Step(table.stations().get(runs.get(i).to() - 1).name(), face, lengths.get(i), lengths.get(i + 1),
            lofts.get(i).bottomEdge(face));
        for (double y : step.halfBreadths(LOOKS)) {
            if (step.height(y) < -(2 * within + SAME)) {
                throw HullNotDrawn.end("the step at station " + step.name() + " goes the wrong way "
                    + FixedDecimal.format(y, 3) + " m from the centreline, at x = " + FixedDecimal.format(step.x(y), 3)
                    + " m: there the skin abaft of it is drawn " + FixedDecimal.format(-1000 * step.height(y), 1)
                    + " mm below the skin ahead of it, and would catch the water; compare both faces' stations there");
            }
        }
        return step;
    }
}
