package org.moultwright.ui.takealong;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.moultwright.domain.Account;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.CareNote;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.language.Texts;
import org.moultwright.text.DayWords;
import org.moultwright.text.Listing;
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

    boolean isOf(String brood, String code) {
        return view.brood().equals(brood) && view.tray().equals(code);
    }

    /** "Today: 2 dead · water at 21:04". */
    String today() {
        return Texts.say("Today: {0}", done.isEmpty() ? Texts.say("nothing yet") : done);
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
        List<String> waterings = record.care().stream()
                .filter(care -> care.tray().equals(tray)
                        && care.what().equals(CareNote.WATERED)
                        && !care.at().isBefore(from))
                .map(CareNote::at)
                .sorted()
                .map(days::clock)
                .toList();
        if (!waterings.isEmpty()) {
            done.add(Texts.say("water at {0}", Listing.and(waterings)));
        }
        return String.join(" · ", done);
    }
}
