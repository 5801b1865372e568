package org.garboard.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.garboard.cli.files.InputFault;
import org.garboard.cli.files.OutputRefused;
import org.garboard.cli.files.TableSource;
import org.garboard.cli.print.Csv;
import org.garboard.cli.print.TextTable;
import org.garboard.cli.print.TurnsReport;
import org.garboard.drawing.pdf.SheetPdf;
import org.garboard.drawing.worksheet.Worksheet;
import org.garboard.hull.Fit;
import org.garboard.craft.StrakeOffSkin;
import org.garboard.hull.Hull;
import org.garboard.hull.HullLine;
import org.garboard.hull.UnsureStretch;
import org.garboard.lines.ExpandedSection;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.HullOffsets;
import org.garboard.offsets.OffsetTable;
import org.garboard.offsets.SkinSurface;
import org.garboard.offsets.Station;
import org.garboard.offsets.TableLine;
import org.garboard.slips.SlipSearch;
import org.garboard.tablefile.SlipReport;
import org.garboard.units.FixedDecimal;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What a table of offsets holds, or everything that is wrong with it. */
@Command(
    name = "table",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    usageHelpWidth = 100,
    customSynopsis = {
        "garboard table TABLE [--csv] [--exact] [--threads N]",
        "       garboard table --worksheet FILE.pdf [--replace]"},
    description = {
        "Reads a table of offsets and tells what it holds and which cells are likely slips, or lists its faults.",
        "%nPrints stations with their distances, lines, panels of the skin, and girth and deadrise at each "
            + "station; how the rows bend; then each cell that does not go with the cells around it but would if a foot, an inch, some "
            + "eighths, two swapped digits or a moved point were undone: a likely slip, which is not a fault; or every fault in the file in one go, each with its row and column, what stands there "
            + "and what was expected.%n"})
final class TableCommand implements Callable<Integer> {
    private static final int FEWEST_FOR_SLIPS = SlipSearch.FEWEST_STATIONS;


    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", arity = "0..1", paramLabel = "TABLE", description = TableArgument.TABLE)
    private Path file;

    @Option(names = "--exact", description = TableArgument.DRAWN_EXACT)
    private boolean exact;

    @Option(names = "--csv", description = "Print the stations alone, as CSV.")
    private boolean csv;

    @Option(names = "--worksheet", paramLabel = "FILE.pdf",
        description = "Write a blank worksheet for taking a boat off in the yard, for A4 and Letter: how to measure, and a list "
            + "whose columns are those of a take-off. An earlier worksheet is replaced, any other file only with --replace.")
    private Path worksheet;

    @Mixin
    private Replace replace;

    @Mixin
    private Threads threads;

    @Override
    public Integer call() throws InputFault {
        if (worksheet != null) {
            return writeWorksheet().code();
        }
        if (file == null) {
            throw new ParameterException(spec.commandLine(), "Missing required parameter: 'TABLE'; or, for a blank worksheet, --worksheet FILE.pdf");
        }
        TableArgument argument = TableArgument.of(file, exact ? Fit.EXACT : Fit.WITHIN_ROUNDING);
        TableSource source = argument.read();
        HullOffsets table = source.table();
        Hull hull = Garboard.of(spec).hull(source, argument.fit());
        List<StationFigures> stations = StationFigures.of(table, hull);
        PrintWriter out = spec.commandLine().getOut();
        SlipReport slips = source.slips();
        if (csv) {
            printCsv(new Csv(out), stations);
            printSlips(spec.commandLine().getErr(), slips, "");
            printShort(spec.commandLine().getErr(), table, slips);
        } else {
            printHeading(out, table, hull);
            source.notes().forEach(note -> out.println("not used: " + note));
            out.println();
            source.printed().ifPresent(printed -> printLines(out, printed.table()));
            printPanels(out, hull.lines());
            printStations(out, stations, table.kinds().get(table.kinds().size() - 1) == LineKind.SHEER ? "sheer"
                : hull.lines().get(hull.lines().size() - 1).name());
            printGirths(out, stations, hull);
            out.println();
            source.printed().ifPresent(printed -> {
                TurnsReport.print(out, printed.table());
                out.println();
            });
            printSlips(out, slips, "no likely slip found\n");
            printShort(out, table, slips);
        }
        return Exit.DONE.code();
    }

    private Exit writeWorksheet() {
        if (file != null || csv || exact) {
            throw new ParameterException(spec.commandLine(), "--worksheet is blank and takes no table; give it alone");
        }
        if (!worksheet.toString().toLowerCase(Locale.ROOT).endsWith(".pdf")) {
            throw new ParameterException(spec.commandLine(), "--worksheet is \"" + worksheet + "\"; the name must end in .pdf");
        }
        try {
            replace.file(worksheet, SheetPdf.MARK).write(SheetPdf.write(Worksheet.pages()));
        } catch (OutputRefused refused) {
            spec.commandLine().getErr().println(refused.getMessage());
            return Exit.USAGE;
        }
        return Exit.DONE;
    }

