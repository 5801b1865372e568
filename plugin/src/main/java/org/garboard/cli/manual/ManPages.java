package org.garboard.cli.manual;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;

/** Writes a page for the program and for each of its commands. */
public final class ManPages {

    private ManPages() {
    }

    /** @return the names of the pages, in the order of the program's help */
    public static List<String> write(CommandLine program, String version, Path folder) throws IOException {
        Files.createDirectories(folder);
        List<CommandSpec> commands = new ArrayList<>(List.of(program.getCommandSpec()));
        program.getSubcommands().values().forEach(each -> commands.add(each.getCommandSpec()));
        List<String> names = new ArrayList<>();
        for (CommandSpec command : commands) {
            names.add(ManPage.name(command) + ".1");
            Files.writeString(folder.resolve(ManPage.name(command) + ".1"), ManPage.of(command, version), StandardCharsets.UTF_8);
        }
        return names;
    }
}
