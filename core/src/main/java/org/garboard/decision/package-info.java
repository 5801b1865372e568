/**
 * From jobs and their hull to what is decided: the bottom searched, a pocket cut where one is asked for, a mount advised; several
 * transducers placed in turn, so that none disturbs another. Hull frame and metres, see {@link org.garboard.hull}. That the
 * order is the job's is our choice: whoever writes the job knows which transducer matters most.
 */
package org.garboard.decision;
