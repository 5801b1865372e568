package org.garboard.cutout.template;

import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.cutout.FlatPoint;

/** Where places of the skin, hull frame, lie flat before a net between them settles; empty where they cannot be reached. */
@FunctionalInterface
interface FirstLay {
    Optional<FlatPoint> of(Vector3D place);
}
