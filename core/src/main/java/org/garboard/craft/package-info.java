/** The boat around the hull, and the transducer that is to go into it. Lengths in metres. */
package org.garboard.craft;
