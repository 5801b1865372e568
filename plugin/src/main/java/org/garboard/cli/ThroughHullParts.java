package org.garboard.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.garboard.cli.files.OutputFile;
import org.garboard.cutout.CannotBeBuilt;
import org.garboard.cutout.flush.FlushCut;
import org.garboard.cutout.flush.FlushCutout;
import org.garboard.cutout.part.NamedSolid;
import org.garboard.cutout.part.ThroughHullWish;
import org.garboard.cutout.template.Template;
import org.garboard.drawing.sheets.SheetRefusal;
import org.garboard.drawing.sheets.TemplateCutFile;
import org.garboard.hull.Hull;
import org.garboard.job.Job;
import org.garboard.job.SitingRecord;
import org.garboard.meshfile.ObjFile;
import org.garboard.meshfile.StlFile;
import org.garboard.mount.FlushThroughHull;
import org.garboard.siting.Site;
import org.garboard.skin.FittingRule;

/** The parts of the advised site where its mount goes through the skin: solids and cut files, or why there are none. */
final class ThroughHullParts {
    private final List<OutputFile> files = new ArrayList<>();
    private final List<SheetRefusal> refusals = new ArrayList<>();
    private final List<String> words = new ArrayList<>();

    private Optional<Template> cut = Optional.empty();

    private ThroughHullParts() {
    }

    static ThroughHullParts of(Hull hull, SitingRecord decided) {
        ThroughHullParts parts = new ThroughHullParts();
        Optional<Site> site = decided.advised().filter(siting -> siting.mount() instanceof FlushThroughHull)
            .map(siting -> siting.sites().get(0));
        if (site.isPresent()) {
            try {
                requireNoSleeve(hull, decided.job());
                parts.write(FlushCut.cut(hull, decided.job().transducer(), wish(hull, decided.job(), site.get()), site.get().x(), site.get().y()));
            } catch (CannotBeBuilt refusal) {
                parts.refusals.add(new SheetRefusal("cutout (flush through-hull)", refusal.reason(), refusal.remedy()));
            }
        }
        return parts;
    }

    /** A hole without the sleeve's room in it would bring the two metals together. */
    private static void requireNoSleeve(Hull hull, Job job) throws CannotBeBuilt {
        Optional<FittingRule> rule = job.particulars().skin()
            .map(skin -> new FittingRule(skin.on(hull), job.particulars().transducer().housing(), job.transducer().stemDiameter()));
        if (rule.isPresent() && rule.get().needsSleeve()) {
            throw new CannotBeBuilt("the metal housing needs an isolating sleeve in this metal hull, and the cutout is drawn without one",
                "a plastic housing, or a cutout drawn to the sleeve that the yard makes");
        }
    }

    /** A maker tells the stem from the flange that beds on the skin: the body's height of it is not above the body. */
    private static ThroughHullWish wish(Hull hull, Job job, Site site) {
        OptionalDouble stem = job.particulars().transducer().stemLength().stream()
            .mapToDouble(length -> Math.max(0, length - job.transducer().height())).findFirst();
        return job.particulars().fairing().throughHull().in(SkinAtSite.build(job, hull, site), stem);
    }

    private void write(FlushCutout cutout) {
        cut = Optional.of(cutout.templates().get(0));
        for (NamedSolid part : cutout.solids()) {
            files.add(new OutputFile(part.name() + "_mm.stl", StlFile.of(part.solid())));
            files.add(new OutputFile(part.name() + "_mm.obj", ObjFile.of(part.name(), part.solid())));
        }
        for (Template template : cutout.templates()) {
            files.add(new OutputFile(TemplateCutFile.fileName(template), TemplateCutFile.dxf(template)));
        }
        words.addAll(CutoutWords.lines(cutout));
    }

    /** The outline that is cut through the skin. */
    Optional<Template> cut() {
        return cut;
    }

    List<OutputFile> files() {
        return files;
    }

    List<SheetRefusal> refusals() {
        return refusals;
    }

    /** What the yard has to know beside the files. */
    List<String> words() {
        return words;
    }
}
