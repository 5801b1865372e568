/** Pages of HTML that stand by themselves: what a run decided, and why. Nothing in them is fetched from elsewhere. */
package org.garboard.report;
