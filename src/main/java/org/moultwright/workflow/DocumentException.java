package org.moultwright.workflow;

import org.jspecify.annotations.Nullable;
import org.moultwright.language.Texts;

/** A document could not be made, written or read. */
public final class DocumentException extends AdvisedException {
    private static final long serialVersionUID = 1L;

    /** Why it failed, and what the keeper can do about it. */
    public enum Reason implements AdvisedException.Reason {
        FOLDER_MISSING("DO-1", Texts.say("Choose another folder.")),
        NOT_A_FILE("DO-2", Texts.say("Choose another name.")),
        WRITE_PROTECTED("DO-3", Texts.say("Choose another name.")),
        NOT_ALLOWED("DO-4", Texts.say("Choose another folder.")),
        DISK_FULL("DO-5", Texts.say("Free some space and save again.")),
        WRITE_FAILED("DO-6", Texts.say("Choose another folder.")),
        LABEL_TOO_SMALL(
                "DO-7",
                Texts.say("Choose a sheet with larger labels, make the codes shorter, or leave parts off the label.")),
        NOT_READABLE("DO-8", Texts.say("Choose another file."));

        private final String code;
        private final String remedy;

        Reason(String code, String remedy) {
            this.code = code;
            this.remedy = remedy;
        }

        @Override
        public String code() {
            return code;
        }

        @Override
        public String remedy() {
            return remedy;
        }
    }

    private final Reason reason;

    public DocumentException(Reason reason, String sentence) {
        this(reason, sentence, null);
    }

    public DocumentException(Reason reason, String sentence, @Nullable Throwable cause) {
        super(reason, sentence, cause);
        this.reason = reason;
    }

    public Reason reason() {
        return reason;
    }
}
