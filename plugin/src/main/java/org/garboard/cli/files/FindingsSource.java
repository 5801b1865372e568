package org.garboard.cli.files;

import java.nio.file.Path;
import java.util.List;
import org.garboard.craft.LaidFeature;
import org.garboard.exchange.FileHash;
import org.garboard.findingsfile.FindingsFault;
import org.garboard.findingsfile.FindingsFile;
import org.garboard.findingsfile.FindingsReading;
import org.garboard.findingsfile.WrittenFinding;
import org.garboard.hull.Hull;
import org.garboard.offsets.HullOffsets;
import org.garboard.survey.HullSurvey;
import org.garboard.survey.LaidFinding;

/**
 * A file of findings that was read and laid on a hull.
 *
 * @param findings in the file's order
 * @param file its name and its hash
 */
public record FindingsSource(List<LaidFinding> findings, FileHash file) {
    public FindingsSource {
        findings = List.copyOf(findings);
    }

    public static FindingsSource read(Path path, Hull hull, HullOffsets table, List<LaidFeature> features) throws InputFault {
        byte[] bytes = InputFile.read(path, FindingsFile.MOST_BYTES);
        FindingsReading reading = FindingsFile.read(path.toString(), bytes);
        if (reading instanceof FindingsReading.Faulty faulty) {
            throw new InputFault(faulty.faults().stream().map(FindingsFault::message).toList());
        }
        List<WrittenFinding> written = ((FindingsReading.Read) reading).findings();
        HullSurvey survey = HullSurvey.lay(written.stream().map(WrittenFinding::finding).toList(), hull, table, features);
        if (!survey.faults().isEmpty()) {
            throw new InputFault(survey.faults().stream()
                .map(fault -> written.get(fault.finding()).fault(path.toString(), fault).message()).toList());
        }
        return new FindingsSource(survey.findings(), FileHash.of(path.getFileName().toString(), bytes));
    }
}
