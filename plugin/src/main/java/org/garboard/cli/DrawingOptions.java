package org.garboard.cli;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import org.garboard.drawing.sheets.SheetFormat;
import org.garboard.job.DrawingWish;
import org.garboard.job.DrawingWish.Orientation;
import org.garboard.job.DrawingWish.Paper;
import org.garboard.job.DrawingWish.Projection;
import org.garboard.job.DrawingWish.Units;
import org.garboard.offsets.HullOffsets;
import org.garboard.units.LengthUnit;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Where a drawing goes and how its sheet looks. */
final class DrawingOptions {

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    private Path out;
    private Units units;
    private Paper paper;
    private Projection projection;

    @Option(names = "--out", paramLabel = "FILE",
        description = "Draw instead of printing: a sheet in this file, .dxf or .svg. An earlier drawing of this command is "
            + "replaced, any other file only with --replace.")
    void setOut(Path out) {
        this.out = out;
        format();
    }

    @Option(names = "--units", paramLabel = "UNITS",
        description = "Of the sheet's figures: millimetres or feet-inches-eighths. Without it: the latter where the table is "
            + "in eighths of an inch.")
    void setUnits(String word) {
        units = chosen("--units", word, Units.values());
    }

    @Option(names = "--paper", paramLabel = "SIZE",
        description = "A4, A3, A2, A1, ANSI-A, ANSI-B, ANSI-C or ANSI-D. Without it: A2, or ANSI-C for feet and inches.")
    void setPaper(String word) {
        paper = chosen("--paper", word, Paper.values());
    }

    @Option(names = "--projection", paramLabel = "WORD",
        description = "first-angle or third-angle. Without it: first, or third for feet and inches.")
    void setProjection(String word) {
        projection = chosen("--projection", word, Projection.values());
    }

    /** The file; null when nothing is to be drawn. */
    Path out() {
        return out;
    }

    /** Whether something is said of a sheet that nobody asked for. */
    boolean idle() {
        return out == null && (units != null || paper != null || projection != null);
    }

    /** How the sheet is wanted; what a job would say for the title block is left to be filled in by hand. */
    DrawingWish wish(HullOffsets table) {
        Units figures = units != null ? units : inEighths(table) ? Units.FEET_INCHES_EIGHTHS : Units.MILLIMETRES;
        boolean feet = figures == Units.FEET_INCHES_EIGHTHS;
        return new DrawingWish(figures, paper != null ? paper : feet ? Paper.ANSI_C : Paper.A2,
            Orientation.LANDSCAPE,
            projection != null ? projection : feet ? Projection.THIRD_ANGLE : Projection.FIRST_ANGLE,
            "", "", "", "", "", "");
    }

    /** Eighths or sixteenths of an inch come from that notation alone. */
    private static boolean inEighths(HullOffsets table) {
        double eighth = LengthUnit.INCH.metres() / 8;
        return Math.abs(table.leastCount() - eighth) < 1e-9 || Math.abs(table.leastCount() - eighth / 2) < 1e-9;
    }

    SheetFormat format() {
        String name = out.toString().toLowerCase(Locale.ROOT);
        return Arrays.stream(SheetFormat.values()).filter(format -> name.endsWith(format.ending())).findFirst()
            .orElseThrow(() -> new ParameterException(spec.commandLine(), out.toString().isEmpty()
                ? "--out is empty; name a file that ends in .dxf or .svg"
                : "--out is " + out + "; the name must end in .dxf or .svg, which says what is written"));
    }

    private <E extends Enum<E>> E chosen(String option, String word, E[] choices) {
        return Arrays.stream(choices).filter(choice -> word(choice).equalsIgnoreCase(word)).findFirst()
            .orElseThrow(() -> new ParameterException(spec.commandLine(), option + " is \"" + word + "\"; choose one of "
                + Arrays.stream(choices).map(DrawingOptions::word).collect(Collectors.joining(", "))));
    }

    /** As jobs spell it. */
    private static String word(Enum<?> choice) {
        String word = choice.name().replace('_', '-');
        return choice instanceof Paper ? word : word.toLowerCase(Locale.ROOT);
    }
}
