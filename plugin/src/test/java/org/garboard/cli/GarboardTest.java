package org.garboard.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.file.Path;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

class GarboardTest {

    @Test
    void wrongUsageEndsWithTwoAndAHint() {
        assertEquals(new Shell(2, "", "garboard: no command is given\nTry 'garboard --help'.\n"), Shell.run());
        assertEquals(new Shell(2, "", "garboard run: Missing required option: '--out=DIR'\nTry 'garboard run --help'.\n"),
            Shell.run("run", "job.xml"));
        assertEquals(new Shell(2, "", "garboard table: --threads is 0; it must be from 1 to 1024\nTry 'garboard table --help'.\n"),
            Shell.run("table", "--threads", "0", "t.csv"));
        assertTrue(Shell.run("tabel").err().contains("Did you mean: garboard table"));
    }

    /** A misspelt option is told, and not what is missing because of it. */
    @Test
    void misspeltOptionsAreToldWithTheRightOne() {
        assertEquals(new Shell(2, "", "garboard run: there is no option --ouy; did you mean --out?\nTry 'garboard run --help'.\n"),
            Shell.run("run", "job.xml", "--ouy", "d"));
        assertEquals(new Shell(2, "", "garboard site: there is no option --hlp; did you mean --help?\nTry 'garboard site --help'.\n"),
            Shell.run("site", "--hlp"));
        assertTrue(Shell.run("probe", "t.csv").err().startsWith("garboard probe: Missing required argument (specify one of these)"));
    }

    @Test
    void aFileOfAnotherKindIsToldWhatIsWanted(@TempDir Path folder) {
        Path wedge = Shell.copy("/cli/wedge.csv", folder);
        Path job = Shell.copy("/cli/job.xml", folder);
        assertEquals(new Shell(3, "", wedge + ":1:1: this is no XML file; a job is one, and begins with <job> or <?xml\n"),
            Shell.run("run", wedge, "--out", folder.resolve("out")));
        assertEquals(new Shell(3, "", job + ": this is XML, and a table of offsets is rows of cells; a job names its table in <table file=\"…\"/>\n"),
            Shell.run("table", job));
    }

    @ParameterizedTest
    @ValueSource(strings = {"table", "probe", "lines", "hydro", "site", "run"})
    void everyCommandHasHelpAndThreads(String command) {
        Shell shell = Shell.run(command, "--help");
        assertEquals(0, shell.code());
        assertTrue(shell.out().startsWith("Usage: garboard " + command), shell.out());
        assertTrue(shell.out().contains("--threads=N"), shell.out());
        assertFalse(shell.out().contains("%n"), shell.out());
    }

    @ParameterizedTest
    @ValueSource(strings = {"table", "probe", "lines", "hydro"})
    void everyCommandThatTakesATableAcceptsExact(String command) {
        assertTrue(Shell.run(command, "--help").out().contains("--exact"));
    }

    /** The name by which a command is made alone is its own. */
    @Test
    void everyCommandIsFoundByItsName() {
        CommandLine all = Garboard.commandLine(new Garboard());
        assertEquals(14, all.getSubcommands().size());
        all.getSubcommands().forEach((name, command) -> {
            assertEquals(name, command.getCommandSpec().userObject().getClass().getAnnotation(CommandLine.Command.class).name());
            assertEquals(Set.of(name), Garboard.commandLine(new Garboard(), name, "--help").getSubcommands().keySet());
        });
    }

    @Test
    void tellsItsVersion() {
        assertTrue(Shell.run("--version").out().matches("garboard [0-9]+\\.[0-9]+\\.[0-9]+(-SNAPSHOT)?\\R"), Shell.run("--version").out());
    }

    @Test
    void missingFilesEndWithThree(@TempDir Path folder) {
        Path file = folder.resolve("none.csv");
        assertEquals(new Shell(3, "", file + ": there is no such file\n"), Shell.run("table", file));
        assertEquals(new Shell(3, "", folder + ": this is a folder; name a file in it\n"), Shell.run("table", folder));
        assertEquals(new Shell(3, "", file + ": there is no such file\n"), Shell.run("site", file));
        assertEquals(new Shell(3, "", file + ": there is no such file\n"), Shell.run("run", file, "--out", folder));
    }

    @Test
    void namesThatNoFileCanHaveAreWrongUsage() {
        assertEquals(new Shell(2, "", "garboard table: Invalid value for positional parameter at index 0 (TABLE): \"a\0b\" cannot be"
            + " the name of a file here (Nul character not allowed); in a shell whose locale is not UTF-8 set LC_ALL=C.UTF-8\n"
            + "Try 'garboard table --help'.\n"), Shell.run("table", "a\0b"));
    }

    @Test
    void aMistakeOfTheProgramIsOnePlainLine(@TempDir Path folder) {
        Path wedge = Shell.copy("/cli/wedge.csv", folder);
        StringWriter err = new StringWriter();
        PrintWriter broken = new PrintWriter(new Writer() {
            @Override
            public void write(char[] text, int from, int length) {
                throw new IllegalStateException("a mistake\nin two lines");
            }

            @Override
            public void flush() {
            }

            @Override
            public void close() {
            }
        });
        assertEquals(1, Garboard.run(broken, new PrintWriter(err), "table", wedge.toString()));
        assertTrue(err.toString().matches("garboard: the program itself is at fault, not your files: "
            + "java\\.lang\\.IllegalStateException: a mistake in two lines at [^\n]*; please report this line\n"), err.toString());
    }

    @Test
    void aFullDiskIsTold() {
        StringWriter err = new StringWriter();
        PrintWriter full = new PrintWriter(new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                throw new IOException("no space left on device");
            }
        });
        assertEquals(1, Garboard.run(full, new PrintWriter(err), "--version"));
        assertEquals("garboard: the results could not all be written to standard output\n", err.toString());
    }
}
