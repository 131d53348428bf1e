package org.moultwright.workflow;

import java.time.InstantSource;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.moultwright.domain.Account;
import org.moultwright.domain.CareNote;
import org.moultwright.domain.Cause;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.domain.Stage;
import org.moultwright.language.Texts;

/** What a sitter may write down: animals found dead, and a tray watered. Nothing of it is a look. */
public final class SitterDeeds {
    static final String REFUSAL =
            Texts.say("The desk is in a sitter's hands: only the dead and water are written down. The keeper "
                    + "takes it back first.");

    private static final String BY_SITTER = Texts.say("by the sitter");
    private static final Set<String> CARE = Set.of(CareNote.WATERED, CareNote.NOTED);

    private final RecordRound record;
    private final InstantSource clock;

    public SitterDeeds(RecordRound record, InstantSource clock) {
        this.record = record;
        this.clock = clock;
    }

    /**
     * One animal found dead; it is on disk when this returns. A sitter need not know its stage: the commonest of the tray
     * stands in, and the cause is unknown.
     *
     * @throws IllegalArgumentException if the tray holds none
     */
    public Deed.Summary dead(TrayView tray) {
        Stage stage = tray.composition().entrySet().stream()
                .filter(animals -> animals.getValue() > 0)
                .max(Map.Entry.<Stage, Integer>comparingByValue()
                        .thenComparing(Map.Entry::getKey, Comparator.naturalOrder()))
                .map(Map.Entry::getKey)
                .orElse(Stage.INSTAR1);
        return save(tray, List.of(new RoundSheet.Loss(stage, Cause.UNKNOWN, 1)), Set.of());
    }

    /** The tray was watered; it is on disk when this returns. */
    public Deed.Summary watered(TrayView tray) {
        return save(tray, List.of(), Set.of(CareNote.WATERED));
    }

    private Deed.Summary save(TrayView tray, List<RoundSheet.Loss> dead, Set<String> care) {
        return record.save(
                new RoundSheet(
                        tray.brood(), tray.tray(), clock.instant(), Map.of(), dead, Optional.empty(), care, BY_SITTER),
                Optional.empty());
    }

    /** Whether nothing but such is in it. */
    static boolean areAll(Deed.Content content) {
        Deed.Content rest = new Deed.Content(
                content.entries().stream().filter(entry -> !isDeath(entry)).toList(),
                content.checks(),
                content.mould(),
                content.care().stream()
                        .filter(care -> !CARE.contains(care.what()))
                        .toList(),
                content.pots(),
                content.beliefs(),
                content.lessons(),
                content.calibrations(),
                content.displays(),
                content.climate(),
                content.moves(),
                content.potChanges(),
                content.sac(),
                content.photos());
        return rest.equals(Deed.Content.NOTHING);
    }

    private static boolean isDeath(LedgerEntry entry) {
        return entry.from().isTray() && entry.to().equals(Account.DEAD);
    }
}
