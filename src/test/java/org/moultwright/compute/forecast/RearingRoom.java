package org.moultwright.compute.forecast;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.moultwright.compute.stage.Chance;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.Quality;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.domain.SetPoint;
import org.moultwright.domain.Span;

/** The incubator of the second simulator over one brood, by the half hour. */
final class RearingRoom {
    static final String INCUBATOR = "I1";
    static final String PROBE = "P1";
    private static final int STEPS_PER_DAY = 48;
    private static final int DAYS = 150;
    private static final int STEPS = DAYS * STEPS_PER_DAY;

    /** How the set-points of a keeper's broods differ, and how one brood's display strays from its usual error. */
    private static final double SET_POINT_SD = 0.3;

    private static final double DISPLAY_DRIFT_SD = 0.1;

    private final double[] displayed = new double[STEPS];
    private final double[] air = new double[STEPS];
    private final double probeTooHigh;
    private final int silentFrom;
    private final int silentTo;

    RearingRoom(RearingHouse house, Chance chance) {
        double usual = inHalves(house.likedCelsius() + SET_POINT_SD * chance.normal());
        double later = inHalves(usual + 0.5 * chance.normal());
        int changedAt = STEPS_PER_DAY * (15 + chance.below(50));
        double error = house.warmerThanShown() + DISPLAY_DRIFT_SD * chance.normal();
        double nightFall = 0.3 + 0.6 * chance.uniform();
        double weather = 0;
        for (int step = 0; step < STEPS; step++) {
            double hour = 24.0 * (step % STEPS_PER_DAY) / STEPS_PER_DAY;
            weather = 0.995 * weather + 0.025 * chance.normal();
            displayed[step] = step < changedAt ? usual : later;
            air[step] = displayed[step] + error + weather + nightFall * (hour > 8 && hour < 22 ? 0.4 : -0.5);
        }
        this.probeTooHigh = house.probeTooHigh();
        boolean isSilentOnce = chance.uniform() < 0.25;
        this.silentFrom = STEPS_PER_DAY * (10 + chance.below(60));
        this.silentTo = silentFrom + (isSilentOnce ? STEPS_PER_DAY / 2 * (1 + chance.below(6)) : 0);
    }

    /** Development added up from the room's first day, one more for each day at the reference. */
    double[] addedUp(DoubleUnaryOperator ratePerDay, boolean asDisplayed, double warmer) {
        double[] sum = new double[STEPS + 1];
        double[] celsius = asDisplayed ? displayed : air;
        for (int step = 0; step < STEPS; step++) {
            sum[step + 1] = sum[step] + ratePerDay.applyAsDouble(celsius[step] + warmer) / STEPS_PER_DAY;
        }
        return sum;
    }

    /** The sum by a day, or the day by a sum: straight between the steps. */
    static double sumAt(double[] sum, double day) {
        double step = Math.max(0, Math.min(STEPS - 1e-6, day * STEPS_PER_DAY));
        int whole = (int) step;
        return sum[whole] + (step - whole) * (sum[whole + 1] - sum[whole]);
    }

    static double dayAt(double[] sum, double wanted) {
        if (wanted >= sum[STEPS]) {
            return Double.POSITIVE_INFINITY;
        }
        int low = 0;
        int high = STEPS;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (sum[middle] <= wanted) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + (wanted - sum[low]) / (sum[high] - sum[low])) / STEPS_PER_DAY;
    }

    ReadingSeries readings() {
        ReadingSeries.Builder series = new ReadingSeries.Builder();
        for (int step = 0; step < STEPS; step += 2) {
            if (step < silentFrom || step >= silentTo) {
                double shown = Math.round(16 * (air[step] + probeTooHigh)) / 16.0;
                series.add(at(step).toEpochMilli(), shown, Double.NaN, Quality.GOOD);
            }
        }
        return series.build();
    }

    List<SetPoint> setPoints() {
        List<SetPoint> all = new ArrayList<>();
        int from = 0;
        for (int step = 1; step <= STEPS; step++) {
            if (step == STEPS || displayed[step] != displayed[from]) {
                Optional<Instant> to = step == STEPS ? Optional.empty() : Optional.of(at(step));
                all.add(new SetPoint(INCUBATOR, new Span(at(from), to), displayed[from], Double.NaN));
                from = step;
            }
        }
        return all;
    }

    ProbeStay probeStay() {
        return new ProbeStay(PROBE, INCUBATOR, new Span(at(0), Optional.empty()), 0, 0.4);
    }

    private static Instant at(int step) {
        return TriedBrood.START.plus(Duration.ofMinutes(30L * step));
    }

    private static double inHalves(double celsius) {
        return Math.rint(2 * celsius) / 2;
    }
}
