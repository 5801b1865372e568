package org.garboard.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.garboard.cli.files.JobSource;
import org.garboard.cli.files.OutputRefused;
import org.garboard.craft.BottomFeatures;
import org.garboard.craft.RunningSpeed;
import org.garboard.drawing.flow.FlowDrawing;
import org.garboard.drawing.flow.FlowPicture;
import org.garboard.drawing.flow.RunningDiagram;
import org.garboard.drawing.flow.StreamCurves;
import org.garboard.drawing.sheets.DrawnSet;
import org.garboard.drawing.sheets.NamedDrawing;
import org.garboard.drawing.sheets.Provenance;
import org.garboard.drawing.sheets.SheetFormat;
import org.garboard.drawing.water.PlanArea;
import org.garboard.drawing.water.PlanCurve;
import org.garboard.flow.attitude.AtSpeed;
import org.garboard.flow.attitude.Attitude;
import org.garboard.flow.attitude.CraftRunning;
import org.garboard.flow.shadow.Cast;
import org.garboard.flow.shadow.CleanWater;
import org.garboard.flow.shadow.PlanRegion;
import org.garboard.flow.shadow.Shadow;
import org.garboard.flow.steps.AirBehind;
import org.garboard.flow.underway.FloatingWater;
import org.garboard.flow.underway.LayerContour;
import org.garboard.flow.underway.UnderWay;
import org.garboard.flow.underway.UnknownWater;
import org.garboard.flow.underway.WaterUnderWay;
import org.garboard.hull.Hull;
import org.garboard.units.Angle;
import org.garboard.units.FixedDecimal;

/** Pictures of how the water runs along a boat's bottom, one for each speed. */
final class TrimPictures {
    /** Between points of the diagram [kn]. */
    private static final double STEP = 0.5;

    private final JobSource source;
    private final Hull hull;
    private final BottomFeatures features;
    private final Provenance provenance;
    private final Replace replace;

    TrimPictures(JobSource source, Hull hull, BottomFeatures features, String version, Replace replace) {
        this.source = source;
        this.hull = hull;
        this.features = features;
        this.provenance = new Provenance(version, source.table().file().sha256());
        this.replace = replace;
    }

