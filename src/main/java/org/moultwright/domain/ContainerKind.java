package org.moultwright.domain;

import java.util.Arrays;
import java.util.Optional;
import org.moultwright.language.Texts;

/** What sort of container a thing stands in, from the room down. */
public enum ContainerKind {
    ROOM(Texts.kept("room")),
    INCUBATOR(Texts.kept("incubator")),
    BOX(Texts.kept("box")),
    TRAY(Texts.kept("tray")),
    HAMMOCK(Texts.kept("hammock")),
    RACK(Texts.kept("rack"));

    private final String key;

    ContainerKind(String key) {
        this.key = key;
    }

    public String key() {
        return key;
    }

    /** What it is called in the language of the desk. */
    public String word() {
        return Texts.say(key);
    }

    /** Whether animals of a brood live in it directly. */
    public boolean holdsBrood() {
        return this == TRAY || this == HAMMOCK;
    }

    public static Optional<ContainerKind> fromKey(String key) {
        return Arrays.stream(values()).filter(kind -> kind.key.equals(key)).findFirst();
    }
}
