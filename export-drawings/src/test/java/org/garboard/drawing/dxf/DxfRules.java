package org.garboard.drawing.dxf;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.garboard.drawing.dxf.DxfTags.Part;
import org.garboard.drawing.dxf.DxfTags.Tag;

/** Rules that hold for both kinds of DXF; each broken one is a sentence. */
final class DxfRules {

    private DxfRules() {
    }

    static List<String> broken(byte[] file) {
        List<String> broken = new ArrayList<>();
        for (byte b : file) {
            if (b < 0 || b < ' ' && b != '\n') {
                broken.add("byte " + (b & 0xff) + " is not plain ASCII");
                break;
            }
        }
        DxfTags tags = DxfTags.of(file);
        for (Tag tag : tags.all()) {
            number(tag, broken);
        }
        expect(tags, "$INSUNITS", "4", broken);
        expect(tags, "$MEASUREMENT", "1", broken);
        expect(tags, "$DWGCODEPAGE", "ANSI_1252", broken);
        layers(tags, broken);
        return broken;
    }

    static void expect(DxfTags tags, String variable, String value, List<String> broken) {
        if (!tags.variable(variable).map(String::strip).equals(Optional.of(value))) {
            broken.add(variable + " is " + tags.variable(variable) + ", not " + value);
        }
    }

    private static void number(Tag tag, List<String> broken) {
        int code = tag.code();
        if (code >= 10 && code <= 59 || code >= 140 && code <= 149 || code >= 210 && code <= 239) {
            if (!tag.value().matches("-?\\d+(\\.\\d{1,6})?") || tag.value().matches("-0(\\.0*)?")) {
                broken.add("code " + code + " holds " + tag.value() + ", not a plain decimal of six places at most");
            }
        } else if (code >= 60 && code <= 99 || code >= 170 && code <= 179 || code >= 270 && code <= 289) {
            if (!tag.value().matches("-?\\d+")) {
                broken.add("code " + code + " holds " + tag.value() + ", not a whole number");
            }
        }
    }

    private static void layers(DxfTags tags, List<String> broken) {
        List<String> defined = upper(tags.names("LAYER"));
        List<String> lineTypes = upper(tags.names("LTYPE"));
        for (Part layer : tags.tables().getOrDefault("LAYER", List.of())) {
            if (!lineTypes.contains(layer.get(6).toUpperCase(Locale.ROOT))) {
                broken.add("layer " + layer.get(2) + " uses undefined line type " + layer.get(6));
            }
            if (!layer.get(2).matches("[A-Z0-9_-]{1,31}|Defpoints")) {
                broken.add("layer name " + layer.get(2));
            }
        }
        List<Part> entities = new ArrayList<>(tags.section("ENTITIES"));
        tags.blocks().values().forEach(entities::addAll);
        for (Part entity : entities) {
            if (!defined.contains(entity.first(8).orElse("none").toUpperCase(Locale.ROOT))) {
                broken.add(entity.type() + " is on undefined layer " + entity.first(8));
            }
            if (entity.type().matches("LWPOLYLINE|VERTEX")
                    && entity.all(42).stream().anyMatch(bulge -> Double.parseDouble(bulge) == 0)) {
                broken.add(entity.type() + " writes a bulge of nought");
            }
        }
    }

    private static List<String> upper(List<String> names) {
        return names.stream().map(name -> name.toUpperCase(Locale.ROOT)).toList();
    }
}
