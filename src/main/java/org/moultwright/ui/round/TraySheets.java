package org.moultwright.ui.round;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Predicate;
import org.moultwright.text.Vocabulary;
import org.moultwright.workflow.BroodView;
import org.moultwright.workflow.RoomView;

/** One sheet for each tray with animals, in shelf order. A sheet keeps what is written on it from reading to reading. */
final class TraySheets {
    private final List<OpenSheet> sheets = new ArrayList<>();
    private final Consumer<FocusRequest.Target> lead;
    private final TallyEar ear;
    private Consumer<SheetViewModel> written = sheet -> {};

    /**
     * @param lead puts the keeper's hands elsewhere
     * @param sounds says tallies by ear
     */
    TraySheets(Consumer<FocusRequest.Target> lead, TallySounds sounds) {
        this.lead = lead;
        this.ear = new TallyEar(sounds);
    }

    /** Has somebody told of every sheet whenever something is written on it. */
    void whenWritten(Consumer<SheetViewModel> told) {
        written = told;
    }

    List<OpenSheet> all() {
        return sheets;
    }

    void read(RoomView room) {
        List<OpenSheet> read = new ArrayList<>();
        for (BroodView brood : room.broods()) {
            brood.trays().stream()
                    .filter(tray -> tray.alive() > 0)
                    .forEach(tray -> read.add(withFacts(TrayFacts.of(room, brood, tray))));
        }
        sheets.clear();
        sheets.addAll(read);
    }

    Optional<OpenSheet> find(String key) {
        return sheets.stream().filter(sheet -> sheet.key().equals(key)).findFirst();
    }

    /** Lays a new sheet in the place of one. */
    OpenSheet renew(OpenSheet sheet) {
        OpenSheet fresh = newSheet(sheet.facts());
        replace(fresh);
        return fresh;
    }

    /** Lays a sheet in the place of its tray's. */
    void replace(OpenSheet sheet) {
        sheets.replaceAll(other -> other.key().equals(sheet.key()) ? sheet : other);
    }

    /** Lays a sheet back in its place, with what was written on the one that lay there. */
    void layBack(OpenSheet sheet, Vocabulary vocabulary) {
        find(sheet.key()).ifPresent(laid -> {
            sheet.fields().show(laid.facts());
            new LaterSheet(laid.fields(), vocabulary).writeInto(sheet.fields());
        });
        replace(sheet);
    }

    /** The same one while it is there; else the first that was begun, that is to be done, or at all. */
    Optional<OpenSheet> stillOrFirst(Optional<OpenSheet> before, Predicate<OpenSheet> isDone) {
        return before.filter(sheets::contains)
                .or(() -> sheets.stream()
                        .filter(sheet -> !sheet.fields().isBlank())
                        .findFirst())
                .or(() -> sheets.stream().filter(isDone.negate()).findFirst())
                .or(() -> sheets.stream().findFirst());
    }

    /** The next one on the shelf that still is to be done, beginning anew at the end; the same if there is none. */
    OpenSheet next(OpenSheet after, Predicate<OpenSheet> isDone) {
        int position = Math.max(0, sheets.indexOf(after));
        List<OpenSheet> inTurn = new ArrayList<>(sheets.subList(position, sheets.size()));
        inTurn.addAll(sheets.subList(0, position));
        return inTurn.stream().filter(isDone.negate()).findFirst().orElse(after);
    }

    private OpenSheet withFacts(TrayFacts facts) {
        Optional<OpenSheet> known = find(facts.key());
        known.ifPresent(sheet -> sheet.fields().show(facts));
        return known.orElseGet(() -> newSheet(facts));
    }

    private OpenSheet newSheet(TrayFacts facts) {
        SheetViewModel fields = new SheetViewModel(facts);
        fields.whenWritten(() -> written.accept(fields));
        return new OpenSheet(fields, new SheetKeys(fields, lead, ear));
    }
}
