package org.garboard.exchange;

/** Where the table that a job names may lie. */
public enum TablePlace {
    /** In the folder of the job or below it: a job from anywhere reads nothing else. */
    BELOW_JOB,
    /** Wherever the job says: whoever runs it allowed that. */
    ANYWHERE
}
