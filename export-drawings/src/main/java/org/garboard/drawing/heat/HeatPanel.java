package org.garboard.drawing.heat;

import java.util.List;
import org.garboard.siting.Site;
import org.garboard.siting.UtilisationMap;

/**
 * One mount of one transducer in the picture.
 *
 * @param heading "Barrel 90: flush through-hull"
 * @param maps one for both sides, or one for each
 * @param sites the places found, the best first; empty where there are none
 */
public record HeatPanel(String heading, List<UtilisationMap> maps, List<Site> sites) {
    public HeatPanel {
        maps = List.copyOf(maps);
        sites = List.copyOf(sites);
    }
}
