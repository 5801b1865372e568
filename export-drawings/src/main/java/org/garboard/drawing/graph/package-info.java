/** Figures as curves over a level axis; they break where nothing is known. */
package org.garboard.drawing.graph;
