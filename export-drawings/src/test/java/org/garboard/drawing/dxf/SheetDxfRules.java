package org.garboard.drawing.dxf;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.garboard.drawing.dxf.DxfTags.Part;

/** What a sheet DXF must hold beyond what a tolerant reader asks for; each broken rule is a sentence. */
public final class SheetDxfRules {

    private static final List<String> SECTIONS =
            List.of("HEADER", "CLASSES", "TABLES", "BLOCKS", "ENTITIES", "OBJECTS", "EOF");
    private static final List<String> TABLES = List.of("VPORT", "LTYPE", "LAYER", "STYLE", "VIEW", "UCS",
            "APPID", "DIMSTYLE", "BLOCK_RECORD");
    private static final Set<String> ALLOWED = Set.of("LINE", "ARC", "CIRCLE", "LWPOLYLINE", "TEXT", "SOLID",
            "HATCH", "DIMENSION");
    /** Line types that a common CAD program knows by name and does not draw solid. */
    private static final Set<String> KNOWN_LINE_TYPES =
            Set.of("ByBlock", "ByLayer", "Continuous", "CENTER2", "HIDDEN2", "DASHED2", "DIVIDE2");
    private static final Pattern NUMBER = Pattern.compile("\\d+(?:\\.(\\d+))?");

    private final DxfTags tags;
    private final List<String> broken;

    private SheetDxfRules(byte[] file) {
        tags = DxfTags.of(file);
        broken = DxfRules.broken(file);
    }

    public static List<String> broken(byte[] file) {
        SheetDxfRules rules = new SheetDxfRules(file);
        rules.structure();
        rules.handles();
        rules.entities();
        rules.hatches();
        rules.dimensions();
        return rules.broken;
    }

    private void require(boolean held, String sentence) {
        if (!held) {
            broken.add(sentence);
        }
    }

    private void structure() {
        require(tags.sectionNames().equals(SECTIONS), "sections are " + tags.sectionNames());
        DxfRules.expect(tags, "$ACADVER", "AC1015", broken);
        DxfRules.expect(tags, "$TILEMODE", "1", broken);
        require(tags.variable("$DIMSCALE").equals(tags.variable("$LTSCALE")), "$DIMSCALE and $LTSCALE differ");
        require(new ArrayList<>(tags.tables().keySet()).equals(TABLES), "tables are " + tags.tables().keySet());
        require(tags.names("LTYPE").containsAll(List.of("ByBlock", "ByLayer", "Continuous")), "line types are missing");
        require(KNOWN_LINE_TYPES.containsAll(tags.names("LTYPE")), "unknown line types in " + tags.names("LTYPE"));
        require(tags.names("LAYER").contains("0") && tags.names("LAYER").contains("Defpoints"), "layers are missing");
        require(tags.names("STYLE").contains("Standard"), "text style Standard is missing");
        require(tags.names("DIMSTYLE").contains("Standard"), "dimension style Standard is missing");
        require(tags.names("APPID").contains("ACAD"), "application ACAD is missing");
        require(tags.names("VPORT").contains("*ACTIVE"), "viewport *ACTIVE is missing");
        require(tags.names("STYLE").contains(tags.variable("$TEXTSTYLE").orElse("")), "$TEXTSTYLE is not defined");
        require(tags.names("DIMSTYLE").contains(tags.variable("$DIMSTYLE").orElse("")), "$DIMSTYLE is not defined");
        List<String> blocks = new ArrayList<>(tags.blocks().keySet());
        require(blocks.size() >= 2 && blocks.subList(0, 2).equals(List.of("*Model_Space", "*Paper_Space")),
                "blocks begin with " + blocks);
        require(tags.names("BLOCK_RECORD").equals(blocks), "block records are not the blocks");
        require(tags.section("OBJECTS").stream().filter(part -> part.type().equals("LAYOUT")).count() == 2,
                "two layouts are needed");
        require(tags.section("OBJECTS").stream().anyMatch(part -> part.type().equals("DICTIONARY")
                && part.get(330).equals("0") && part.all(3).containsAll(List.of("ACAD_GROUP", "ACAD_LAYOUT"))),
                "no root dictionary");
        require(tags.blocks().getOrDefault("*Model_Space", List.of()).isEmpty()
                && tags.blocks().getOrDefault("*Paper_Space", List.of()).isEmpty(), "the space blocks must be empty");
    }

