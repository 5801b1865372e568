/** Programs of others that tests of all modules ask; the one way to tell that one of them is missing. */
package org.garboard.reader;
