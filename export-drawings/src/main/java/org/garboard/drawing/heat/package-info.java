/**
 * How well the whole bottom serves each mount, as a picture: the governing utilisation in colours, what governs in numbered
 * fields. Does no siting: figures come from {@code core}. Millimetres on paper; the hull frame is that of {@code org.garboard.hull}.
 */
package org.garboard.drawing.heat;
