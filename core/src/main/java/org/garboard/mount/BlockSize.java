package org.garboard.mount;

/**
 * A fairing block in plan, and what its height must be. Lengths [m].
 *
 * @param length fore and aft
 * @param width athwartships
 * @param lowSide least height of its side
 * @param roof least thickness over the body
 * @param nose over which its nose can be rounded, ahead of the body
 * @param ahead from its nose to the body's middle
 * @param trailingEdgeLower by how much its tail hangs lower than its face at the body's middle
 * @param height of the face below the skin at the body's middle, where the job asks for one; else NaN, the least that serves
 */
public record BlockSize(double length, double width, double lowSide, double roof, double nose, double ahead, double trailingEdgeLower, double height) {
}
