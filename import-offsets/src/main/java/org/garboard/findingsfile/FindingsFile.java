package org.garboard.findingsfile;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Reads a file of findings: {@code No,Station,Girth mm,Side,Finding,Severity,Action,Photo,Date} and a row for each. The mark
 * between cells is the one behind the first heading. Nothing is dropped or mended.
 */
public final class FindingsFile {
    /** The largest file that is read [bytes]: our choice, far above what a surveyor writes. */
    public static final int MOST_BYTES = 1 << 20;
    /** Our choice: some twenty sheets of schedule. */
    private static final int MOST_FINDINGS = 500;
    private static final Pattern FIRST_HEADING = Pattern.compile("\\A\\s*+(\"?)([^,;\t\r\n\"]*+)\\1[ ]*+([,;\t])");

    private final String file;
    private final List<FindingsFault> faults = new ArrayList<>();

    private FindingsFile(String file) {
        this.file = file;
    }

    /**
     * The findings, or everything that is wrong with the file.
     *
     * @param fileName for the messages, and nothing else
     */
    public static FindingsReading read(String fileName, byte[] content) {
        FindingsFile reading = new FindingsFile(fileName);
        List<WrittenFinding> findings = reading.text(content).map(reading::findings).orElse(List.of());
        if (reading.faults.isEmpty()) {
            return new FindingsReading.Read(findings);
        }
        reading.faults.sort(Comparator.comparingInt(FindingsFault::row).thenComparingInt(FindingsFault::column));
        return new FindingsReading.Faulty(reading.faults);
    }

    private Optional<String> text(byte[] content) {
        if (content.length > MOST_BYTES) {
            whole("the file has " + content.length + " bytes; " + MOST_BYTES + " are the most that are read");
            return Optional.empty();
        }
        try {
            String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(content)).toString();
            if (text.indexOf('\0') < 0) {
                return Optional.of(text.startsWith("\uFEFF") ? text.substring(1) : text);
            }
        } catch (CharacterCodingException e) {
            // told below, as for zero bytes
        }
        whole("the file is not text in UTF-8; save it as CSV in UTF-8");
        return Optional.empty();
    }

    private List<WrittenFinding> findings(String text) {
        Matcher first = FIRST_HEADING.matcher(text);
        if (!first.find() || Column.of(first.group(2)).isEmpty() && Column.before(first.group(2)).isEmpty()) {
            whole("the file does not begin with a heading and , or ; or a tab; a row of headings is expected, such as "
                + "No,Station,Girth mm,Side,Finding,Severity,Action,Photo,Date");
            return List.of();
        }
        CSVFormat format = CSVFormat.RFC4180.builder().setDelimiter(first.group(3).charAt(0)).setIgnoreEmptyLines(false).get();
        List<WrittenFinding> findings = new ArrayList<>();
        Rows rows = null;
        int row = 1;
        try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
            for (CSVRecord record : parser) {
                if (record.stream().anyMatch(cell -> !cell.isBlank())) {
                    if (rows == null) {
                        rows = new Rows(file, Headings.of(file, row, record, faults), faults);
                    } else {
                        rows.read(row, record).ifPresent(findings::add);
                    }
                }
                row = (int) parser.getCurrentLineNumber() + 1;
                if (findings.size() > MOST_FINDINGS) {
                    whole("the file has more than " + MOST_FINDINGS + " findings; split it");
                    return List.of();
                }
            }
        } catch (UncheckedIOException | IOException broken) {
            faults.add(new FindingsFault(file, row, 0, "a quoted cell begins here or below and is not closed, or text stands behind its"
                + " closing quote; quote a cell as \"…\", a quote within it as \"\""));
        }
        if (findings.isEmpty() && faults.isEmpty()) {
            whole("there is no finding below the headings; a row for each is expected");
        }
        return findings;
    }

    private void whole(String words) {
        faults.add(new FindingsFault(file, 0, 0, words));
    }
}
