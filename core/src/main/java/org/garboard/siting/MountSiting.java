package org.garboard.siting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.garboard.mount.Mount;

/**
 * What the search of the whole bottom found for one mount.
 *
 * @param mount the mount
 * @param regions feasible regions, largest first, on the side that each names: to starboard where port is the mirror image;
 *     for a keel pocket, which sits athwart the keel, the strip of the keel line that serves
 *     (its outline is as wide as the footprint; its length holds the places of the centre)
 * @param sites the best site of each region, best first
 * @param nearest where there is no region: the place whose governing check is least exceeded; empty where
 *     the footprint finds no seat at all. Where regions are narrower than the grid it may just pass
 */
public record MountSiting(Mount mount, List<Region> regions, List<Site> sites, Optional<Site> nearest) {
    public MountSiting {
        regions = List.copyOf(regions);
        sites = List.copyOf(sites);
    }

    /** The same with another site first; it stands for the site of its region. */
    public MountSiting preferring(Site site) {
        Optional<Region> region = regionOf(site);
        List<Site> all = new ArrayList<>(List.of(site));
        sites.stream().filter(other -> !other.sharesPlace(site) && (region.isEmpty() || !region.equals(regionOf(other)))).forEach(all::add);
        return new MountSiting(mount, regions, all, Optional.empty());
    }

    /** The region that a site lies in; empty where it is narrower than is drawn. */
    public Optional<Region> regionOf(Site site) {
        return regions.stream().filter(region -> region.holds(site.x(), site.y())).findFirst();
    }
}
