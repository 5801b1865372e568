package org.garboard.flow.underway;

import java.util.List;
import java.util.Locale;
import org.garboard.craft.BottomFeatures;
import org.garboard.flow.layer.LayerLaw;
import org.garboard.flow.shadow.Cast;
import org.garboard.flow.shadow.PlanRegion;

/** The water along the bottom at one attitude. */
public sealed interface UnderWay permits PlaningWater, FloatingWater, UnknownWater {

    /** Paths of the water over the bottom to starboard, from the keel outboard; none where they are not known. */
    List<FlowPath> paths();

    /** Where the layer is of round thicknesses, thinnest first. */
    List<LayerContour> contours();

    /** The layer where its run is longest at the after end of the bottom, on the centreline. */
    LayerLaw.Answer layerAtTransom();

    /**
     * The shadows of everything that job and table list, in their order; or why one throws none.
     *
     * @param laid as they lie on this hull
     */
    List<Cast> shadows(BottomFeatures laid);

    /** The bottom to starboard along which solid water runs: abaft of the stagnation line, under the water line, out of the air behind steps. */
    List<PlanRegion> solid();

    /** What a reader must know of it. */
    List<String> notes();

    /** @param words that begin small and lack their full stop */
    static String sentence(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1) + ".";
    }
}
