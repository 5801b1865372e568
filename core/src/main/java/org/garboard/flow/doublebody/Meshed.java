package org.garboard.flow.doublebody;

/** A mesh of the hull, or why there is none. */
public sealed interface Meshed permits HullMesh, Meshed.NotMeshed {

    /** The hull does not lie so that she can be meshed. */
    record NotMeshed(String reason) implements Meshed {
    }
}
