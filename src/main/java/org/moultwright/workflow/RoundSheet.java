package org.moultwright.workflow;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.UUID;
import org.moultwright.domain.Cause;
import org.moultwright.domain.Check;
import org.moultwright.domain.Look;
import org.moultwright.domain.Require;
import org.moultwright.domain.Stage;

/**
 * One tray's sheet of the daily round, as filled in.
 *
 * @param brood the code of the brood
 * @param tray the tray's code
 * @param at when the keeper looked
 * @param looks what was seen of each stage, after the dead were taken out
 * @param losses the animals taken out dead or infertile
 * @param mould mould found, if any
 * @param care what was done, in the words of {@link org.moultwright.domain.CareNote}
 * @param note further words, possibly empty
 */
public record RoundSheet(
        String brood,
        String tray,
        Instant at,
        Map<Stage, Look> looks,
        List<Loss> losses,
        Optional<Mould> mould,
        Set<String> care,
        String note) {

    public RoundSheet {
        looks = Map.copyOf(looks);
        losses = List.copyOf(losses);
        care = Set.copyOf(care);
    }

    /** Animals of one stage taken out for one cause; {@link Cause#INFERTILE} ones never lived. */
    public record Loss(Stage stage, Cause cause, int count) {
        public Loss {
            Require.atLeast("count", count, 1);
        }
    }

    /** Mould as the sheet holds it; the animals lost to it stand among the losses. */
    public record Mould(String where, String extent, String action) {}

    public int taken() {
        return losses.stream().mapToInt(Loss::count).sum();
    }

    /** All animals alive in the tray, if every stage looked at was counted. */
    public OptionalInt counted() {
        return new Check(new UUID(0, 0), tray, at, looks).total();
    }
}
