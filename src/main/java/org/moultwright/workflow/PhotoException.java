package org.moultwright.workflow;

import org.jspecify.annotations.Nullable;
import org.moultwright.language.Texts;

/** A photo could not be kept or shown. */
public final class PhotoException extends AdvisedException {
    private static final long serialVersionUID = 1L;

    /** Why, and what the keeper can do about it. */
    public enum Reason implements AdvisedException.Reason {
        UNREADABLE("PH-1", Texts.say("Save it as JPEG or PNG and attach that.")),
        TOO_LARGE("PH-2", Texts.say("Make it smaller and attach that.")),
        DISK_FULL("PH-3", Texts.say("Free some space and attach it again.")),
        NOT_WRITABLE(
                "PH-4", Texts.say("Nothing else was lost. Look at the folder beside the store, then attach it again.")),
        MISSING("PH-5", Texts.say("Put the folder of photos back beside the store, from a backup.")),
        ALREADY_ATTACHED("PH-6", Texts.say("What is there stays; nothing is attached twice.")),
        NOT_A_FILE("PH-7", Texts.say("Attach a file that is there and that you may read."));

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

    public PhotoException(Reason reason, String sentence) {
        this(reason, sentence, null);
    }

    public PhotoException(Reason reason, String sentence, @Nullable Throwable cause) {
        super(reason, sentence, cause);
        this.reason = reason;
    }

    public Reason reason() {
        return reason;
    }
}
