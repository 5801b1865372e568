/** Text that stands in a file from anywhere, as messages show it. */
package org.garboard.filetext;
