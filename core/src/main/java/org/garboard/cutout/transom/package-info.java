/** The bracket of a transom mount: where it is screwed, how low the body hangs. Hull frame and metres, see {@link org.garboard.hull}. */
package org.garboard.cutout.transom;
