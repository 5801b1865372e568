package org.garboard.craft;

import org.garboard.units.Angle;

/**
 * A transducer's body as its maker dimensions it. Lengths [m].
 *
 * @param name as the job names it
 * @param length fore and aft, of the body or its flange
 * @param width athwartships
 * @param height from the face to the top of the body
 * @param cornerRadius of the body's outline in plan
 * @param stemDiameter of the stem or cable exit, 0 where there is none
 * @param elementInclination how far the element leans inside its housing, towards the keel
 */
public record Transducer(String name, double length, double width, double height,
                         double cornerRadius, double stemDiameter, Angle elementInclination) {
}
