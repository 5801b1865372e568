package org.garboard.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.garboard.cli.manual.ManPages;
import org.garboard.reader.OutsideReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;

class ManPagesTest {
    @TempDir
    private Path folder;

    private final CommandLine program = Garboard.commandLine(new Garboard());

    @Test
    void everyCommandAndOptionHasItsPlace() throws IOException {
        List<String> names = ManPages.write(program, "1.2.3", folder);
        assertEquals(program.getSubcommands().size() + 1, names.size());
        for (CommandLine command : program.getSubcommands().values()) {
            String page = Files.readString(folder.resolve("garboard-" + command.getCommandName() + ".1"));
            for (OptionSpec option : command.getCommandSpec().options()) {
                for (String name : option.names()) {
                    assertTrue(page.contains(name.replace("-", "\\-")), command.getCommandName() + " " + name);
                }
            }
        }
        assertTrue(Files.readString(folder.resolve("garboard-run.1")).startsWith(".TH GARBOARD\\-RUN 1 \"\" \"garboard 1.2.3\" \"Garboard\"\n.SH NAME\n"
            + "garboard\\-run \\- Does a whole job"));
    }

    /** man(1) sets every page without a warning, and nothing of it is lost. */
    @Test
    void manReadsThem() throws IOException {
        OutsideReader.MAN.require();
        for (String name : ManPages.write(program, "1.2.3", folder)) {
            OutsideReader.Answer answer = OutsideReader.MAN.run(List.of("--warnings", "-E", "UTF-8", "-l", folder.resolve(name).toString()));
            assertEquals(0, answer.exit(), answer.output());
            String words = answer.output().replaceAll(".\b", "");
            assertTrue(!words.contains("warning") && words.contains("EXIT STATUS") && words.contains("an input file is at fault"), name + ": " + words);
        }
    }
}
