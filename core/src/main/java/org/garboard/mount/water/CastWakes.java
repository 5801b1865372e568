package org.garboard.mount.water;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.garboard.craft.LaidFeature;
import org.garboard.flow.shadow.Cast;
import org.garboard.flow.shadow.FlowLines;
import org.garboard.flow.shadow.ShadowCaster;
import org.garboard.flow.shadow.Shedder;
import org.garboard.hull.Hull;

/**
 * What each feature throws down one set of flow lines, worked out once: where several transducers are placed, the searches for them
 * have most features in common. Serves several threads.
 */
final class CastWakes {
    private final ShadowCaster caster;
    private final Map<LaidFeature, Cast> thrown = new ConcurrentHashMap<>();

    /** @param outboard how many times as much a wake spreads outboard as inboard */
    CastWakes(Hull hull, FlowLines flow, double outboard) {
        this.caster = new ShadowCaster(hull, flow, outboard);
    }

    /** For each feature in turn. */
    List<Cast> of(List<LaidFeature> laid) {
        return laid.parallelStream().map(feature -> thrown.computeIfAbsent(feature, one -> caster.of(Shedder.of(one)))).toList();
    }
}
