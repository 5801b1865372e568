package org.garboard.siting;

/** A place seen in plan, hull frame: x aft, y to starboard [m]. */
public record PlanPoint(double x, double y) {
}
