package org.garboard.tablefile;

import java.util.OptionalInt;

/** What a file's cells stand in, and so what they are called. */
public enum GridKind {
    /** Lines of text. */
    TEXT {
        @Override
        String place(String file, OptionalInt row, OptionalInt column) {
            return row.isPresent() ? file + ":" + row.getAsInt() : file;
        }

        @Override
        String columnBehind(OptionalInt column) {
            return column.isPresent() ? "column " + column.getAsInt() + ": " : "";
        }
    },
    /** A spreadsheet: column by letters, row by number, as B7. */
    SPREADSHEET {
        @Override
        String place(String file, OptionalInt row, OptionalInt column) {
            if (row.isEmpty()) {
                return file;
            }
            return column.isPresent() ? file + ", cell " + letters(column.getAsInt()) + row.getAsInt() : file + ", row " + row.getAsInt();
        }

        @Override
        String columnBehind(OptionalInt column) {
            return "";
        }
    };

    private static final int ALPHABET = 26;

    /** The file and where in it, as far as that is known. */
    abstract String place(String file, OptionalInt row, OptionalInt column);

    /** What is said of the column further on, if it has not been said. */
    abstract String columnBehind(OptionalInt column);

    /** By the first bytes: a zip file, or an old spreadsheet, is one. */
    static GridKind of(byte[] content) {
        return begins(content, 'P', 'K', 3, 4) || begins(content, 'P', 'K', 5, 6) || begins(content, 0xD0, 0xCF, 0x11, 0xE0) ? SPREADSHEET : TEXT;
    }

    static boolean begins(byte[] content, int... bytes) {
        for (int i = 0; i < bytes.length; i++) {
            if (i >= content.length || (content[i] & 0xFF) != bytes[i]) {
                return false;
            }
        }
        return true;
    }

    /** 1 is A, 27 is AA. */
    private static String letters(int column) {
        StringBuilder letters = new StringBuilder();
        for (int rest = column; rest > 0; rest = (rest - 1) / ALPHABET) {
            letters.insert(0, (char) ('A' + (rest - 1) % ALPHABET));
        }
        return letters.toString();
    }
}
