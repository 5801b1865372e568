package org.garboard.mount;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Which of several mounts that serve is advised. */
public enum Preference {
    /** What does least to the boat. */
    LEAST_INVASIVE {
        @Override
        public List<Mount> order(List<Mount> mounts) {
            return mounts.stream().sorted(Comparator.comparingInt(Mount::invasiveness)).toList();
        }
    },
    /** What brings most of the sound into the water and back: our order, by what lies between the face and clean water. */
    STRONGEST_SIGNAL {
        @Override
        public List<Mount> order(List<Mount> mounts) {
            return mounts.stream().sorted(Comparator.comparingInt(Mount::signalRank)).toList();
        }
    },
    /** As the job lists them. */
    AS_LISTED {
        @Override
        public List<Mount> order(List<Mount> mounts) {
            return List.copyOf(mounts);
        }
    };

    /** The preferred first. */
    public abstract List<Mount> order(List<Mount> mounts);

    /** As files call it: "least-invasive". */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public static Preference of(String word) {
        return valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_'));
    }
}
