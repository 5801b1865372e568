/**
 * What the water does at one place of the bottom at a speed: the boundary layer grown there from where the run of water
 * begins, and the speed at which an edge or a nose there begins to cavitate. Hull frame, see {@link org.garboard.hull}.
 */
package org.garboard.flow.place;
