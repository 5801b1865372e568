/**
 * The keel pocket as a true solid: floor, walls with draft, blends into the skin; its laminate, its former, and the
 * lines that are cut. In the part's frame, see {@link org.garboard.cutout.skin}; metres.
 */
package org.garboard.cutout.pocket;
