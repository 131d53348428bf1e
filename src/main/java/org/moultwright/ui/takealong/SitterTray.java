package org.moultwright.ui.takealong;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.moultwright.domain.Account;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.CareNote;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.language.Texts;
import org.moultwright.text.DayWords;
import org.moultwright.workflow.TrayView;

/**
 * A tray as a sitter sees it.
 *
 * @param view the tray as it stands
 * @param expected what may happen in it today
 * @param done what was written of it today; empty where nothing was
 */
record SitterTray(TrayView view, String expected, String done) {
    String tray() {
        return view.tray();
    }

    /** "2 dead · water at 21:04". */
    static String doneToday(BroodRecord record, String tray, Instant from, DayWords days) {
        List<String> done = new ArrayList<>();
        int dead = record.ledger().standing().stream()
                .filter(entry -> !entry.at().isBefore(from)
                        && entry.from().equals(Account.tray(tray))
                        && entry.to().equals(Account.DEAD))
                .mapToInt(LedgerEntry::count)
                .sum();
        if (dead > 0) {
            done.add(Texts.say("{0} dead", dead));
        }
        record.care().stream()
                .filter(care -> care.tray().equals(tray)
                        && care.what().equals(CareNote.WATERED)
                        && !care.at().isBefore(from))
                .map(CareNote::at)
                .max(Comparator.naturalOrder())
                .ifPresent(at -> done.add(Texts.say("water at {0}", days.clock(at))));
        return String.join(" · ", done);
    }
}
