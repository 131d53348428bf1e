package org.moultwright.compute.stage;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Check;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.domain.Stage;

/**
 * What checks and ledger say of one tray together.
 *
 * @param tray its code
 * @param animals animals it had from the start: the median over all whole counts, less those moved in
 * @param opened animals the ledger says were put in at its opening
 * @param alive animals alive in it now
 * @param evidence one for each boundary, in order
 * @param alivePast animals alive now that had passed each boundary when it was last counted
 * @param waiting animals that had not passed each boundary when it was last counted, nor left or died before it since
 * @param exposures animals alive from whole count to whole count, and to the last look
 * @param losses animals found dead or missing
 */
public record TrayHistory(
        String tray,
        double animals,
        int opened,
        double alive,
        List<BoundaryEvidence> evidence,
        List<Double> alivePast,
        List<Double> waiting,
        List<Exposure> exposures,
        List<Loss> losses) {

    /** Animals of one stage alive over a span of age in warm-days. */
    public record Exposure(Stage stage, double fromAge, double toAge, int animals) {
        /** Their number times the warm-days lived. */
        public double animalWarmDays() {
            return animals * (toAge - fromAge);
        }
    }

    /** Animals of one stage found dead or missing at an age in warm-days. */
    public record Loss(Stage stage, double age, int animals) {}

    public TrayHistory {
        evidence = List.copyOf(evidence);
        alivePast = List.copyOf(alivePast);
        waiting = List.copyOf(waiting);
        exposures = List.copyOf(exposures);
        losses = List.copyOf(losses);
    }

    /** Age when it was last seen who lives, by a look or by what was found dead; 0 before any. */
    public double lastLookAge() {
        double looked = exposures.stream().mapToDouble(Exposure::toAge).max().orElse(0);
        return Math.max(looked, losses.stream().mapToDouble(Loss::age).max().orElse(0));
    }

    /** The trays of a brood, in order of first use. */
    public static List<String> traysOf(BroodRecord record) {
        Set<String> trays = new LinkedHashSet<>();
        for (LedgerEntry entry : record.ledger().standing()) {
            List.of(entry.from(), entry.to()).stream()
                    .filter(account -> account.isTray())
                    .forEach(account -> trays.add(account.code()));
        }
        record.checks().forEach(check -> trays.add(check.tray()));
        return List.copyOf(trays);
    }

    /**
     * The history of one tray.
     *
     * @param boundaries the stages whose entering is of interest, in order
     * @param age physiological age at an instant, in warm-days; checks at age 0 or before are passed over
     */
    public static TrayHistory of(
            BroodRecord record, String tray, List<Stage> boundaries, Instant asOf, ToDoubleFunction<Instant> age) {
        TrayFlow flow = new TrayFlow(tray, record.ledger().standing());
        List<Check> checks = record.checks().stream()
                .filter(check -> check.tray().equals(tray) && age.applyAsDouble(check.at()) > 0)
                .sorted(Comparator.comparing(Check::at))
                .toList();
        List<Check> whole =
                checks.stream().filter(check -> check.total().isPresent()).toList();
        double animals = animals(flow, whole);
        double alive = Math.max(0, animals - flow.gone(asOf));
        List<BoundaryEvidence> evidence = new ArrayList<>();
        List<Double> alivePast = new ArrayList<>();
        List<Double> waiting = new ArrayList<>();
        for (Stage boundary : boundaries) {
            BoundaryEvidence found = new BoundaryHistory(flow, checks, boundary, animals, age).evidence();
            evidence.add(found);
            alivePast.add(Math.min(alive, Math.max(0, found.last().passed() - flow.gonePast(boundary, asOf))));
            waiting.add(Math.max(
                    0, animals - flow.goneBefore(boundary, asOf) - found.last().passed()));
        }
        return new TrayHistory(
                tray,
                animals,
                flow.opened(),
                alive,
                evidence,
                alivePast,
                waiting,
                exposures(whole, checks, age),
                flow.losses(age));
    }

    private static double animals(TrayFlow flow, List<Check> whole) {
        double[] counts = whole.stream()
                .mapToDouble(check -> check.total().orElseThrow() + flow.gone(check.at()))
                .sorted()
                .toArray();
        if (counts.length == 0) {
            return flow.opened();
        }
        int middle = counts.length / 2;
        double median = counts.length % 2 == 1 ? counts[middle] : (counts[middle - 1] + counts[middle]) / 2;
        return Math.max(0, median);
    }

    /** From count to count, and to the last look of any kind: who died since, nobody has found. */
    private static List<Exposure> exposures(List<Check> whole, List<Check> looks, ToDoubleFunction<Instant> age) {
        List<Exposure> exposures = new ArrayList<>();
        for (int i = 0; i < whole.size(); i++) {
            Check check = whole.get(i);
            Check next = i + 1 < whole.size() ? whole.get(i + 1) : looks.get(looks.size() - 1);
            Arrays.stream(Stage.values())
                    .filter(stage -> check.counted(stage).orElse(0) > 0)
                    .forEach(stage -> exposures.add(new Exposure(
                            stage,
                            age.applyAsDouble(check.at()),
                            age.applyAsDouble(next.at()),
                            check.counted(stage).orElseThrow())));
        }
        return exposures;
    }
}
