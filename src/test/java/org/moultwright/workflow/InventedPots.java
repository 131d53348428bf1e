package org.moultwright.workflow;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.moultwright.domain.Account;
import org.moultwright.domain.Brood;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Cause;
import org.moultwright.domain.Ledger;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.domain.Pot;
import org.moultwright.domain.PotEvent;
import org.moultwright.domain.PotEvent.What;
import org.moultwright.domain.Stage;
import org.moultwright.domain.code.CodeRun;

/** Invented broods all of whose animals are in pots, or some of them still in their tray. */
public final class InventedPots {
    public static final Instant NOW = Instant.parse("2026-05-05T20:41:00Z");
    private static final Duration SINCE = Duration.ofDays(30);
    private static final int DIED_AFTER_DAYS = 12;
    private static final int LEFT_AFTER_DAYS = 25;

    private InventedPots() {}

    /** A brood with so many pots, coded by a prefix, potted thirty days ago at noon, and two animals left in tray A1. */
    public static BroodRecord brood(String code, String prefix, int pots) {
        return brood(code, prefix, pots, 2);
    }

    /** The same with so many animals left in their tray. */
    public static BroodRecord brood(String code, String prefix, int pots, int left) {
        Instant potted = NOW.minus(SINCE);
        Brood brood = new Brood(
                code,
                "Chromatopelma cyaneopubescens",
                ZoneOffset.UTC,
                Optional.empty(),
                Optional.of(potted.minus(SINCE)),
                List.of(Stage.values()),
                27,
                Optional.empty());
        String tray = "A1 " + prefix;
        List<LedgerEntry> entries = List.of(
                entry(potted.minusSeconds(60), Account.SAC, Account.tray(tray), pots + left, Cause.OPENED),
                entry(potted, Account.tray(tray), Account.POTTED, pots, Cause.POTTED));
        List<Pot> made = new ArrayList<>();
        for (int number = 1; number <= pots; number++) {
            made.add(new Pot(
                    codeOf(prefix, number), tray, potted, "sling 5 Apr 26", number % 3 == 0 ? "60 ml" : "30 ml"));
        }
        BroodRecord empty = BroodRecord.of(brood);
        return new BroodRecord(
                brood,
                Ledger.of(entries),
                empty.checks(),
                empty.stays(),
                empty.probeStays(),
                empty.setPoints(),
                empty.readings(),
                empty.mould(),
                empty.care(),
                made,
                empty.runUp());
    }

    /**
     * The same after a month: fed every week, most of them moulted once, every tenth dead after twelve days, every
     * seventeenth of the rest handed over after twenty-five.
     */
    public static BroodRecord lived(String code, String prefix, int pots) {
        BroodRecord made = brood(code, prefix, pots);
        List<PotEvent> events = new ArrayList<>();
        int dead = 0;
        int handedOver = 0;
        for (int number = 1; number <= pots; number++) {
            boolean dies = number % 10 == 0;
            boolean leaves = !dies && number % 17 == 0;
            dead += dies ? 1 : 0;
            handedOver += leaves ? 1 : 0;
            int last = dies ? DIED_AFTER_DAYS : leaves ? LEFT_AFTER_DAYS : (int) SINCE.toDays();
            for (int day = 3; day < last; day += 7) {
                events.add(event(number, prefix, day, What.FED));
            }
            int moult = 8 + number % 9;
            if (number % 5 != 1 && moult < last) {
                events.add(event(number, prefix, moult, What.MOULTED));
            }
            if (dies || leaves) {
                events.add(event(number, prefix, last, dies ? What.DIED : What.HANDED_OVER));
            }
        }
        List<LedgerEntry> left = new ArrayList<>();
        if (dead > 0) {
            left.add(entry(day(DIED_AFTER_DAYS), Account.POTTED, Account.DEAD, dead, Cause.DIED_IN_POT));
        }
        if (handedOver > 0) {
            left.add(entry(day(LEFT_AFTER_DAYS), Account.POTTED, Account.HANDED_OVER, handedOver, Cause.HANDED_OVER));
        }
        return made.with(made.ledger().with(left)).withPotEvents(events);
    }

    private static PotEvent event(int number, String prefix, int day, What what) {
        return new PotEvent(UUID.randomUUID(), day(day), codeOf(prefix, number), what, "");
    }

    private static Instant day(int afterPotting) {
        return NOW.minus(SINCE).plus(Duration.ofDays(afterPotting));
    }

    public static String codeOf(String prefix, int number) {
        return new CodeRun(prefix + "-", "", 3).code(number).text();
    }

    private static LedgerEntry entry(Instant at, Account from, Account to, int animals, Cause cause) {
        return LedgerEntry.of(UUID.randomUUID(), at, from, to, Stage.INSTAR2, animals, cause);
    }
}
