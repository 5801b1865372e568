package org.garboard.drawing.sheets;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.garboard.cutout.Pocket;
import org.garboard.cutout.made.PartsMade;
import org.garboard.drawing.Sheet;
import org.garboard.drawing.dxf.CutDxf;
import org.garboard.drawing.layout.DoesNotFit;
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
        SheetSet set = new SheetSet();
        set.sheet("sheet-1-siting", "sheet 1 (siting)", task, SitingSheet::new);
        if (record.advised().isPresent()) {
            set.sheet("sheet-2-marking-out", "sheet 2 (marking out)", task, MarkingSheet::new);
        }
        record.pocket().ifPresent(pocket -> {
            set.sheet("sheet-4-pocket", "sheet 4 (pocket)", task, PocketSheet::new);
            set.cutFile(pocket);
        });
        if (CutTask.isWanted(made)) {
            set.sheet("sheet-4-cutout", "sheet 4 (cutout)", task, CutoutSheet::new);
        }
        if (BlockTask.isWanted(made)) {
            set.sheet("sheet-5-blocks", "sheet 5 (blocks)", task, BlockSheet::new);
        }
        if (record.advised().isPresent()) {
            set.sheet("sheet-7-check", "sheet 7 (check)", task, CheckSheet::new);
        }
        set.templates(task);
        set.inOneFile(record.job().drawing().date());
        return new DrawnSet(set.drawings, set.refusals);
    }

    private void sheet(String file, String called, SheetTask task, SheetSetter.Maker<SheetTask> maker) {
        try {
            List<Sheet> pages = SheetSetter.pages(task, maker);
            sheets.addAll(pages);
            for (int i = 0; i < pages.size(); i++) {
                for (SheetFormat format : SheetFormat.values()) {
                    drawings.add(format.drawing(i == 0 ? file : file + "-page-" + (i + 1), pages.get(i)));
                }
            }
        } catch (DoesNotFit refusal) {
            refusals.add(new SheetRefusal(called, refusal.reason(), refusal.remedy()));
        }
    }

    private void inOneFile(String issued) {
        if (!sheets.isEmpty()) {
            drawings.add(new NamedDrawing("set.pdf", SheetPdf.write(sheets, issued)));
        }
    }

    private void templates(SheetTask task) {
        List<TemplateShape> shapes = new ArrayList<>(task.made().templates().stream().map(template -> PaperTemplate.of(task, template)).toList());
        task.record().pocket().ifPresent(pocket -> shapes.add(PaperTemplate.of(task, pocket)));
        if (shapes.isEmpty() || !refusals.isEmpty()) {
            return;
        }
        for (TilePaper paper : TilePaper.values()) {
            drawings.add(new NamedDrawing("template-" + paper.words() + ".pdf",
                    SheetPdf.write(shapes.stream().flatMap(shape -> TemplatePages.of(shape, paper).stream()).toList(), task.drawing().date())));
        }
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
