package org.moultwright.workflow;

import java.time.Instant;
import java.util.List;
import org.moultwright.domain.label.Paper;

/**
 * One page for whoever looks after the animals while the keeper is away; all of it in words.
 *
 * @param paper what it is printed on
 * @param title what it is
 * @param dates from when to when
 * @param phone the keeper's number; empty for a line to write it on
 * @param days a short name for each day of it, to be ticked off
 * @param lists what to do, when to call, what never to do
 * @param trays each tray, in shelf order
 * @param note what must be known of what is expected
 * @param madeAt when it was told
 */
public record SitterSheet(
        Paper paper,
        String title,
        String dates,
        String phone,
        List<String> days,
        Lists lists,
        List<Tray> trays,
        String note,
        Instant madeAt) {
    public SitterSheet {
        days = List.copyOf(days);
        trays = List.copyOf(trays);
    }

    /** What to do each day, when to call, and what never to do; a sentence or two each. */
    public record Lists(List<String> toDo, List<String> call, List<String> never) {
        public Lists {
            toDo = List.copyOf(toDo);
            call = List.copyOf(call);
            never = List.copyOf(never);
        }
    }

    /**
     * A tray.
     *
     * @param code its code
     * @param place where it stands; empty where nobody wrote it down
     * @param expected what may happen in it
     */
    public record Tray(String code, String place, String expected) {}
}
