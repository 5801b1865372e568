/**
 * What parts of a through-hull mount have in common: the body's outline and envelope, the piece of skin they go
 * through, the stem's hole. Metres; frames see {@link org.garboard.cutout.skin}.
 */
package org.garboard.cutout.part;
