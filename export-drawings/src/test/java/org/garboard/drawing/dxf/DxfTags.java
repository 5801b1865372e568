package org.garboard.drawing.dxf;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A DXF as pairs of code and value, cut into sections and records; reads nothing into them. */
public final class DxfTags {

    /** One pair. */
    public record Tag(int code, String value) {
    }

    /** Pairs from one code 0 to the next. */
    public record Part(List<Tag> tags) {
        public String type() {
            return tags.get(0).value();
        }

        public Optional<String> first(int code) {
            return tags.stream().filter(tag -> tag.code() == code).map(Tag::value).findFirst();
        }

        public String get(int code) {
            return first(code).orElseThrow(() -> new AssertionError(type() + " has no code " + code + ": " + tags));
        }

        public double number(int code) {
            return Double.parseDouble(get(code));
        }

        public List<String> all(int code) {
            return tags.stream().filter(tag -> tag.code() == code).map(Tag::value).toList();
        }

        public boolean has(int code, String value) {
            return tags.contains(new Tag(code, value));
        }
    }

    private final List<Tag> tags = new ArrayList<>();
    private final Map<String, List<Part>> sections = new LinkedHashMap<>();
    private final boolean ended;

    private DxfTags(String text) {
        String[] lines = text.split("\r?\n", -1);
        int count = lines.length - (lines[lines.length - 1].isEmpty() ? 1 : 0);
        if (count % 2 != 0) {
            throw new IllegalArgumentException("odd number of lines: " + count);
        }
        for (int i = 0; i < count; i += 2) {
            tags.add(new Tag(Integer.parseInt(lines[i].strip()), lines[i + 1]));
        }
        ended = tags.get(tags.size() - 1).equals(new Tag(0, "EOF"));
        cut();
    }

    public static DxfTags of(byte[] file) {
        return new DxfTags(new String(file, StandardCharsets.ISO_8859_1));
    }

    private void cut() {
        List<Part> section = null;
        List<Tag> part = null;
        for (int i = 0; i < tags.size(); i++) {
            Tag tag = tags.get(i);
            if (tag.equals(new Tag(0, "SECTION"))) {
                section = new ArrayList<>();
                sections.put(tags.get(++i).value(), section);
                part = new ArrayList<>();
                if (!tags.get(i).value().equals("HEADER")) {
                    part = null;
                } else {
                    section.add(new Part(part));
                }
            } else if (tag.equals(new Tag(0, "ENDSEC")) || tag.equals(new Tag(0, "EOF"))) {
                section = null;
            } else if (section != null) {
                if (tag.code() == 0) {
                    part = new ArrayList<>();
                    section.add(new Part(part));
                }
                part.add(tag);
            }
        }
    }

    public List<Tag> all() {
        return tags;
    }

    /** Section names in file order, EOF last where the file ends so. */
    public List<String> sectionNames() {
        List<String> names = new ArrayList<>(sections.keySet());
        if (ended) {
            names.add("EOF");
        }
        return names;
    }

    public List<Part> section(String name) {
        return sections.getOrDefault(name, List.of());
    }

    public List<Part> entities(String type) {
        return section("ENTITIES").stream().filter(part -> part.type().equals(type)).toList();
    }

    /** First value of a header variable. */
    public Optional<String> variable(String name) {
        List<Part> header = section("HEADER");
        if (header.isEmpty()) {
            return Optional.empty();
        }
        List<Tag> variables = header.get(0).tags();
        int at = variables.indexOf(new Tag(9, name));
        return at < 0 ? Optional.empty() : Optional.of(variables.get(at + 1).value());
    }

    /** Tables by name, each with its entries. */
    public Map<String, List<Part>> tables() {
        Map<String, List<Part>> tables = new LinkedHashMap<>();
        List<Part> entries = null;
        for (Part part : section("TABLES")) {
            if (part.type().equals("TABLE")) {
                entries = new ArrayList<>();
                tables.put(part.get(2), entries);
            } else if (!part.type().equals("ENDTAB")) {
                entries.add(part);
            }
        }
        return tables;
    }

    public List<String> names(String table) {
        return tables().getOrDefault(table, List.of()).stream().map(part -> part.get(2)).toList();
    }

    /** Blocks by name, each with the entities between its begin and end. */
    public Map<String, List<Part>> blocks() {
        Map<String, List<Part>> blocks = new LinkedHashMap<>();
        List<Part> entities = null;
        for (Part part : section("BLOCKS")) {
            if (part.type().equals("BLOCK")) {
                entities = new ArrayList<>();
                blocks.put(part.get(2), entities);
            } else if (!part.type().equals("ENDBLK")) {
                entities.add(part);
            }
        }
        return blocks;
    }
}
