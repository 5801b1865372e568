package org.garboard.exchange;

import java.util.Optional;
import org.garboard.appendage.Keel;
import org.garboard.hull.Hull;

/**
 * What a record was made from and with.
 *
 * @param programVersion version of the program
 * @param job the job file
 * @param table the table of offsets, named as in the job
 * @param hull the surface drawn from it
 * @param keel that hangs below its skin
 */
public record RecordSource(String programVersion, FileHash job, FileHash table, Hull hull, Optional<Keel> keel) {
}
