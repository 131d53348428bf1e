package org.moultwright.workflow;

import org.jspecify.annotations.Nullable;

/** A document could not be made or written. Its message is a sentence for the keeper, with the remedy. */
public final class DocumentException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final Reason reason;

    public DocumentException(Reason reason, String message, @Nullable Throwable cause) {
        super(message, cause);
        this.reason = reason;
    }

    public Reason reason() {
        return reason;
    }

    /** Why it failed. */
    public enum Reason {
        FOLDER_MISSING,
        NOT_A_FILE,
        NOT_ALLOWED,
        DISK_FULL,
        WRITE_FAILED,
        LABEL_TOO_SMALL
    }
}
