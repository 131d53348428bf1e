package org.moultwright.store;

import org.jspecify.annotations.Nullable;
import org.moultwright.language.Texts;
import org.moultwright.workflow.AdvisedException;

/** A fault of the store's file or its disk. */
public final class StoreException extends AdvisedException {
    private static final long serialVersionUID = 1L;

    /** What sort of fault it is, and what the keeper can do about it. */
    public enum Reason implements AdvisedException.Reason {
        IN_USE("ST-1", Texts.say("Close the other Moultwright first, or choose another store.")),
        NOT_A_STORE("ST-2", Texts.say("Nothing in it was changed. Choose another file.")),
        DAMAGED("ST-3", Texts.say("Nothing in it was changed. Restore the latest backup to a new file and open that.")),
        NEWER_SCHEMA(
                "ST-4",
                Texts.say("Nothing in it was changed. Open it with the Moultwright that wrote it, or a newer one.")),
        NOT_WRITABLE("ST-5", Texts.say("Choose a file in a folder you may write to.")),
        DISK_FULL("ST-6", Texts.say("What was saved before is safe. Free some space and repeat the last entry.")),
        MISSING("ST-7", Texts.say("Check the name of the file.")),
        ALREADY_THERE("ST-8", Texts.say("Nothing in it was changed. Choose a name that is not in use.")),
        NOT_UP_TO_DATE(
                "ST-10",
                Texts.say("Nothing in it was changed. Go on with the Moultwright that wrote it, and report this.")),
        FAILED("ST-9", Texts.say("What was saved before is safe. Start again; if it happens again, check the store."));

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

    public StoreException(Reason reason, String sentence) {
        this(reason, sentence, null);
    }

    public StoreException(Reason reason, String sentence, @Nullable Throwable cause) {
        super(reason, sentence, cause);
        this.reason = reason;
    }

    public Reason reason() {
        return reason;
    }
}
