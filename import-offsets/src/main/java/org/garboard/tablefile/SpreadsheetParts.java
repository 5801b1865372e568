package org.garboard.tablefile;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/**
 * The parts of a spreadsheet file that hold its cells, unpacked within bounds and packed anew, so that what is
 * read later is what was looked at here: sizes are counted while unpacking, never taken from headers.
 */
final class SpreadsheetParts {
    /** Of all parts together [bytes]: a table of 8 MB of text has no more. Our choice. */
    private static final int MOST_UNPACKED = 24 << 20;
    private static final int MOST_PARTS = 2000;
    /** Tags of one part; a cell has two to four. */
    private static final int MOST_TAGS = 1_500_000;
    /** Spreadsheets end at column XFD (ECMA-376), so a longer name is none; nor are names spelt otherwise than plainly. */
    private static final Pattern WILD_REFERENCE = Pattern.compile("\\sr\\s*=\\s*(?:\"(?:[A-Za-z]{4,}|[^\"]{11,}|[^\"]*&)|'(?:[A-Za-z]{4,}|[^']{11,}|[^']*&))");
    private static final Pattern NEEDED = Pattern.compile(
        "\\[Content_Types]\\.xml|_rels/\\.rels|xl/(?:_rels/)?[A-Za-z]+\\.xml(?:\\.rels)?|xl/worksheets/[^/]+\\.xml");

    private final byte[] content;
    private final Problems problems;
    private long unpacked;

    private SpreadsheetParts(byte[] content, Problems problems) {
        this.content = content;
        this.problems = problems;
    }

    /** The same spreadsheet without all that holds no cells; a problem and nothing where it goes beyond a bound. */
    static Optional<byte[]> of(byte[] content, Problems problems) {
        if (content.length > TableFile.MOST_BYTES) {
            problems.inFile(TableText.tooLarge(content.length));
            return Optional.empty();
        }
        if (!GridKind.begins(content, 'P', 'K')) {
            problems.inFile("this is a spreadsheet of the older kind (.xls), or one behind a password; save it as .xlsx without a password, or as CSV in UTF-8");
            return Optional.empty();
        }
        return new SpreadsheetParts(content, problems).repacked();
    }

    private Optional<byte[]> repacked() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Set<String> seen = new HashSet<>();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(content), StandardCharsets.UTF_8);
             ZipOutputStream zip = new ZipOutputStream(out, StandardCharsets.UTF_8)) {
            zip.setMethod(ZipOutputStream.STORED);
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                if (entry.getName().toLowerCase(Locale.ROOT).endsWith("vbaproject.bin")) {
                    return refused("this spreadsheet has macros; save it as .xlsx without macros, or as CSV in UTF-8");
                }
                if (seen.size() >= MOST_PARTS || !seen.add(entry.getName())) {
                    return refused("the file is packed as no spreadsheet program does it (too many parts, or one twice); save the table as CSV in UTF-8");
                }
                byte[] part = read(in);
                if (part == null) {
                    return refused("the file unpacks to more than " + (MOST_UNPACKED >> 20) + " MB; a table needs far less. Copy the table alone"
                        + " into a new spreadsheet, or save it as CSV in UTF-8");
                }
                if (NEEDED.matcher(entry.getName()).matches()) {
                    Optional<String> fault = fault(entry.getName(), part);
                    if (fault.isPresent()) {
                        return refused(fault.get());
                    }
                    store(zip, entry.getName(), part);
                }
            }
        } catch (IOException | IllegalArgumentException broken) {
            return refused("the file is damaged, it cannot be unpacked; save it again as .xlsx, or as CSV in UTF-8");
        }
        if (!seen.contains("[Content_Types].xml") || !seen.contains("xl/workbook.xml")) {
            return refused("this zip file is no .xlsx spreadsheet; save the table as .xlsx, or as CSV in UTF-8");
        }
        return Optional.of(out.toByteArray());
    }

    private Optional<byte[]> refused(String reason) {
        problems.inFile(reason);
        return Optional.empty();
    }

    /** A part; nothing where the bound is passed. */
    private byte[] read(ZipInputStream in) throws IOException {
        byte[] part = in.readNBytes((int) (MOST_UNPACKED - unpacked + 1));
        unpacked += part.length;
        return unpacked > MOST_UNPACKED ? null : part;
    }

    private static Optional<String> fault(String name, byte[] part) {
        if (GridKind.begins(part, 0xFE, 0xFF) || GridKind.begins(part, 0xFF, 0xFE) || part.length > 1 && (part[0] == 0 || part[1] == 0)) {
            return Optional.of("its part " + name + " is not UTF-8; save the table as CSV in UTF-8");
        }
        int tags = 0;
        for (byte each : part) {
            tags += each == '<' ? 1 : 0;
        }
        if (tags > MOST_TAGS) {
            return Optional.of("its part " + name + " has more cells than a table of " + Layout.MOST_STATIONS + " stations and " + Layout.MOST_LINES
                + " lines; copy the table alone into a new spreadsheet, or save it as CSV in UTF-8");
        }
        String text = new String(part, StandardCharsets.ISO_8859_1);
        if (text.contains("<!DOCTYPE") || text.contains("<!ENTITY")) {
            return Optional.of("its part " + name + " declares entities, which no spreadsheet does; save the table as CSV in UTF-8");
        }
        if (name.startsWith("xl/worksheets/") && WILD_REFERENCE.matcher(text).find()) {
            return Optional.of("its part " + name + " names a cell beyond the last column, XFD; save it again as .xlsx, or as CSV in UTF-8");
        }
        return name.equals("[Content_Types].xml") && text.contains("macroEnabled")
            ? Optional.of("this spreadsheet has macros; save it as .xlsx without macros, or as CSV in UTF-8") : Optional.empty();
    }

    private static void store(ZipOutputStream zip, String name, byte[] part) throws IOException {
        CRC32 sum = new CRC32();
        sum.update(part);
        ZipEntry entry = new ZipEntry(name);
        entry.setTime(0);
        entry.setSize(part.length);
        entry.setCompressedSize(part.length);
        entry.setCrc(sum.getValue());
        zip.putNextEntry(entry);
        zip.write(part);
        zip.closeEntry();
    }
}
