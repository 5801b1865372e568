package org.garboard.flow.underway;

import java.util.List;
import org.garboard.craft.BottomFeatures;
import org.garboard.flow.layer.LayerLaw;
import org.garboard.flow.shadow.Cast;
import org.garboard.flow.shadow.PlanRegion;

/**
 * How the water runs is not known.
 *
 * @param reason in words
 * @param layerAtTransom which needs no more than how she lies
 */
public record UnknownWater(String reason, LayerLaw.Answer layerAtTransom) implements UnderWay {
    public UnknownWater(String reason) {
        this(reason, new LayerLaw.Outside(reason));
    }

    @Override
    public List<FlowPath> paths() {
        return List.of();
    }

    @Override
    public List<LayerContour> contours() {
        return List.of();
    }

    @Override
    public List<Cast> shadows(BottomFeatures laid) {
        return laid.laid().stream().<Cast>map(each -> new Cast.None(each.name(), reason)).toList();
    }

    @Override
    public List<PlanRegion> solid() {
        return List.of();
    }

    @Override
    public List<String> notes() {
        return List.of("How the water runs along the bottom at this speed is NOT KNOWN: " + reason + ".");
    }
}
