package org.moultwright.workflow;

import java.time.Instant;
import java.util.List;
import org.moultwright.domain.Require;
import org.moultwright.domain.label.Paper;

/**
 * What goes with animals to whoever takes them over; all of it in words, and nothing the keeper did not write down.
 *
 * @param paper what it is printed on
 * @param title what it is
 * @param day the day of the hand-over
 * @param from who gives them, line by line as typed; none to be filled in by hand
 * @param to who takes them, line by line as typed; none to be filled in by hand
 * @param lots what is handed over, at least one
 * @param total how many animals in all
 * @param cautions what must be minded
 * @param madeAt when the slip was made
 */
public record HandOverSlip(
        Paper paper,
        String title,
        String day,
        List<String> from,
        List<String> to,
        List<Lot> lots,
        String total,
        List<String> cautions,
        Instant madeAt) {
    public HandOverSlip {
        from = List.copyOf(from);
        to = List.copyOf(to);
        lots = List.copyOf(lots);
        cautions = List.copyOf(cautions);
        Require.that(!lots.isEmpty(), "lots is empty but must hold at least 1");
    }

    /**
     * The animals of one brood in one stage.
     *
     * @param taxon scientific name of the species
     * @param what how many of which stage
     * @param origin the brood, and what is known of its sac
     * @param codes the codes of their pots
     */
    public record Lot(String taxon, String what, String origin, List<String> codes) {
        public Lot {
            codes = List.copyOf(codes);
        }
    }
}
