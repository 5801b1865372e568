package org.garboard.mount;

import org.garboard.craft.BottomFeatures;
import org.garboard.hull.Hull;

/** A hull and what is on its bottom. */
public record LaidBottom(Hull hull, BottomFeatures features) {
}
