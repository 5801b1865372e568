package org.garboard.decision;

import java.util.Optional;
import org.garboard.craft.LaidFeature;
import org.garboard.job.SitingRecord;

/**
 * What was decided for one transducer, and what it then is to the others.
 *
 * @param body where it is advised, as a feature of the bottom; empty where it has no place
 */
record Placed(SitingRecord decided, Optional<LaidFeature> body) {
}
