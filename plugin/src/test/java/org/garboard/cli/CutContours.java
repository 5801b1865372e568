package org.garboard.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.garboard.cutout.FlatPoint;
import org.garboard.cutout.Pocket;
import org.garboard.cutout.made.PartsMade;
import org.garboard.cutout.template.Template;
import org.garboard.drawing.sheets.NamedDrawing;
import org.garboard.drawing.sheets.TemplateCutFile;
import org.garboard.job.SitingRecord;

/** Cut files beside the outlines of the core that they are to cut: each closed contour as long, to 0.05 mm. */
final class CutContours {
    private static final double WITHIN = 0.05;

    private CutContours() {
    }

    /**
     * Writes the cut files of a boat's templates.
     *
     * @param contours gets their contours: file, layer and length as the core has them [mm]
     */
    static List<Path> written(Path folder, String boat, SitingRecord decided, PartsMade made, List<NamedDrawing> set, List<String> contours) throws IOException {
        List<Path> files = new ArrayList<>();
        for (Template template : Stream.concat(made.templates().stream(), decided.pocket().stream().flatMap(pocket -> pocket.templates().stream())).toList()) {
            Path file = Files.write(folder.resolve(boat + "-" + TemplateCutFile.fileName(template)), TemplateCutFile.dxf(template));
            files.add(file);
            String name = file.getFileName().toString();
            contours.add(name + " CUT_OUTER closed " + length(template.outline()));
            template.openings().forEach(opening -> contours.add(name + " CUT_INNER closed " + length(opening)));
            template.holes().forEach(hole -> contours.add(name + " DRILL closed " + 1000 * Math.PI * hole.diameter()));
        }
        if (decided.pocket().isPresent()) {
            Pocket pocket = decided.pocket().orElseThrow();
            NamedDrawing drawing = set.stream().filter(one -> one.fileName().endsWith("_mm_1to1.dxf")).findFirst().orElseThrow();
            Path file = Files.write(folder.resolve(boat + "-" + drawing.fileName()), drawing.content());
            files.add(file);
            contours.add(file.getFileName() + " CUT_OUTER closed "
                + length(pocket.details().hullCut().isEmpty() ? pocket.developedOpening() : pocket.details().hullCut().flat()));
        }
        return files;
    }

    private static double length(List<FlatPoint> ring) {
        double sum = 0;
        for (int i = 0; i < ring.size(); i++) {
            FlatPoint next = ring.get((i + 1) % ring.size());
            sum += Math.hypot(next.u() - ring.get(i).u(), next.v() - ring.get(i).v());
        }
        return 1000 * sum;
    }

    /** The same contours, in any order. */
    static void assertSame(List<String> expected, List<String> found) {
        List<String[]> wanted = sorted(expected);
        List<String[]> read = sorted(found);
        assertEquals(expected.size(), found.size(), found.toString());
        for (int i = 0; i < wanted.size(); i++) {
            String[] one = wanted.get(i);
            assertEquals(List.of(one).subList(0, 3), List.of(read.get(i)).subList(0, 3));
            assertEquals(Double.parseDouble(one[3]), Double.parseDouble(read.get(i)[3]), WITHIN, one[0] + " " + one[1]);
        }
    }

    private static List<String[]> sorted(List<String> lines) {
        return lines.stream().map(line -> line.split(" ")).sorted(Comparator.<String[], String>comparing(cells -> cells[0] + cells[1])
            .thenComparing(cells -> Double.parseDouble(cells[3]))).toList();
    }
}
