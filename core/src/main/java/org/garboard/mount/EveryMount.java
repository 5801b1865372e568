package org.garboard.mount;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** All mounts that are permitted. Apart from {@link Mount}, so that the first of them to be used waits for none of the others. */
final class EveryMount {
    /** The least invasive first. */
    static final List<Mount> ALL = Arrays.stream(Mount.class.getPermittedSubclasses()).map(EveryMount::made)
        .sorted(Comparator.comparingInt(Mount::invasiveness)).toList();

    private EveryMount() {
    }

    private static Mount made(Class<?> kind) {
        try {
            return (Mount) kind.getConstructor().newInstance();
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(kind + " is to be a public record of nothing", e);
        }
    }
}
