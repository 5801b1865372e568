package org.garboard.inside;

/**
 * A stretch of the bottom that was looked at from inside, all across, and of which every room is listed.
 *
 * @param datum name of the {@link InsideDatum} that it was measured from
 * @param ahead of it [m]
 */
public record Seen(String datum, Span ahead) {
}
