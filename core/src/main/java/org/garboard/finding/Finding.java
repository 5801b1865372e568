package org.garboard.finding;

/** One answer about one place. */
public sealed interface Finding permits Figure, Ruling, NotKnown {

    /** What was asked: "loss through the skin". */
    String name();

    /** Where the rule comes from. */
    String source();

    /** The answer in words that a boatyard reads. */
    String sentence();

    /** Whether the place passes. NOT_KNOWN is never YES. */
    Answer answer();

    /** Yes, no, or not known. */
    enum Answer { YES, NO, NOT_KNOWN }
}
