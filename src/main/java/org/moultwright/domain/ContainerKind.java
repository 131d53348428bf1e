package org.moultwright.domain;

import java.util.Arrays;
import java.util.Optional;

/** What sort of container a thing stands in, from the room down. */
public enum ContainerKind {
    ROOM("room"),
    INCUBATOR("incubator"),
    BOX("box"),
    TRAY("tray"),
    HAMMOCK("hammock"),
    RACK("rack");

    private final String key;

    ContainerKind(String key) {
        this.key = key;
    }

    public String key() {
        return key;
    }

    /** Whether animals of a brood live in it directly. */
    public boolean holdsBrood() {
        return this == TRAY || this == HAMMOCK;
    }

    public static Optional<ContainerKind> fromKey(String key) {
        return Arrays.stream(values()).filter(kind -> kind.key.equals(key)).findFirst();
    }
}
