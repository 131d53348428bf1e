package org.moultwright.ui.round;

/** A tray's sheet and what keys mean on it. Each is its own, however alike two may be. */
final class OpenSheet {
    private final SheetViewModel fields;
    private final SheetKeys keys;

    OpenSheet(SheetViewModel fields, SheetKeys keys) {
        this.fields = fields;
        this.keys = keys;
    }

    SheetViewModel fields() {
        return fields;
    }

    SheetKeys keys() {
        return keys;
    }

    TrayFacts facts() {
        return fields.factsProperty().get();
    }

    String key() {
        return facts().key();
    }
}
