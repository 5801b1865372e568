package org.garboard.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import org.garboard.cli.manual.ManPages;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** What the build has the program make of itself, into its folder: what the Tab key completes in bash, and pages for man(1). */
final class BuildFiles {

    private BuildFiles() {
    }

    public static void main(String[] arguments) throws IOException {
        Path folder = Path.of(arguments[0]);
        CommandLine program = Garboard.commandLine(new Garboard());
        program.getSubcommands().values().forEach(command -> sort(command.getCommandSpec()));
        Files.writeString(folder.resolve("start/completion.bash"), AutoComplete.bash("garboard", program), StandardCharsets.UTF_8);
        ManPages.write(program, Version.number(), folder.resolve("share/man/man1"));
    }

    /** Options that are set by methods come in any order. */
    private static void sort(CommandSpec command) {
        List<OptionSpec> options = command.options().stream().filter(option -> option.group() == null)
            .sorted(Comparator.comparing(OptionSpec::longestName)).toList();
        options.forEach(command::remove);
        options.forEach(command::addOption);
    }
}
