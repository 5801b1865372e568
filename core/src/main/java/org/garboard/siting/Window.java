package org.garboard.siting;

/**
 * How far a site may be moved with every check still met, each way alone [m], all &gt;= 0.
 *
 * @param forward towards the bow
 * @param aft towards the transom
 * @param inboard towards the centreline
 * @param outboard away from it
 */
public record Window(double forward, double aft, double inboard, double outboard) {
}
