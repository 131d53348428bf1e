package org.moultwright.workflow;

import org.jspecify.annotations.Nullable;

/**
 * A fault of the disk, a wire or a document. Its message is a sentence for the keeper, a remedy and a code.
 *
 * <p>Each adapter has its own kind, with its own reasons.
 */
public abstract class AdvisedException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String sentence;
    private final String remedy;
    private final String code;

    protected AdvisedException(Reason reason, String sentence, @Nullable Throwable cause) {
        super(sentence + " " + reason.remedy() + " [" + reason.code() + "]", cause);
        this.sentence = sentence;
        this.remedy = reason.remedy();
        this.code = reason.code();
    }

    /** What is wrong. */
    public final String sentence() {
        return sentence;
    }

    /** What is wrong and what the keeper can do about it, without the code. */
    public final String advice() {
        return sentence + " " + remedy;
    }

    /** A short code to search for. */
    public final String code() {
        return code;
    }

    /** What sort of fault it is. */
    public interface Reason {
        /** A short code to search for. */
        String code();

        /** What the keeper can do about it. */
        String remedy();
    }
}
