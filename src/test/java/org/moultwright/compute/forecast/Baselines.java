package org.moultwright.compute.forecast;

import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.moultwright.domain.Check;
import org.moultwright.domain.Stage;

/**
 * What a keeper reckons without a model: by counting days as earlier broods took (A), warm-days at the set-point
 * as they took (B), and B started anew from the last boundary half the brood was seen to pass (C); and of the
 * animals, the share that came of the earlier broods' (D), or of those of them alive as far along (E).
 *
 * @param calendarDay the day by A
 * @param setPointDay the day by B
 * @param restartedDay the day by C
 * @param yieldOfAll animals by D, no more than are alive
 * @param yieldOfAlive animals by E
 */
record Baselines(double calendarDay, double setPointDay, double restartedDay, double yieldOfAll, double yieldOfAlive) {
    /** The share of eggs that become slings where no brood has told (common practice says 0.4 to 0.95). */
    private static final double BELIEVED_YIELD = 0.8;

    static Baselines of(TriedBrood brood, double share, List<? extends TriedBrood> earlier) {
        double asOfDay = brood.asOfDay(share);
        int last = brood.boundaries() - 1;
        double setPointDays = meanOr(
                earlier, from -> from.setPointDaysBetween(from.laidDay(), from.halfDay(last)), brood.believed()[last]);
        double restarted = brood.dayAfter(brood.laidDay(), setPointDays);
        for (int k = 0; k < last; k++) {
            int boundary = k;
            double seen = seenDay(brood, k);
            if (seen < asOfDay) {
                double before = meanOr(
                        earlier,
                        from -> from.setPointDaysBetween(from.laidDay(), seenDay(from, boundary)),
                        brood.believed()[k]);
                restarted = brood.dayAfter(seen, setPointDays - before);
            }
        }
        double ofAll = meanOr(earlier, from -> (double) from.trueYield() / from.animals(), BELIEVED_YIELD);
        double ofAlive = meanOr(
                earlier,
                from -> (double) from.trueYield() / from.alive(from.asOfDay(share)),
                1 - (1 - BELIEVED_YIELD) * (1 - share));
        int alive = brood.alive(asOfDay);
        return new Baselines(
                brood.laidDay() + meanOr(earlier, from -> from.halfDay(last) - from.laidDay(), brood.believed()[last]),
                brood.dayAfter(brood.laidDay(), setPointDays),
                restarted,
                Math.min(alive, ofAll * brood.animals()),
                ofAlive * alive);
    }

    /** The day of the look after which half of all animals stood counted past a boundary, not so at the first look. */
    private static double seenDay(TriedBrood brood, int boundary) {
        Stage into = brood.record().brood().stages().get(boundary + 1);
        Map<String, Check> latest = new HashMap<>();
        boolean wasBelow = false;
        List<Check> counts = brood.record().checks().stream()
                .filter(check -> check.total().isPresent())
                .toList();
        for (Check check : counts) {
            latest.put(check.tray(), check);
            boolean isWhole = latest.size() == brood.trayCount();
            if (isWhole && isHalfPast(latest.values(), into)) {
                return wasBelow ? TriedBrood.day(check.at()) : Double.NaN;
            }
            wasBelow |= isWhole;
        }
        return Double.NaN;
    }

    private static boolean isHalfPast(Collection<Check> latest, Stage into) {
        int past = 0;
        int all = 0;
        for (Check check : latest) {
            all += check.total().orElse(0);
            past += Arrays.stream(Stage.values())
                    .filter(stage -> stage.isAtLeast(into))
                    .mapToInt(stage -> check.counted(stage).orElse(0))
                    .sum();
        }
        return 2 * past >= all;
    }

    private static double meanOr(
            List<? extends TriedBrood> earlier, ToDoubleFunction<TriedBrood> quantity, double believed) {
        return earlier.stream()
                .mapToDouble(quantity)
                .filter(Double::isFinite)
                .average()
                .orElse(believed);
    }
}
