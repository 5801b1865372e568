/** Mesh files of solids: binary STL and OBJ, in millimetres of the hull frame. */
package org.garboard.meshfile;
