package org.garboard.survey;

/**
 * Why a finding cannot be laid on the hull.
 *
 * @param finding its place in the list, from 0
 * @param part of its place that is at fault
 * @param reason what was expected and what would work, to follow what stands there
 */
public record PlaceFault(int finding, Part part, String reason) {

    /** What of a place is told. */
    public enum Part { ALONG, OUT, SIDE }
}
