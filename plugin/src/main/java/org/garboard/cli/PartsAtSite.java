package org.garboard.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.garboard.cli.files.OutputFile;
import org.garboard.craft.BottomFeatures;
import org.garboard.craft.Craft;
import org.garboard.cutout.CannotBeBuilt;
import org.garboard.cutout.Pocket;
import org.garboard.cutout.fairing.FairingCut;
import org.garboard.cutout.fairing.FairingWish;
import org.garboard.cutout.flush.FlushCut;
import org.garboard.cutout.inhull.BathCut;
import org.garboard.cutout.inhull.BathWish;
import org.garboard.cutout.made.PartsMade;
import org.garboard.cutout.part.NamedSolid;
import org.garboard.cutout.part.ThroughHullWish;
import org.garboard.cutout.template.Template;
import org.garboard.cutout.transom.BracketCut;
import org.garboard.cutout.transom.BracketWish;
import org.garboard.drawing.sheets.SheetRefusal;
import org.garboard.drawing.sheets.TemplateCutFile;
import org.garboard.hull.Hull;
import org.garboard.job.Job;
import org.garboard.job.SitingRecord;
import org.garboard.meshfile.ObjFile;
import org.garboard.meshfile.StlFile;
import org.garboard.mount.FairedThroughHull;
import org.garboard.mount.FlushThroughHull;
import org.garboard.mount.InHull;
import org.garboard.mount.Mount;
import org.garboard.mount.TransomMount;
import org.garboard.mount.water.FlowAsked;
import org.garboard.mount.water.RunningWater;
import org.garboard.siting.MountSiting;
import org.garboard.siting.PlanPoint;
import org.garboard.siting.Site;
import org.garboard.skin.FittingRule;
import org.garboard.skin.SurveyedSkin;

/** The parts of the advised site, whatever its mount: made, or why there are none. */
final class PartsAtSite {
    private final Hull hull;
    private final Job job;
    private final BottomFeatures features;
    private final FairingWish fairing;
    private final RunningWater running;
    private final List<SheetRefusal> refusals = new ArrayList<>();

    private PartsMade made = PartsMade.NONE;
    private Optional<Pocket> pocket = Optional.empty();

    private PartsAtSite(Hull hull, Job job, BottomFeatures features, RunningWater running) {
        this.hull = hull;
        this.running = running;
        this.job = job;
        this.features = features;
        this.fairing = job.particulars().fairing();
    }

    static PartsAtSite of(Hull hull, SitingRecord decided, RunningWater running) {
        PartsAtSite parts = new PartsAtSite(hull, decided.job(), decided.features(), running);
        parts.pocket = decided.pocket();
        decided.advised().ifPresent(parts::make);
        return parts;
    }

    /** The parts at any place, whether or not it serves. */
    static PartsAtSite at(Hull hull, Job job, RunningWater running, Mount mount, PlanPoint place) throws CannotBeBuilt {
        PartsAtSite parts = new PartsAtSite(hull, job, BottomFeatures.on(hull, job.features()), running);
        parts.made = parts.made(mount, place);
        return parts;
    }

    private void make(MountSiting advised) {
        try {
            Site site = advised.sites().get(0);
            made = made(advised.mount(), new PlanPoint(site.x(), site.y()));
        } catch (CannotBeBuilt refusal) {
            refusals.add(new SheetRefusal("parts (" + advised.mount().words() + ")", refusal.reason(), refusal.remedy()));
        }
    }

    private PartsMade made(Mount mount, PlanPoint place) throws CannotBeBuilt {
        if (mount instanceof FlushThroughHull) {
            return PartsMade.of(FlushCut.cut(hull, job.transducer(), wish(place), place.x(), place.y()));
        }
        if (mount instanceof FairedThroughHull) {
            double clear = FlowAsked.clearHeight(running.speeds(), job.particulars().limits(), place.x(), place.y());
            return PartsMade.of(FairingCut.cut(hull, job.transducer(), fairing.through(wish(place)), clear,
                place.x(), place.y()));
        }
        if (mount instanceof InHull) {
            return PartsMade.of(BathCut.cut(hull, job.transducer(), BathWish.of(SkinAtSite.build(job, hull, place)), place.x(), place.y()));
        }
        if (mount instanceof TransomMount) {
            BracketWish wish = BracketWish.of(job.particulars().skin().map(SurveyedSkin::material), job.particulars().bracket(),
                job.particulars().fairing().throughHull().chord());
            return PartsMade.of(BracketCut.cut(hull, job.transducer(), wish, features, job.particulars().craft().map(Craft::drive), place.y()));
        }
        return PartsMade.NONE;
    }

    /** A maker tells the stem from the flange that beds on the skin: the body's height of it is not above the body. */
    private ThroughHullWish wish(PlanPoint place) {
        OptionalDouble stem = job.particulars().transducer().stemLength().stream()
            .mapToDouble(length -> Math.max(0, length - job.transducer().height())).findFirst();
        boolean sleeved = job.particulars().skin()
            .map(skin -> new FittingRule(skin.on(hull), job.particulars().transducer().housing(), job.transducer().stemDiameter()))
            .filter(FittingRule::needsSleeve).isPresent();
        return fairing.throughHull().in(SkinAtSite.build(job, hull, place), stem)
            .sleeved(sleeved ? FittingRule.SLEEVE_WALL : 0);
    }

    PartsMade made() {
        return made;
    }

    /** Solids as STL and OBJ, templates as cut files. */
    List<OutputFile> files() {
        List<OutputFile> files = new ArrayList<>();
        for (NamedSolid part : Stream.concat(pocket.stream().flatMap(one -> one.solids().stream()), made.solids().stream()).toList()) {
            files.add(new OutputFile(part.name() + "_mm.stl", StlFile.of(part.solid())));
            files.add(new OutputFile(part.name() + "_mm.obj", ObjFile.of(part.name(), part.solid())));
        }
        for (Template template : templates()) {
            files.add(new OutputFile(TemplateCutFile.fileName(template), TemplateCutFile.dxf(template)));
        }
        return files;
    }

    private List<Template> templates() {
        return Stream.concat(pocket.stream().flatMap(one -> one.templates().stream()), made.templates().stream()).toList();
    }

    List<SheetRefusal> refusals() {
        return refusals;
    }

    /** What the yard has to know beside the files. */
    List<String> words() {
        List<String> lines = new ArrayList<>();
        made.flush().ifPresent(cutout -> lines.addAll(CutoutWords.lines(cutout)));
        made.fairing().ifPresent(block -> lines.addAll(FairingWords.lines(block, job)));
        made.bath().ifPresent(bath -> lines.addAll(BathWords.lines(bath, job.particulars().skin().isPresent())));
        made.bracket().ifPresent(bracket -> lines.addAll(BracketWords.lines(bracket, job)));
        lines.addAll(CutoutWords.templates(templates()));
        pocket.ifPresent(one -> lines.addAll(PocketWords.lines(one)));
        return lines;
    }
}
