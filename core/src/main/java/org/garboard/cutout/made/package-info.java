/** What is made for one place, whichever way the transducer goes in there. Hull frame and metres, see {@link org.garboard.hull}. */
package org.garboard.cutout.made;
