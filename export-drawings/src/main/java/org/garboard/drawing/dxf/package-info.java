/**
 * Two kinds of DXF, never one for both uses.
 *
 * <p>{@link org.garboard.drawing.dxf.SheetDxf}: version AC1015, for people; everything in model
 * space at true size in millimetres, with true dimensions.
 * {@link org.garboard.drawing.dxf.CutDxf}: version AC1009, for router, laser and water jet;
 * outlines only.
 *
 * <p>The structure follows the published DXF reference of those versions; the order of codes
 * and the cautions beside them come from trying readers that refuse or misread other spellings.
 */
package org.garboard.drawing.dxf;
