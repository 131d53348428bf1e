package org.moultwright.store.photo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** The name a picture's content gives it: SHA-256 in hexadecimal digits. */
final class ContentHash {
    private ContentHash() {}

    static String of(byte[] content) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
        } catch (NoSuchAlgorithmException everyPlatformHasIt) {
            throw new IllegalStateException(everyPlatformHasIt);
        }
    }

    /** Whether a file holds what its name says. */
    static boolean isOf(Path file) throws IOException {
        return String.valueOf(file.getFileName()).startsWith(of(Files.readAllBytes(file)) + ".");
    }
}
