package org.moultwright.domain.label;

/** What can stand on a pot's label beside its code, which always does. In the order they stand there. */
public enum LabelPart {
    SQUARE("square"),
    NAME("name"),
    STAGE_AND_DAY("stage-and-day"),
    POT_SIZE("pot-size"),
    BROOD("brood"),
    TRAY("tray");

    private final String key;

    LabelPart(String key) {
        this.key = key;
    }

    /** As it is written in settings. */
    String key() {
        return key;
    }
}
