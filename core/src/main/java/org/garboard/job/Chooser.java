package org.garboard.job;

/** Who chose the place that is drawn. */
public enum Chooser {
    /** The search of the bottom: the best place of the first mount that has one. */
    SEARCH,
    /** The yard: it is drawn as given, whether or not the checks are met there. */
    YARD
}
