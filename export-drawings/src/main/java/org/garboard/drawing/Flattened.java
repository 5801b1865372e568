package org.garboard.drawing;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** A drawing taken apart into plain strokes, texts and fills, layer by layer, in drawing order. */
public final class Flattened implements Canvas {
    private final Map<Layer, List<Entity>> byLayer = new EnumMap<>(Layer.class);

    public static Flattened of(Sheet sheet) {
        Flattened flattened = new Flattened();
        sheet.drawOn(flattened);
        return flattened;
    }

    public static Flattened of(View view) {
        Flattened flattened = new Flattened();
        view.entities().forEach(entity -> entity.drawOn(flattened));
        return flattened;
    }

    /** What stands on a layer; empty where nothing does. */
    public List<Entity> on(Layer layer) {
        return List.copyOf(byLayer.getOrDefault(layer, List.of()));
    }

    /** Everything, layer by layer. */
    public List<Entity> all() {
        return byLayer.values().stream().flatMap(List::stream).toList();
    }

    /** All texts, layer by layer. */
    public List<Text> texts() {
        return all().stream().filter(Text.class::isInstance).map(Text.class::cast).toList();
    }

    private void keep(Layer layer, Entity entity) {
        byLayer.computeIfAbsent(layer, none -> new ArrayList<>()).add(entity);
    }

    @Override
    public void line(Line line) {
        keep(line.layer(), line);
    }

    @Override
    public void arc(Arc arc) {
        keep(arc.layer(), arc);
    }

    @Override
    public void circle(Circle circle) {
        keep(circle.layer(), circle);
    }

    @Override
    public void polyline(Polyline polyline) {
        keep(polyline.layer(), polyline);
    }

    @Override
    public void text(Text text) {
        keep(text.layer(), text);
    }

    @Override
    public void solid(Solid solid) {
        keep(solid.layer(), solid);
    }

    @Override
    public void hatch(Hatch hatch) {
        keep(hatch.layer(), hatch);
    }
}
