package org.moultwright.ui.round;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.moultwright.workflow.TrayView;

/** Which sheets are on their way to the disk, and which are there. */
final class RoundProgress {
    private final Set<String> saving = new HashSet<>();
    private final Map<String, Instant> savedAt = new HashMap<>();
    private final List<Instant> saves = new ArrayList<>();

    void begin(OpenSheet sheet) {
        saving.add(sheet.key());
    }

    void saved(OpenSheet sheet, Instant at) {
        saving.remove(sheet.key());
        savedAt.put(sheet.key(), at);
        saves.add(at);
    }

    void notSaved(OpenSheet sheet) {
        saving.remove(sheet.key());
    }

    void takenBack(OpenSheet sheet) {
        savedAt.remove(sheet.key());
    }

    /** A room read later than a sheet was saved tells itself what is done. */
    void read(Instant now) {
        savedAt.values().removeIf(at -> !now.isBefore(at));
    }

    boolean isSaving(OpenSheet sheet) {
        return saving.contains(sheet.key());
    }

    boolean isDone(OpenSheet sheet) {
        return savedAt.containsKey(sheet.key()) || sheet.facts().view().due() == TrayView.Due.DONE;
    }

    /** Whether nothing is left for the keeper to do, though it may not be on disk yet. */
    boolean isOutOfHand(OpenSheet sheet) {
        return isSaving(sheet) || isDone(sheet);
    }

    /** When each sheet was saved. */
    List<Instant> saves() {
        return saves;
    }
}
