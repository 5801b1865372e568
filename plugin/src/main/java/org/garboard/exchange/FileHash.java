package org.garboard.exchange;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * A file's name and what was in it.
 *
 * @param name without folders
 * @param sha256 of its bytes (FIPS 180-4), in small hexadecimal digits
 */
public record FileHash(String name, String sha256) {

    /** The hash of these bytes. */
    public static FileHash of(String name, byte[] content) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(content);
            return new FileHash(name, HexFormat.of().formatHex(digest));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java runtime has SHA-256", e);
        }
    }
}