    /** Writes a picture for each speed whose water is known; tells in words which are not drawn and why. */
    List<String> write(Path folder, List<AtSpeed> speeds, WaterUnderWay waters) throws OutputRefused {
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new OutputRefused(folder + ": no folder can be made there");
        }
        List<String> words = new ArrayList<>();
        for (AtSpeed each : speeds) {
            UnderWay water = waters.at(each.middle());
            String knots = FixedDecimal.format(each.speed().knots(), 1);
            FlowPicture picture = picture(each, water, knots);
            if (water.paths().isEmpty() && picture.areas().isEmpty()) {
                words.add("not drawn: flow at " + knots + " kn: " + String.join(" ", water.notes()));
                continue;
            }
            DrawnSet set = FlowDrawing.bottomPlan("flow-" + knots + "kn", source.table().table(), hull, picture,
                source.job().drawing(), source.job().tableFile(), provenance, SheetFormat.SVG);
            set.refusals().forEach(refusal -> words.add("not drawn: " + refusal.message()));
            for (NamedDrawing drawing : set.drawings()) {
                replace.file(folder.resolve(drawing.fileName()), FlowDrawing.MARK).write(drawing.content());
            }
        }
        return words;
    }

    /** Trim and wetted lengths against speed, half a knot apart, up to the fastest of these speeds. */
    List<String> diagram(Path folder, CraftRunning running, List<AtSpeed> speeds) throws OutputRefused {
        List<RunningDiagram.AtKnots> figures = new ArrayList<>();
        double most = speeds.get(speeds.size() - 1).speed().knots();
        for (int i = 1; i <= Math.ceil(most / STEP); i++) {
            double knots = Math.min(most, i * STEP);
            Attitude attitude = running.at(new RunningSpeed("", knots, Optional.empty())).middle();
            Optional<Attitude.Wetted> planes = attitude.carrying();
            figures.add(new RunningDiagram.AtKnots(knots, attitude.knownTrim().map(Angle::degrees).orElse(Double.NaN),
                planes.map(Attitude.Wetted::wettedKeel).orElse(Double.NaN),
                planes.filter(Attitude.Planes.class::isInstance).map(each -> ((Attitude.Planes) each).wettedChine()).orElse(Double.NaN)));
        }
        DrawnSet set = RunningDiagram.draw("running", source.table().table(), hull, figures, source.job().drawing(), source.job().tableFile(), provenance);
        for (NamedDrawing drawing : set.drawings()) {
            replace.file(folder.resolve(drawing.fileName()), FlowDrawing.MARK).write(drawing.content());
        }
        return set.refusals().stream().map(refusal -> "not drawn: " + refusal.message()).toList();
    }

    private FlowPicture picture(AtSpeed each, UnderWay water, String knots) {
        List<PlanCurve> curves = new ArrayList<>();
        water.paths().forEach(path -> curves.add(new PlanCurve(PlanCurve.Kind.STREAMLINE, path.points())));
        if (water instanceof FloatingWater floating) {
            curves.addAll(StreamCurves.sweptDown(floating.sweep()));
            curves.add(new PlanCurve(PlanCurve.Kind.WATERLINE, floating.streams().edge()));
        }
        for (LayerContour contour : water.contours()) {
            curves.add(new PlanCurve(PlanCurve.Kind.LAYER_THICKNESS, contour.points(), "layer " + FixedDecimal.format(contour.thickness() * 1000, 0) + " mm"));
        }
        each.ends().forEach(end -> stagnation(end.attitude(), PlanCurve.Kind.BAND_LINE, curves));
        stagnation(each.middle(), PlanCurve.Kind.STAGNATION_LINE, curves);
        List<Shadow> shadows = new ArrayList<>();
        List<String> notes = new ArrayList<>(water.notes());
        if (water instanceof UnknownWater && !features.laid().isEmpty()) {
            notes.add("Nor are the wakes of what is listed on the bottom known.");
        }
        for (Cast cast : water instanceof UnknownWater ? List.<Cast>of() : water.shadows(features)) {
            if (cast instanceof Shadow shadow) {
                shadows.add(shadow);
                shadow.lost().ifPresent(lost -> notes.add("The wake of " + shadow.feature().name() + " may go on where none is drawn: " + lost + "."));
            } else if (cast instanceof Cast.None none) {
                notes.add(none.feature() + " throws no shadow here: " + none.reason() + ".");
            }
        }
        String trim = each.middle().knownTrim().map(angle -> ", trim " + FixedDecimal.format(angle.degrees(), 1) + " degrees").orElse("");
        return new FlowPicture("At " + knots + " kn" + trim + ", " + each.middle().regime().words() + ", mean weight", curves,
            areas(each.middle(), water, shadows, notes), shadows, notes);
    }

    /** Spray, air behind steps, and what is clean at this attitude. */
    private List<PlanArea> areas(Attitude attitude, UnderWay water, List<Shadow> shadows, List<String> notes) {
        List<PlanArea> areas = new ArrayList<>();
        Optional<Attitude.Wetted> planes = attitude.carrying();
        planes.flatMap(Attitude.Wetted::spray).ifPresent(spray -> bothSides(PlanArea.Kind.SPRAY, spray, "", areas));
        if (planes.isPresent() && planes.get().spray().isEmpty()) {
            notes.add("The spray is thrown ahead and has no edge on the bottom (Savitsky 1964).");
        }
        if (attitude instanceof Attitude.Stepped stepped) {
            for (AirBehind air : stepped.bottom().air()) {
                bothSides(PlanArea.Kind.AIR, air.region(), "air behind step " + air.step() + (air.centreline().isPresent() ? "" : ": its end NOT KNOWN"), areas);
                notes.add("Behind step " + air.step() + ": " + air.note() + ".");
            }
        }
        boolean unknown = shadows.stream().anyMatch(shadow -> shadow.lost().isPresent());
        List<PlanRegion> clean = unknown ? List.of() : CleanWater.of(water.solid(), shadows);
        for (PlanRegion region : clean) {
            areas.add(new PlanArea(PlanArea.Kind.CLEAN, region, region == clean.get(0) ? "clean" : ""));
        }
        return areas;
    }

    private static void bothSides(PlanArea.Kind kind, PlanRegion starboard, String label, List<PlanArea> areas) {
        areas.add(new PlanArea(kind, starboard));
        areas.add(new PlanArea(kind, starboard.mirrored(), label));
    }

    private static void stagnation(Attitude attitude, PlanCurve.Kind kind, List<PlanCurve> curves) {
        attitude.carrying().ifPresent(planes -> curves.add(new PlanCurve(kind, planes.line().points())));
    }
}
