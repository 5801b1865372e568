/**
 * A surveyor's findings as a file: CSV in UTF-8, its cells parted by comma, semicolon or tab, a row for each finding below
 * a row of headings. What is not understood is a fault, and all faults are told in one go.
 */
package org.garboard.findingsfile;
