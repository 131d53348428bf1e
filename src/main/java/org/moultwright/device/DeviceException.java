package org.moultwright.device;

import org.jspecify.annotations.Nullable;
import org.moultwright.language.Texts;
import org.moultwright.workflow.AdvisedException;

/** A fault of a port. */
public final class DeviceException extends AdvisedException {
    private static final long serialVersionUID = 1L;

    /** What sort of fault it is, and what the keeper can do about it. */
    public enum Reason implements AdvisedException.Reason {
        BUSY("DE-1", Texts.say("Close the other program that listens to it; only one can.")),
        NO_PERMISSION(
                "DE-2",
                Texts.say("On Linux, join the group that owns the port, most often 'dialout' ('uucp' on some): sudo "
                        + "usermod -aG dialout $USER, then log out and in again.")),
        MISSING("DE-3", Texts.say("Plug the probe in and check the port's name.")),
        NOT_A_SERIAL_LINE("DE-4", Texts.say("Choose the port the probe is plugged into.")),
        FAILED("DE-5", Texts.say("Unplug the probe, wait a moment and plug it in again.")),
        STRANGER("DE-6", Texts.say("Plug this probe in, or connect the other one as a probe of its own."));

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

    public DeviceException(Reason reason, String sentence) {
        this(reason, sentence, null);
    }

    public DeviceException(Reason reason, String sentence, @Nullable Throwable cause) {
        super(reason, sentence, cause);
        this.reason = reason;
    }

    public Reason reason() {
        return reason;
    }
}
