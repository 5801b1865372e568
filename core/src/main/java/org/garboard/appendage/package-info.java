/**
 * What hangs on the skin and is no part of it: the keel and deadwood below the rabbet. Hull frame and metres, see
 * {@link org.garboard.hull}.
 */
package org.garboard.appendage;
