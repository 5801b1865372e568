package org.garboard.drawing.dxf;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.garboard.drawing.dxf.DxfTags.Part;
import org.garboard.drawing.dxf.DxfTags.Tag;

/** What a cut file must hold and must not; each broken rule is a sentence. */
public final class CutDxfRules {

    private static final List<String> SECTIONS = List.of("HEADER", "TABLES", "BLOCKS", "ENTITIES", "EOF");
    private static final List<String> LAYERS = List.of("CUT_OUTER", "CUT_INNER", "DRILL", "MARK");
    private static final Set<String> ALLOWED = Set.of("LINE", "CIRCLE", "POLYLINE", "VERTEX", "SEQEND");
    /** Subclass marks, owners, pen widths: not of this version. */
    private static final Set<Integer> LATER_CODES = Set.of(100, 330, 370);

    private CutDxfRules() {
    }

    public static List<String> broken(byte[] file) {
        DxfTags tags = DxfTags.of(file);
        List<String> broken = DxfRules.broken(file);
        DxfRules.expect(tags, "$ACADVER", "AC1009", broken);
        require(tags.sectionNames().equals(SECTIONS), "sections are " + tags.sectionNames(), broken);
        require(tags.section("BLOCKS").isEmpty(), "a cut file has no blocks", broken);
        require(tags.names("LAYER").equals(LAYERS), "layers are " + tags.names("LAYER"), broken);
        for (Tag tag : tags.all()) {
            require(!LATER_CODES.contains(tag.code()), "code " + tag.code() + " is not of this version", broken);
        }
        for (Part entity : tags.section("ENTITIES")) {
            require(ALLOWED.contains(entity.type()), entity.type() + " is not for a cut file", broken);
        }
        for (List<double[]> contour : contours(tags, broken)) {
            contour(contour, broken);
        }
        return broken;
    }

    private static void require(boolean held, String sentence, List<String> broken) {
        if (!held) {
            broken.add(sentence);
        }
    }

    private static List<List<double[]>> contours(DxfTags tags, List<String> broken) {
        List<List<double[]>> contours = new ArrayList<>();
        for (Part part : tags.section("ENTITIES")) {
            if (part.type().equals("POLYLINE")) {
                contours.add(new ArrayList<>());
                require(part.get(70).equals("1"), "an outline is open", broken);
                require(part.has(66, "1"), "POLYLINE does not announce its vertices", broken);
            } else if (part.type().equals("VERTEX")) {
                contours.get(contours.size() - 1).add(new double[] {part.number(10), part.number(20)});
            }
        }
        return contours;
    }

    private static void contour(List<double[]> contour, List<String> broken) {
        for (int i = 0; i < contour.size(); i++) {
            double[] a = contour.get(i);
            double[] b = contour.get((i + 1) % contour.size());
            require(Math.hypot(b[0] - a[0], b[1] - a[1]) > 1e-4, "an outline stands still at vertex " + i, broken);
        }
    }
}
