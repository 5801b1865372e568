package org.garboard.flow.doublebody;

/** How the mesh goes on where the skin ends in the water: at an immersed transom. */
public enum Stern {
    /**
     * The last section goes on straight aft along the water for one wetted length and is left open there, as the
     * water leaves a transom's lower edge tangentially and does not turn in behind it. Our choice, because a closed transom
     * sucks the flow round its edge, which no boat under way shows.
     */
    STRAIGHT_RUN,
    /** A flat closes the last section: water turns in behind it, as at rest or very slow. */
    CLOSED
}
