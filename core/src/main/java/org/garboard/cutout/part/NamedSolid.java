package org.garboard.cutout.part;

import org.garboard.solid.Solid;

/** A part as a closed body in the hull frame, and its name in files: letters and hyphens. */
public record NamedSolid(String name, Solid solid) {
}
