package org.garboard.drawing.sheets;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.garboard.cutout.Pocket;
import org.garboard.cutout.made.PartsMade;
import org.garboard.drawing.Sheet;
import org.garboard.drawing.dxf.CutDxf;
import org.garboard.drawing.pdf.SheetPdf;
import org.garboard.drawing.template.TemplatePages;
import org.garboard.drawing.template.TemplateShape;
import org.garboard.drawing.template.TilePaper;
import org.garboard.hull.Hull;
import org.garboard.job.SitingRecord;
import org.garboard.mount.water.BottomWater;
import org.garboard.offsets.HullOffsets;

/**
 * The set of drawings of one job: {@code sheet-1-siting.dxf} and {@code .svg} always, {@code sheet-2-marking-out} where
 * a place is advised; where the skin is cut through {@code sheet-4-cutout}; where a pocket is built {@code sheet-4-pocket}, its template on A4 and Letter and the cut file
 * {@code pocket-outside-up_mm_1to1.dxf}; all sheets once more in {@code set.pdf}. What is to be looked at before cutting
 * and measured after it stands on the sheets, so where one of them cannot be drawn there is nothing to cut by.
 */
public final class SheetSet {
    private final List<NamedDrawing> drawings = new ArrayList<>();
    private final List<Sheet> sheets = new ArrayList<>();
    private final List<SheetRefusal> refusals = new ArrayList<>();

    private SheetSet() {
    }

    /** Draws the set where nothing but a pocket is cut. The same input gives the same bytes. */
    public static DrawnSet draw(SitingRecord record, HullOffsets table, Hull hull, Provenance provenance) {
        return draw(record, table, hull, provenance, PartsMade.NONE, BottomWater.UNTOLD);
    }

    /**
     * Draws the set. The same input gives the same bytes.
     *
     * @param made for the advised mount, where it is no pocket
     * @param water that the places were judged by
     */
    public static DrawnSet draw(SitingRecord record, HullOffsets table, Hull hull, Provenance provenance, PartsMade made, BottomWater water) {
        SheetTask task = new SheetTask(record, made, SitingWater.of(water), table, hull, provenance);
        List<WantedSheet> wanted = wanted(record, made);
        List<WantedSheet.Drawn> drawn = wanted.parallelStream().map(sheet -> sheet.on(task)).toList();
        SheetSet set = new SheetSet();
        drawn.forEach(set::take);
        record.pocket().ifPresent(set::cutFile);
        set.papers(task);
        return new DrawnSet(set.drawings, set.refusals);
    }

    private static List<WantedSheet> wanted(SitingRecord record, PartsMade made) {
        List<WantedSheet> wanted = new ArrayList<>(List.of(new WantedSheet("sheet-1-siting", "sheet 1 (siting)", SitingSheet::new)));
        if (record.advised().isPresent()) {
            wanted.add(new WantedSheet("sheet-2-marking-out", "sheet 2 (marking out)", MarkingSheet::new));
        }
        if (record.pocket().isPresent()) {
            wanted.add(new WantedSheet("sheet-4-pocket", "sheet 4 (pocket)", PocketSheet::new));
        }
        if (CutTask.isWanted(made)) {
            wanted.add(new WantedSheet("sheet-4-cutout", "sheet 4 (cutout)", CutoutSheet::new));
        }
        if (BlockTask.isWanted(made)) {
            wanted.add(new WantedSheet("sheet-5-blocks", "sheet 5 (blocks)", BlockSheet::new));
        }
        if (record.advised().isPresent()) {
            wanted.add(new WantedSheet("sheet-7-check", "sheet 7 (check)", CheckSheet::new));
        }
        return wanted;
    }

    private void take(WantedSheet.Drawn sheet) {
        sheets.addAll(sheet.pages());
        drawings.addAll(sheet.files());
        sheet.refusal().ifPresent(refusals::add);
    }

    /** Templates, and all sheets in one file. */
    private void papers(SheetTask task) {
        Map<String, List<Sheet>> papers = new LinkedHashMap<>(templates(task));
        if (!sheets.isEmpty()) {
            papers.put("set.pdf", sheets);
        }
        drawings.addAll(List.copyOf(papers.entrySet()).parallelStream()
            .map(paper -> new NamedDrawing(paper.getKey(), SheetPdf.write(paper.getValue(), task.drawing().date()))).toList());
    }

    private Map<String, List<Sheet>> templates(SheetTask task) {
        List<TemplateShape> shapes = new ArrayList<>(task.templates().stream().map(template -> PaperTemplate.of(task, template)).toList());
        task.record().pocket().ifPresent(pocket -> shapes.add(PaperTemplate.of(task, pocket)));
        Map<String, List<Sheet>> papers = new LinkedHashMap<>();
        if (!shapes.isEmpty() && refusals.isEmpty()) {
            for (TilePaper paper : TilePaper.values()) {
                papers.put("template-" + paper.words() + ".pdf", shapes.stream().flatMap(shape -> TemplatePages.of(shape, paper).stream()).toList());
            }
        }
        return papers;
    }

    private void cutFile(Pocket pocket) {
        if (refusals.isEmpty()) {
            drawings.add(new NamedDrawing("pocket-outside-up_mm_1to1.dxf", cutDxf(pocket)));
        } else {
            refusals.add(new SheetRefusal("template and cut file (pocket)", "the cautions and check measurements that belong to them stand "
                    + "on sheets that could not be drawn", "what works for those works for these"));
        }
    }

    private static byte[] cutDxf(Pocket pocket) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            CutDxf.write(PocketCutFile.of(pocket), out);
        } catch (IOException e) {
            throw new UncheckedIOException("a cut file could not be written to memory", e);
        }
        return out.toByteArray();
    }
}