    private void handles() {
        Map<String, String> owners = new LinkedHashMap<>();
        long highest = 0;
        for (String section : List.of("TABLES", "BLOCKS", "ENTITIES", "OBJECTS")) {
            for (Part part : tags.section(section)) {
                if (part.type().equals("ENDTAB")) {
                    continue;
                }
                String handle = part.first(part.type().equals("DIMSTYLE") ? 105 : 5).orElse("");
                if (!handle.matches("[1-9A-F][0-9A-F]*")) {
                    broken.add(part.type() + " has the handle \"" + handle + "\"");
                    continue;
                }
                highest = Math.max(highest, Long.parseLong(handle, 16));
                List<String> owner = part.all(330);
                require(!owner.isEmpty(), part.type() + " " + handle + " has no owner");
                require(owners.put(handle, owner.isEmpty() ? "0" : owner.get(0)) == null, "handle " + handle + " is used twice");
            }
        }
        for (Map.Entry<String, String> entry : owners.entrySet()) {
            require(entry.getValue().equals("0") || owners.containsKey(entry.getValue()),
                    "owner " + entry.getValue() + " of " + entry.getKey() + " does not exist");
        }
        require(Long.parseLong(tags.variable("$HANDSEED").orElse("0"), 16) > highest, "$HANDSEED is not above every handle");
        for (Part part : tags.section("OBJECTS")) {
            part.all(350).forEach(handle -> require(owners.containsKey(handle), "dictionary entry " + handle + " does not exist"));
        }
    }

    private void entities() {
        for (Part entity : tags.section("ENTITIES")) {
            require(ALLOWED.contains(entity.type()), entity.type() + " is not for a sheet");
            common(entity);
        }
        tags.blocks().values().forEach(block -> block.forEach(this::common));
    }

    private void common(Part entity) {
        require(entity.has(100, "AcDbEntity") && entity.all(100).size() >= 2, entity.type() + " lacks its subclasses");
        require(entity.first(67).isEmpty(), entity.type() + " is in paper space");
        // a reader that passes over the rest of an entity line by line would take it for the beginning of the next
        require(!entity.tags().get(entity.tags().size() - 1).value().equals("0"), entity.type() + " ends with a value that reads 0");
        if (entity.type().equals("TEXT")) {
            require(tags.names("STYLE").contains(entity.get(7)), "text style " + entity.get(7) + " is not defined");
        }
        if (entity.type().equals("LWPOLYLINE")) {
            require(entity.number(90) == entity.all(10).size(), "LWPOLYLINE says " + entity.get(90)
                    + " vertices and has " + entity.all(10).size());
        }
    }

    private void hatches() {
        for (Part hatch : tags.entities("HATCH")) {
            require(hatch.all(97).size() == (int) hatch.number(91), "HATCH without code 97 after each boundary");
            require(hatch.first(98).isPresent(), "HATCH without seeds");
            require(hatch.first(78).isPresent() && hatch.all(53).size() == (int) hatch.number(78),
                    "HATCH without pattern lines");
        }
    }

    private void dimensions() {
        Set<String> used = new HashSet<>();
        for (Part dimension : tags.entities("DIMENSION")) {
            String block = dimension.get(2);
            require(used.add(block), "block " + block + " serves two dimensions");
            List<Part> strokes = tags.blocks().getOrDefault(block, List.of());
            require(!strokes.isEmpty(), "dimension block " + block + " is missing or empty");
            require(tags.names("DIMSTYLE").contains(dimension.get(3)), "dimension style " + dimension.get(3));
            double geometry = geometry(dimension);
            require(Math.abs(dimension.number(42) - geometry) < 1e-4, "dimension " + block + " stores "
                    + dimension.get(42) + " and measures " + geometry);
            double shown = kind(dimension) == 2 ? Math.toDegrees(geometry) : geometry;
            String inBlock = strokes.stream().filter(part -> part.type().equals("TEXT")).map(part -> part.get(1))
                    .findFirst().orElse("");
            says(inBlock, shown, block);
            String own = dimension.get(1);
            String expanded = own.isEmpty() ? Long.toString(Math.round(geometry))
                    : own.replace("<>", Long.toString(Math.round(geometry)));
            require(expanded.equals(inBlock), "dimension " + block + " says " + expanded + ", its block " + inBlock);
        }
        require(used.size() == tags.blocks().size() - 2, "a dimension block is not used");
    }

    private void says(String words, double size, String block) {
        Matcher number = NUMBER.matcher(words);
        boolean found = number.find();
        int places = !found || number.group(1) == null ? 0 : number.group(1).length();
        require(found && Math.abs(Double.parseDouble(number.group()) - size) <= 0.5 * Math.pow(10, -places) + 1e-6,
                "dimension " + block + " says " + words + " and measures " + size);
    }

    private static int kind(Part dimension) {
        return (int) dimension.number(70) & 7;
    }

    private double geometry(Part d) {
        return switch (kind(d)) {
            case 0 -> {
                double direction = Math.toRadians(d.number(50));
                yield Math.abs((d.number(14) - d.number(13)) * Math.cos(direction)
                        + (d.number(24) - d.number(23)) * Math.sin(direction));
            }
            case 1 -> Math.hypot(d.number(14) - d.number(13), d.number(24) - d.number(23));
            case 2 -> {
                double first = Math.atan2(d.number(24) - d.number(23), d.number(14) - d.number(13));
                double second = Math.atan2(d.number(20) - d.number(25), d.number(10) - d.number(15));
                yield Math.abs(Math.IEEEremainder(second - first, 2 * Math.PI));
            }
            case 3, 4 -> Math.hypot(d.number(15) - d.number(10), d.number(25) - d.number(20));
            default -> {
                broken.add("dimension of kind " + kind(d));
                yield Double.NaN;
            }
        };
    }
}
