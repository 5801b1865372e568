/**
 * Work shared out over processors. How many is the caller's affair: whatever runs side by side in this program runs in the fork-join
 * pool of the thread that asks ({@code parallel} streams do so by themselves), or in the common one where that thread is in none.
 */
package org.garboard.processors;
