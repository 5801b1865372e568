/**
 * A fairing block under the skin that holds the face level, and the block inside that matches it: form, saw cut,
 * heights to shape by, templates. Hull frame and metres, see {@link org.garboard.hull}.
 */
package org.garboard.cutout.fairing;
