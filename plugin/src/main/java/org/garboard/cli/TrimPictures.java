package org.garboard.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.garboard.cli.files.JobSource;
import org.garboard.cli.files.OutputRefused;
import org.garboard.cli.files.SingleFile;
import org.garboard.craft.BottomFeatures;
import org.garboard.craft.RunningSpeed;
import org.garboard.drawing.flow.FlowDrawing;
import org.garboard.drawing.flow.FlowPicture;
import org.garboard.drawing.flow.PlanCurve;
import org.garboard.drawing.flow.RunningDiagram;
import org.garboard.drawing.flow.StreamCurves;
import org.garboard.drawing.sheets.DrawnSet;
import org.garboard.drawing.sheets.NamedDrawing;
import org.garboard.drawing.sheets.Provenance;
import org.garboard.drawing.sheets.SheetFormat;
import org.garboard.flow.attitude.AtSpeed;
import org.garboard.flow.attitude.Attitude;
import org.garboard.flow.attitude.CraftRunning;
import org.garboard.flow.shadow.Cast;
import org.garboard.flow.shadow.Shadow;
import org.garboard.flow.underway.FloatingWater;
import org.garboard.flow.underway.LayerContour;
import org.garboard.flow.underway.UnderWay;
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

    TrimPictures(JobSource source, Hull hull, BottomFeatures features, String version) {
        this.source = source;
        this.hull = hull;
        this.features = features;
        this.provenance = new Provenance(version, source.table().file().sha256());
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
            if (water.paths().isEmpty()) {
                words.add("not drawn: flow at " + knots + " kn: " + String.join(" ", water.notes()));
                continue;
            }
            DrawnSet set = FlowDrawing.bottomPlan("flow-" + knots + "kn", source.table().table(), hull, picture(each, water, knots),
                source.job().drawing(), source.job().tableFile(), provenance, SheetFormat.SVG);
            set.refusals().forEach(refusal -> words.add("not drawn: " + refusal.message()));
            for (NamedDrawing drawing : set.drawings()) {
                new SingleFile(folder.resolve(drawing.fileName()), FlowDrawing.MARK).write(drawing.content());
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
            Optional<Attitude.Wetted> planes = attitude instanceof Attitude.Stepped stepped ? stepped.forward()
                : attitude instanceof Attitude.Wetted each ? Optional.of(each) : Optional.empty();
            figures.add(new RunningDiagram.AtKnots(knots, attitude.knownTrim().map(Angle::degrees).orElse(Double.NaN),
                planes.map(Attitude.Wetted::wettedKeel).orElse(Double.NaN),
                planes.filter(Attitude.Planes.class::isInstance).map(each -> ((Attitude.Planes) each).wettedChine()).orElse(Double.NaN)));
        }
        DrawnSet set = RunningDiagram.draw("running", source.table().table(), hull, figures, source.job().drawing(), source.job().tableFile(), provenance);
        for (NamedDrawing drawing : set.drawings()) {
            new SingleFile(folder.resolve(drawing.fileName()), FlowDrawing.MARK).write(drawing.content());
        }
        return set.refusals().stream().map(refusal -> "not drawn: " + refusal.message()).toList();
    }

    private FlowPicture picture(AtSpeed each, UnderWay water, String knots) {
        List<PlanCurve> curves = new ArrayList<>();
        water.paths().forEach(path -> curves.add(new PlanCurve(PlanCurve.Kind.STREAMLINE, path.points())));
        if (water instanceof FloatingWater floating) {
            curves.addAll(StreamCurves.sweptDown(floating.sweep()));
        }
        for (LayerContour contour : water.contours()) {
            curves.add(new PlanCurve(PlanCurve.Kind.LAYER_THICKNESS, contour.points(), "layer " + FixedDecimal.format(contour.thickness() * 1000, 0) + " mm"));
        }
        each.ends().forEach(end -> stagnation(end.attitude(), PlanCurve.Kind.BAND_LINE, curves));
        stagnation(each.middle(), PlanCurve.Kind.STAGNATION_LINE, curves);
        List<Shadow> shadows = new ArrayList<>();
        List<String> notes = new ArrayList<>(water.notes());
        for (Cast cast : water.shadows(features, source.job().features().orElse(List.of()))) {
            if (cast instanceof Shadow shadow) {
                shadows.add(shadow);
            } else if (cast instanceof Cast.None none) {
                notes.add(none.feature() + " throws no shadow here: " + none.reason() + ".");
            }
        }
        String trim = each.middle().knownTrim().map(angle -> ", trim " + FixedDecimal.format(angle.degrees(), 1) + " degrees").orElse("");
        return new FlowPicture("At " + knots + " kn" + trim + ", " + each.middle().regime().words() + ", mean weight", curves, shadows, notes);
    }

    private static void stagnation(Attitude attitude, PlanCurve.Kind kind, List<PlanCurve> curves) {
        if (attitude instanceof Attitude.Wetted planes) {
            curves.add(new PlanCurve(kind, planes.line().points()));
        } else if (attitude instanceof Attitude.Stepped stepped) {
            stepped.forward().ifPresent(planes -> curves.add(new PlanCurve(kind, planes.line().points())));
        }
    }
}
