package org.garboard.cli.manual;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Help;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The page of one command, in the macros of man(7). The same command gives the same bytes: it has no date. */
final class ManPage {
    private final CommandSpec command;
    private final String version;
    private final StringBuilder page = new StringBuilder();

    private ManPage(CommandSpec command, String version) {
        this.command = command;
        this.version = version;
    }

    /** "garboard-run". */
    static String name(CommandSpec command) {
        return command.qualifiedName("-");
    }

    static String of(CommandSpec command, String version) {
        return new ManPage(command, version).write();
    }

    private String write() {
        List<String> said = paragraphs(command.usageMessage().description());
        page.append(".TH ").append(escaped(name(command).toUpperCase(Locale.ROOT))).append(" 1 \"\" \"").append(escaped("garboard " + version)).append("\" \"Garboard\"\n");
        section("NAME", name(command) + " - " + said.get(0));
        section("SYNOPSIS");
        page.append(".nf\n").append(lines(new Help(command, Help.Ansi.OFF).synopsis(0).strip())).append(".fi\n");
        section("DESCRIPTION", said.toArray(String[]::new));
        subcommands();
        arguments("ARGUMENTS", command.positionalParameters().stream().filter(each -> !each.hidden()).map(ManPage::argument).toList());
        arguments("OPTIONS", command.options().stream().filter(each -> !each.hidden()).map(ManPage::option).toList());
        exit();
        seeAlso();
        return page.toString();
    }

    /** A word to be explained, and what is said of it. */
    private record Entry(String word, List<String> said) {
    }

    private static Entry option(OptionSpec option) {
        String names = String.join(", ", option.names());
        return new Entry(option.arity().max() == 0 ? names : names + "=" + option.paramLabel(), paragraphs(option.description()));
    }

    private static Entry argument(PositionalParamSpec argument) {
        return new Entry(argument.paramLabel(), paragraphs(((ArgSpec) argument).description()));
    }

    private void subcommands() {
        arguments("COMMANDS", command.subcommands().values().stream().map(each -> each.getCommandSpec())
            .map(each -> new Entry(each.name(), List.of(paragraphs(each.usageMessage().description()).get(0)))).toList());
    }

    private void arguments(String heading, List<Entry> entries) {
        if (entries.isEmpty()) {
            return;
        }
        section(heading);
        for (Entry entry : entries) {
            page.append(".TP\n.B ").append(escaped(entry.word())).append('\n').append(entry.said().stream().map(ManPage::lines).collect(Collectors.joining(".IP\n")));
        }
    }

    /** As the program's own help has them below the list of commands. */
    private void exit() {
        section("EXIT STATUS");
        for (String line : command.root().usageMessage().footer()) {
            String[] parts = line.strip().split(" +", 2);
            page.append(".TP\n.B ").append(escaped(parts[0])).append('\n').append(lines(parts[1]));
        }
    }

    private void seeAlso() {
        List<String> others = new ArrayList<>();
        if (command.parent() != null) {
            others.add(name(command.root()));
        }
        command.subcommands().values().forEach(each -> others.add(name(each.getCommandSpec())));
        section("SEE ALSO", others.stream().map(each -> each + "(1)").collect(Collectors.joining(", ")));
    }

    private void section(String heading, String... paragraphs) {
        page.append(".SH ").append(heading).append('\n').append(Stream.of(paragraphs).map(ManPage::lines).collect(Collectors.joining(".PP\n")));
    }

    /** Picocli lets %n stand for a new line. */
    private static List<String> paragraphs(String... description) {
        return Arrays.stream(description).flatMap(each -> String.format(Locale.ROOT, each).lines()).map(String::strip).filter(line -> !line.isEmpty()).toList();
    }

    private static String lines(String text) {
        return text.lines().map(String::strip).map(ManPage::escaped).map(line -> line.startsWith(".") || line.startsWith("'") ? "\\&" + line : line)
            .collect(Collectors.joining("\n", "", "\n"));
    }

    private static String escaped(String words) {
        return words.replace("\\", "\\e").replace("-", "\\-").replace("\"", "\\(dq");
    }
}
