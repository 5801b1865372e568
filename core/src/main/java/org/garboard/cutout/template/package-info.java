/**
 * Skin laid flat: paper templates of what is cut and where parts stand. Hull frame and metres on the skin; a
 * template's own u runs aft and v to starboard, as seen from outside the hull.
 */
package org.garboard.cutout.template;
