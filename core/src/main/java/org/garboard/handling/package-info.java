/**
 * What the boat rests on or hangs from out of the water: bunks and rollers of the trailer, slings, blocks, the
 * beach. None of them may bear on a transducer. Hull frame, metres, in plan.
 */
package org.garboard.handling;
