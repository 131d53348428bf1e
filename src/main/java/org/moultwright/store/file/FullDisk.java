package org.moultwright.store.file;

import java.io.IOException;

/** Tells a full disk by what the machine says of it. */
public final class FullDisk {
    private FullDisk() {}

    public static boolean isSaidBy(Throwable fault) {
        String said = String.valueOf(fault.getMessage());
        return fault instanceof IOException
                && (said.contains("No space left") || said.contains("not enough space") || said.contains("quota"));
    }
}
