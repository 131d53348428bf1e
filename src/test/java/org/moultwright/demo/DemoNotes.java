package org.moultwright.demo;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.function.Supplier;
import org.moultwright.domain.CareNote;
import org.moultwright.domain.MouldNote;
import org.moultwright.domain.RunUpEvent;

/** What the keeper of the demo room wrote down besides counts. Invented. */
final class DemoNotes {
    private static final int DAYS_BETWEEN_WATERINGS = 4;

    private final DemoBrood facts;
    private final Supplier<UUID> ids;

    DemoNotes(DemoBrood facts, Supplier<UUID> ids) {
        this.facts = facts;
        this.ids = ids;
    }

    List<CareNote> care(LocalDate firstDay, LocalDate lastDay) {
        List<CareNote> notes = new ArrayList<>();
        for (DemoBrood.DemoTray tray : facts.trays()) {
            for (LocalDate day = firstDay.plusDays(2);
                    day.isBefore(lastDay);
                    day = day.plusDays(DAYS_BETWEEN_WATERINGS)) {
                notes.add(note(tray.code(), evening(day), CareNote.WATERED, ""));
            }
            notes.add(note(tray.code(), evening(firstDay.plusDays(21)), CareNote.CLEANED, ""));
        }
        switch (facts.code()) {
            case "CC-26-A" -> notes.addAll(careOfA());
            case "CC-26-B" -> notes.addAll(careOfB());
            default ->
                notes.add(note(
                        "C1",
                        evening(LocalDate.parse("2026-05-25")),
                        CareNote.NOTED,
                        "two eaten by slings; the first slings go into pots tomorrow"));
        }
        return notes;
    }

    List<MouldNote> mould() {
        return facts.code().equals("CC-26-B")
                ? List.of(new MouldNote(
                        ids.get(),
                        evening(LocalDate.parse("2026-03-27")),
                        "B1",
                        "dead animal",
                        "spread",
                        "dead eggs and six beside them taken out, liner changed",
                        6))
                : List.of();
    }

    List<RunUpEvent> runUp() {
        LocalDate laid = LocalDate.ofInstant(facts.laid().earliest(), DemoBrood.ZONE);
        return List.of(
                event(laid.minusDays(112), "paired", "two inserts seen, male taken out unharmed"),
                event(laid.minusDays(98), "cool-from", "21 to 22 °C, dry, one small meal every three weeks"),
                event(laid.minusDays(46), "cool-to", "25 °C, half the substrate moist"),
                event(laid.minusDays(40), "fed", "large meal"),
                event(laid.minusDays(31), "fed", "large meal"),
                event(laid.minusDays(19), "fed", "large meal, then she refused"),
                event(laid.plusDays(1), "sac-seen", "sac complete in the morning, she holds it"));
    }

    private List<CareNote> careOfA() {
        return List.of(
                note(
                        "A1",
                        DemoClimate.SET_POINT_RAISED,
                        CareNote.NOTED,
                        "reference thermometer shows 25.7 with the display at 27.0; set-point raised to 28.3"),
                note(
                        "A2",
                        evening(LocalDate.parse("2026-03-27")),
                        CareNote.NOTED,
                        "58, not 57: one egg lay under the shells yesterday"),
                note(
                        "A2",
                        evening(LocalDate.parse("2026-04-08")),
                        CareNote.NOTED,
                        "three drowned in condensate; base raised, lid vented"));
    }

    private List<CareNote> careOfB() {
        List<CareNote> notes = new ArrayList<>();
        for (LocalDate day = LocalDate.parse("2026-03-23");
                day.isBefore(LocalDate.parse("2026-04-03"));
                day = day.plusDays(1)) {
            notes.add(note("B1", day.atTime(8, 0).atZone(DemoBrood.ZONE).toInstant(), CareNote.TURNED, "by hand"));
        }
        notes.add(note("B1", evening(LocalDate.parse("2026-03-27")), CareNote.LINER_CHANGED, "mould"));
        return notes;
    }

    private CareNote note(String tray, Instant at, String what, String words) {
        return new CareNote(ids.get(), at, tray, what, words);
    }

    private RunUpEvent event(LocalDate day, String what, String note) {
        return new RunUpEvent(ids.get(), evening(day), what, note);
    }

    private static Instant evening(LocalDate day) {
        return day.atTime(21, 15).atZone(DemoBrood.ZONE).toInstant();
    }
}
