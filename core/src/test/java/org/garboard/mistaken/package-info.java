/**
 * Slips of the hand that a formula must not swallow: another unit, the other sign, the other side, the other order. Each public
 * formula is asked rightly, against a value that stands elsewhere, and then wrongly: what comes back must be refused or fall
 * far outside the value's tolerance, so that the check would have seen the slip.
 */
package org.garboard.mistaken;
