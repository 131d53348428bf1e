package org.moultwright.workflow;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.moultwright.domain.Account;
import org.moultwright.domain.Brood;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Cause;
import org.moultwright.domain.Check;
import org.moultwright.domain.InstantRange;
import org.moultwright.domain.Ledger;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.domain.Look;
import org.moultwright.domain.Require;
import org.moultwright.domain.Stage;

/** Takes a newly opened sac into the book: the brood, its first entries and its first counts. */
public final class OpenSac {
    private final BroodBook book;
    private final Supplier<UUID> ids;

    public OpenSac(BroodBook book, Supplier<UUID> ids) {
        this.book = book;
        this.ids = ids;
    }

    /** Whether a code is still free for a brood. */
    public boolean isFree(String code) {
        return book.find(code).isEmpty();
    }

    /**
     * Keeps the sac as a new brood; it is on disk when this returns.
     *
     * @throws IllegalArgumentException if the code is taken
     */
    public BroodRecord open(Sac sac) {
        Require.that(isFree(sac.code()), "code '" + sac.code() + "' is taken by another brood");
        BroodRecord record = record(sac);
        book.takeIn(record, ReadingSource.of(record));
        return record;
    }

    private BroodRecord record(Sac sac) {
        Brood brood = new Brood(
                sac.code(),
                sac.taxon(),
                sac.zone(),
                sac.laid(),
                sac.pulled(),
                List.of(Stage.values()),
                Brood.DEFAULT_REFERENCE_CELSIUS,
                Optional.empty());
        List<LedgerEntry> entries = new ArrayList<>();
        List<Check> checks = new ArrayList<>();
        for (SacTray tray : sac.trays()) {
            tray.counts().forEach((stage, count) -> {
                if (count > 0) {
                    entries.add(fromSac(sac.at(), Account.tray(tray.code()), stage, count, Cause.OPENED));
                }
            });
            checks.add(check(sac.at(), tray));
        }
        if (sac.infertile() > 0) {
            entries.add(fromSac(sac.at(), Account.INFERTILE, Stage.EGG, sac.infertile(), Cause.INFERTILE));
        }
        BroodRecord empty = BroodRecord.of(brood);
        return new BroodRecord(
                brood,
                Ledger.of(entries),
                checks,
                empty.stays(),
                empty.probeStays(),
                empty.setPoints(),
                empty.readings(),
                empty.mould(),
                empty.care(),
                empty.pots(),
                empty.runUp());
    }

    private LedgerEntry fromSac(Instant at, Account to, Stage stage, int count, Cause cause) {
        return LedgerEntry.of(ids.get(), at, Account.SAC, to, stage, count, cause);
    }

    private Check check(Instant at, SacTray tray) {
        Map<Stage, Look> looks = new EnumMap<>(Stage.class);
        tray.counts().forEach((stage, count) -> looks.put(stage, new Look.Full(count)));
        return new Check(ids.get(), tray.code(), at, looks);
    }

    /**
     * A sac as its keeper describes it on opening.
     *
     * @param at when it was opened
     * @param trays what went into each tray, at least one animal in all
     * @param infertile eggs put aside as infertile
     */
    public record Sac(
            String code,
            String taxon,
            ZoneId zone,
            Optional<InstantRange> laid,
            Optional<Instant> pulled,
            Instant at,
            List<SacTray> trays,
            int infertile) {
        public Sac {
            Require.text("code", code);
            Require.text("taxon", taxon);
            Require.atLeast("infertile", infertile, 0);
            trays = List.copyOf(trays);
            Require.that(trays.stream().map(SacTray::code).distinct().count() == trays.size(), "a tray stands twice");
            Require.atLeast("animals", trays.stream().mapToInt(SacTray::total).sum(), 1);
        }
    }

    /** What was counted into one tray. */
    public record SacTray(String code, Map<Stage, Integer> counts) {
        public SacTray {
            Require.text("tray", code);
            counts = Map.copyOf(counts);
            counts.forEach((stage, count) -> Require.atLeast(stage.key(), count, 0));
        }

        int total() {
            return counts.values().stream().mapToInt(Integer::intValue).sum();
        }
    }
}
