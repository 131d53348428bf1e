package org.moultwright.exchange;

import java.time.Instant;
import java.util.List;
import org.moultwright.domain.Pot;
import org.moultwright.domain.PotEvent;
import org.moultwright.language.Texts;

/** The tables of pots: which there are, and what happened to the animals in them. */
final class PotTables {
    static final String EVENTS_FILE = "potlives.csv";

    /** The column that is written only where some pot's size is known. */
    static final String SIZE = "size";

    private static final String WHATS = Texts.say("fed, moulted, died or handed-over");

    static final Table<Pot> POTS = new Table<>(
            "pots.csv",
            List.of("pot", "tray", "potted", "label", SIZE),
            List.of("pot", "tray", "potted"),
            Pot::potted,
            row -> new Pot(
                    row.required("pot"),
                    AnimalTables.tray(row, "tray"),
                    row.instant("potted"),
                    row.text("label"),
                    row.text(SIZE)),
            pot -> List.of(
                    Cell.text(pot.code()),
                    Cell.text(pot.tray()),
                    Cell.instant(pot.potted()),
                    Cell.text(pot.label()),
                    Cell.text(pot.size())));

    private PotTables() {}

    static Table<PotEvent> events(RowIds ids) {
        return new Table<>(
                EVENTS_FILE,
                List.of("time", "pot", "what", "note"),
                List.of("time", "pot", "what"),
                PotEvent::at,
                row -> event(row, ids),
                event -> List.of(
                        Cell.instant(event.at()),
                        Cell.text(event.pot()),
                        event.what().key(),
                        Cell.text(event.note())));
    }

    private static PotEvent event(Row row, RowIds ids) throws Row.Unusable {
        Instant at = row.instant("time");
        String pot = row.required("pot");
        PotEvent.What what = row.oneOf("what", WHATS, PotEvent.What::fromKey);
        String note = row.text("note");
        return new PotEvent(ids.of(EVENTS_FILE, at, pot, what.key(), note), at, pot, what, note);
    }
}
