package org.garboard.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.garboard.cli.files.InputFault;
import org.garboard.cli.files.OutputRefused;
import org.garboard.cli.files.TableSource;
import org.garboard.drawing.lines.LinesDrawing;
import org.garboard.drawing.lines.LinesWish;
import org.garboard.drawing.sheets.DrawnSet;
import org.garboard.drawing.sheets.Provenance;
import org.garboard.exchange.SurfaceFile;
import org.garboard.hull.Hull;
import org.garboard.job.DrawingWish;
import org.garboard.lines.DrawnLine;
import org.garboard.units.FixedDecimal;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;

/** The lines of the hull: as points, as a drawing, as a picture of their curvature, or the whole surface. */
@Command(
    name = "lines",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    usageHelpWidth = 100,
    customSynopsis = {
        "garboard lines TABLE [--section X ...] [--buttock Y ...] [--waterline Z ...] [--diagonal Z:DEG ...]",
        "                     [--expanded X ...] [--step S] [--surface FILE] [--replace] [--exact] [--threads N]",
        "       garboard lines TABLE --out FILE [--replace] [--section X ...] [--buttock Y ...] [--waterline Z ...]",
        "                     [--diagonal Z:DEG ...] [--units UNITS] [--paper SIZE] [--projection WORD] ...",
        "       garboard lines TABLE --comb LINE --out FILE [--replace] [--units UNITS] [--paper SIZE] ..."},
    description = {
        "Prints sections, buttocks, waterlines and diagonals as CSV, or draws the lines.",
        "%nA row for each point of the starboard side; of the port side for a buttock at a negative distance. Sections "
            + "run from the keel outward, the others from forward aft; a curve that breaks, at a knuckle too, goes on as "
            + "its next branch.",
        "%nWith --out it draws them: profile, half-breadth plan and body plan. Positions that are given take the place of "
            + "the table's stations, buttocks and waterlines. With --comb it draws one line and its curvature.",
        "%nWith --surface it writes the whole surface as B-splines for a CAD kernel.%n"})
final class LinesCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    private TableArgument table;

    @Mixin
    private AskedCurves curves;

    @Mixin
    private DrawingOptions drawing;

    @Option(names = "--comb", paramLabel = "LINE",
        description = "Draw one line with the comb of its curvature: a line of the table by its name (keel, Chine), or "
            + "\"section X\", \"buttock Y\", \"waterline Z\", \"diagonal Z:DEG\". The sheet states the scale of the comb.")
    private String comb;

    @Option(names = "--surface", paramLabel = "FILE",
        description = "Write the poles, knots and degrees of every panel to this file, XML as garboard-surface.xsd "
            + "describes it: starboard, metres, to the last bit.")
    void setSurface(Path surface) {
        if (surface.toString().isEmpty()) {
            throw new ParameterException(spec.commandLine(), "--surface is empty; name a file");
        }
        this.surface = surface;
    }

    @Mixin
    private Replace replace;

    @Mixin
    private Threads threads;

    private Path surface;

    @Override
    public Integer call() throws InputFault {
        refuseWhatDoesNotGoTogether();
        TableSource source = table.read();
        Hull hull = table.hull(source);
        try {
            if (surface != null) {
                replace.file(surface, SurfaceFile.BEGINNING).write(SurfaceFile.write(hull, Version.number(), source.file()));
            }
            if (drawing.out() != null) {
                return (comb == null ? drawLines(source, hull) : drawComb(source, hull)).code();
            }
        } catch (OutputRefused refused) {
            spec.commandLine().getErr().println(refused.getMessage());
            return Exit.USAGE.code();
        }
        return (curves.none() ? Exit.DONE : ended(curves.print(hull, table.name(), spec.commandLine().getOut()))).code();
    }

    private void refuseWhatDoesNotGoTogether() {
        if (curves.none() && surface == null && drawing.out() == null && comb == null) {
            refuse("no curve is asked for; give --section, --buttock, --waterline, --diagonal or --expanded, --out for a "
                + "drawing, or --surface for the whole");
        }
        if (comb != null && drawing.out() == null) {
            refuse("--comb draws; name the file with --out, such as --out comb.svg");
        }
        if (drawing.idle()) {
            refuse("--units, --paper and --projection are of a drawing; name its file with --out");
        }
        if (drawing.out() != null && curves.stepped()) {
            refuse("--step is of the points that are printed as CSV; give it without --out");
        }
        if (comb != null && !curves.none()) {
            refuse("--comb draws its one line alone; give no --section, --buttock, --waterline, --diagonal or --expanded beside it");
        }
        if (drawing.out() != null && !curves.expanded().isEmpty()) {
            refuse("--expanded is printed as CSV and not drawn; give it without --out");
        }
    }

    private void refuse(String message) {
        throw new ParameterException(spec.commandLine(), message);
    }

    private Exit drawLines(TableSource source, Hull hull) throws OutputRefused {
        List<String> misses = curves.misses(hull, table.name());
        if (!misses.isEmpty()) {
            return ended(misses);
        }
        LinesWish wish = new LinesWish(drawing.wish(source.table()), curves.sections(),
            curves.buttocks().stream().map(Math::abs).toList(), curves.waterlines(), curves.diagonals());
        return write(LinesDrawing.lines(source.table(), hull, wish, source.file().name(), provenance(source), drawing.format()));
    }

    private Exit drawComb(TableSource source, Hull hull) throws OutputRefused {
        DrawnLine line = line(hull);
        if (line.on(hull, 1e-2).isEmpty()) {
            return ended(List.of(line.words(x -> FixedDecimal.format(x, 3) + " m") + " misses the hull of " + table.name()));
        }
        DrawingWish wish = drawing.wish(source.table());
        return write(LinesDrawing.comb(source.table(), hull, line, wish, source.file().name(), provenance(source), drawing.format()));
    }

    private DrawnLine line(Hull hull) {
        try {
            return LineName.line(comb, hull);
        } catch (TypeConversionException fault) {
            throw new ParameterException(spec.commandLine(), "Invalid value for option '--comb': " + fault.getMessage());
        }
    }

    private static Provenance provenance(TableSource source) {
        return new Provenance(Version.number(), source.file().sha256());
    }

    private Exit write(DrawnSet drawn) throws OutputRefused {
        if (!drawn.refusals().isEmpty()) {
            drawn.refusals().forEach(refusal -> spec.commandLine().getErr().println("not drawn: " + refusal.message()));
            return Exit.NO;
        }
        replace.file(drawing.out(), LinesDrawing.MARK).write(drawn.drawings().get(0).content());
        return Exit.DONE;
    }

    private Exit ended(List<String> misses) {
        misses.forEach(spec.commandLine().getErr()::println);
        return misses.isEmpty() ? Exit.DONE : Exit.INPUT;
    }
}
