package org.moultwright.workflow;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.moultwright.domain.Require;
import org.moultwright.domain.Stage;

/**
 * A sheet of the round that was begun and is not saved, exactly as it was typed.
 *
 * @param brood the code of the brood
 * @param tray the tray's code
 * @param basis what stood of the tray when the sheet was begun
 * @param looks what was typed for each stage, half a look such as {@code 7/} included
 * @param losses the animals taken out
 * @param mould mould found, if any
 * @param care what was done
 * @param note further words, possibly empty
 */
public record SheetDraft(
        String brood,
        String tray,
        Basis basis,
        Map<Stage, String> looks,
        List<RoundSheet.Loss> losses,
        Optional<RoundSheet.Mould> mould,
        Set<String> care,
        String note) {
    /** What may be typed for a look. Not all of it is one: what was mistyped is kept as it is, and never counted. */
    public static final Pattern TYPABLE = Pattern.compile("-?[\\d.,/]{0,11}|seen|none");

    public SheetDraft {
        Require.text("brood", brood);
        Require.text("tray", tray);
        looks = Map.copyOf(looks);
        looks.values()
                .forEach(look ->
                        Require.that(TYPABLE.matcher(look).matches(), "looks hold '" + look + "', which is no look"));
        losses = List.copyOf(losses);
        care = Set.copyOf(care);
    }

    /**
     * What stood of a tray when its sheet was begun. Where something else stands now, the tray changed meanwhile.
     *
     * @param begunAt when the first of it was typed
     * @param alive animals in the tray by the ledger
     * @param lastWritten the latest look at the tray, or note of it, that was saved
     */
    public record Basis(Instant begunAt, int alive, Optional<Instant> lastWritten) {
        public boolean stillStands(int aliveNow, Optional<Instant> lastWrittenNow) {
            return alive == aliveNow && lastWritten.equals(lastWrittenNow);
        }
    }
}
