package org.moultwright.device;

import org.jspecify.annotations.Nullable;

/** A fault of a port. Its message is a sentence for the keeper, a remedy and a code. */
public final class DeviceException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** What sort of fault it is, and what the keeper can do about it. */
    public enum Reason {
        BUSY("DE-1", "Close the other program that listens to it; only one can."),
        NO_PERMISSION(
                "DE-2",
                "On Linux, join the group that owns the port, most often 'dialout' ('uucp' on some):"
                        + " sudo usermod -aG dialout $USER, then log out and in again."),
        MISSING("DE-3", "Plug the probe in and check the port's name."),
        NOT_A_SERIAL_LINE("DE-4", "Choose the port the probe is plugged into."),
        FAILED("DE-5", "Unplug the probe, wait a moment and plug it in again."),
        STRANGER("DE-6", "Plug this probe in, or connect the other one as a probe of its own.");

        private final String code;
        private final String remedy;

        Reason(String code, String remedy) {
            this.code = code;
            this.remedy = remedy;
        }

        /** A short code to search for. */
        public String code() {
            return code;
        }

        public String remedy() {
            return remedy;
        }
    }

    private final Reason reason;
    private final String advice;

    public DeviceException(Reason reason, String sentence) {
        this(reason, sentence, null);
    }

    public DeviceException(Reason reason, String sentence, @Nullable Throwable cause) {
        super(sentence + " " + reason.remedy() + " [" + reason.code() + "]", cause);
        this.reason = reason;
        this.advice = sentence + " " + reason.remedy();
    }

    public Reason reason() {
        return reason;
    }

    /** What is wrong and what the keeper can do about it, without the code. */
    public String advice() {
        return advice;
    }
}