    private static void printHeading(PrintWriter out, HullOffsets table, Hull hull) {
        out.println(table.title());
        out.println("to " + table.surface().words() + "; least count " + FixedDecimal.format(table.leastCount() * 1000, 3) + " mm");
        Station first = table.stations().get(0);
        Station last = table.stations().get(table.stations().size() - 1);
        out.println(table.stations().size() + " stations, from x = " + FixedDecimal.format(first.x(), 3)
            + " m to " + FixedDecimal.format(last.x(), 3) + " m aft of " + table.origin());
        table.remarks().forEach(out::println);
        hull.stem().ifPresent(stem -> out.println("forward of station " + first.name() + " drawn on to the stem, which ends the keel line at x = "
            + FixedDecimal.format(hull.keel().forwardEnd(), 3) + " m and stands at x = " + FixedDecimal.format(hull.forwardEnd(), 3)
            + " m at the foremost"));
        hull.steps().stream().filter(step -> !step.face().isSquare()).forEach(step -> out.println("the step at station " + step.name()
            + " does not run square across: figures of the two stations there, and their sections in a body plan, are of the hull"
            + " cut at that distance, of either length what lies there"));
        UnsureStretch.of(hull).forEach(stretch -> out.println(stretch.words()));
        StrakeOffSkin.of(table, hull).forEach(strake -> out.println(strake.words()));
        if (!table.surface().equals(SkinSurface.OUTSIDE_OF_SKIN)) {
            out.println("girth and deadrise are those of the outside of the skin, drawn from x = "
                + FixedDecimal.format(hull.forwardEnd(), 3) + " m to " + FixedDecimal.format(hull.afterEnd(), 3) + " m");
        }
    }

    private static void printLines(PrintWriter out, OffsetTable table) {
        TextTable lines = new TextTable("<line", "<kind", "<gives", "at [m]", "stations");
        for (TableLine line : table.lines()) {
            lines.row(line.name(), line.kind().name().toLowerCase(Locale.ROOT).replace('_', ' '),
                switch (line.measure()) {
                    case HEIGHT -> "heights";
                    case HALF_BREADTH -> "half-breadths";
                },
                switch (line.kind()) {
                    case WATERLINE, BUTTOCK -> FixedDecimal.format(line.level(), 3);
                    default -> "";
                },
                Integer.toString(line.entries().size()));
        }
        lines.print(out);
        out.println();
    }

    private static void printPanels(PrintWriter out, List<HullLine> lines) {
        out.println("Panels of the skin, from the keel outward:");
        for (int i = 1; i < lines.size(); i++) {
            out.println("  " + i + "  " + lines.get(i - 1).name() + " to " + lines.get(i).name());
        }
        out.println();
    }

    private static void printStations(PrintWriter out, List<StationFigures> stations, String outer) {
        TextTable rows = new TextTable("<station", "x [m]", "points", "girth keel to " + outer + " [m]", "chord deadrise keel to chine [deg]");
        for (StationFigures station : stations) {
            rows.row(station.name(), FixedDecimal.format(station.x(), 3), Integer.toString(station.points()),
                FixedDecimal.format(station.girth(), 3), Csv.number(Math.toDegrees(station.chordDeadrise()), 2));
        }
        rows.print(out);
    }

    /** Girths to all named lines, where there are more than the sheer. */
    private static void printGirths(PrintWriter out, List<StationFigures> stations, Hull hull) {
        List<HullLine> lines = hull.lines();
        if (lines.size() < 3) {
            return;
        }
        List<String> headings = new ArrayList<>(List.of("<station", "x [m]"));
        lines.subList(1, lines.size()).forEach(line -> headings.add("to " + line.name() + " [m]"));
        TextTable rows = new TextTable(headings.toArray(String[]::new));
        for (StationFigures station : stations) {
            double[] girths = ExpandedSection.girths(hull, station.x());
            List<String> cells = new ArrayList<>(List.of(station.name(), FixedDecimal.format(station.x(), 3)));
            for (int line = 1; line < lines.size(); line++) {
                cells.add(girths.length == 0 ? "" : FixedDecimal.format(girths[line], 3));
            }
            rows.row(cells.toArray(String[]::new));
        }
        out.println();
        out.println("Girths from the keel line along the skin:");
        rows.print(out);
    }

    /** @param none what is printed if there are none */
    private static void printSlips(PrintWriter to, SlipReport report, String none) {
        report.notSearched().ifPresent(reason -> to.println("slips were not looked for: " + reason));
        report.slips().forEach(slip -> to.println(slip.message()));
        if (report.notSearched().isEmpty() && report.slips().isEmpty()) {
            to.print(none);
        }
    }

    /** Lengths between steps in which slips were not looked for, though elsewhere they were. */
    private static void printShort(PrintWriter to, HullOffsets table, SlipReport report) {
        boolean searched = table.lengths().size() > 1 && report.notSearched().isEmpty();
        table.lengths().stream().filter(length -> searched && length.size() < FEWEST_FOR_SLIPS)
            .forEach(length -> to.println("slips were not looked for from station " + table.stations().get(length.from()).name()
                + " to " + table.stations().get(length.to() - 1).name() + ": that length has " + length.size() + " stations; "
                + FEWEST_FOR_SLIPS + " are the least"));
    }

    private static void printCsv(Csv csv, List<StationFigures> stations) {
        csv.row("station", "x_m", "points", "girth_m", "chord_deadrise_deg");
        for (StationFigures station : stations) {
            csv.row(station.name(), Csv.number(station.x(), 6), Integer.toString(station.points()),
                Csv.number(station.girth(), 6), Csv.number(Math.toDegrees(station.chordDeadrise()), 5));
        }
    }
}
