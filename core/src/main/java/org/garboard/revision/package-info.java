/** What differs between two records of one boat, the earlier and the later: inputs, figures, features, mounts, places, checks. Metres. */
package org.garboard.revision;
