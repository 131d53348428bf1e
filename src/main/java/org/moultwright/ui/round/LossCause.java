package org.moultwright.ui.round;

import java.util.Arrays;
import java.util.Optional;
import org.moultwright.domain.Cause;

/** Why an animal was taken out, with the key that says so. */
enum LossCause {
    UNKNOWN('u', Cause.UNKNOWN),
    FAILED_MOULT('f', Cause.FAILED_MOULT),
    DRIED_OUT('y', Cause.DESICCATED),
    DROWNED('o', Cause.DROWNED),
    MOULD('m', Cause.MOULD),
    INFERTILE('i', Cause.INFERTILE);

    private final char key;
    private final String words;

    LossCause(char key, Cause cause) {
        this.key = key;
        this.words = cause.words();
    }

    public char key() {
        return key;
    }

    public String words() {
        return words;
    }

    public Cause cause() {
        return new Cause(words);
    }

    static Optional<LossCause> ofKey(char key) {
        return Arrays.stream(values()).filter(cause -> cause.key == key).findFirst();
    }
}
