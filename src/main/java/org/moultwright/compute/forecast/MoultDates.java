package org.moultwright.compute.forecast;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;
import org.moultwright.compute.stage.Chance;
import org.moultwright.compute.stage.PassingLaw;
import org.moultwright.compute.stage.PassingState;
import org.moultwright.compute.stage.TrayHistory;
import org.moultwright.domain.Stage;

/**
 * Plays one tray's moults through for every possible truth: how many pass in the end, and when.
 *
 * <p>An animal's milestones keep their order from boundary to boundary.
 */
final class MoultDates {
    /** What the fates of two animals of a tray have in common (assumption). */
    private static final double FATE_CORRELATION = 0.03;

    private final TrayHistory tray;
    private final int trayIndex;
    private final TrayClock clock;
    private final Outlook outlook;
    private final List<Map<Milestone, double[]>> ages = new ArrayList<>();
    private final int[][] finallyPassed;

    MoultDates(TrayHistory tray, int trayIndex, TrayClock clock, Outlook outlook, Chance chance) {
        this.tray = tray;
        this.trayIndex = trayIndex;
        this.clock = clock;
        this.outlook = outlook;
        int boundaries = tray.evidence().size();
        this.finallyPassed = new int[boundaries][outlook.size()];
        for (int boundary = 0; boundary < boundaries; boundary++) {
            Map<Milestone, double[]> byMilestone = new EnumMap<>(Milestone.class);
            for (Milestone milestone : Milestone.values()) {
                byMilestone.put(milestone, new double[outlook.size()]);
            }
            ages.add(byMilestone);
            PassAges passAges = new PassAges(tray.evidence().get(boundary), chance);
            for (int draw = 0; draw < outlook.size(); draw++) {
                play(boundary, draw, passAges, chance);
            }
        }
    }

    /** How many animals pass the last boundary in the end, by draw. */
    int[] finallyPassedLast() {
        return finallyPassed[finallyPassed.length - 1];
    }

    /** One forecast for each boundary that at least half of all draws see passed by any. */
    List<MoultForecast> forecasts(List<Stage> boundaries) {
        List<MoultForecast> forecasts = new ArrayList<>();
        for (int k = 0; k < boundaries.size(); k++) {
            int boundary = k;
            int[] withAny = IntStream.range(0, outlook.size())
                    .filter(draw -> finallyPassed[boundary][draw] > 0)
                    .toArray();
            if (2 * withAny.length >= outlook.size()) {
                forecasts.add(new MoultForecast(
                        boundaries.get(k),
                        tray.evidence().get(k).last().passed(),
                        interval(k, Milestone.FIRST, withAny),
                        interval(k, Milestone.HALF, withAny),
                        interval(k, Milestone.MOST, withAny)));
            }
        }
        return forecasts;
    }

    private void play(int boundary, int draw, PassAges passAges, Chance chance) {
        PassingLaw law = outlook.parameters(draw).law(trayIndex, boundary);
        PassingState last = tray.evidence().get(boundary).last();
        double survivalNow = law.survival(last.age());
        double median = Math.max(last.age(), Math.exp(law.logMedian()));
        double willPass = (1 - law.neverGivenWaiting(survivalNow)) * outlook.survival(draw, last.age(), median);
        int coming = chance.betaBinomial((int) Math.round(last.waiting()), willPass, FATE_CORRELATION);
        int total = (int) Math.round(last.passed()) + coming;
        finallyPassed[boundary][draw] = total;
        for (Milestone milestone : Milestone.values()) {
            double earliest = boundary == 0 ? 0 : ages(boundary - 1, milestone)[draw];
            double age = total > 0 ? passAges.draw(milestone.rank(total), coming, law) : 0;
            ages(boundary, milestone)[draw] = Math.max(earliest, age);
        }
    }

    private double[] ages(int boundary, Milestone milestone) {
        return Objects.requireNonNull(ages.get(boundary).get(milestone));
    }

    private InstantInterval interval(int boundary, Milestone milestone, int[] draws) {
        double[] agesByDraw = ages(boundary, milestone);
        double[] millis = Arrays.stream(draws)
                .mapToDouble(draw -> clock.millisAt(agesByDraw[draw], draw))
                .toArray();
        Quantiles quantiles = Quantiles.of(millis);
        return new InstantInterval(
                instant(quantiles.percent(10)), instant(quantiles.percent(50)), instant(quantiles.percent(90)));
    }

    private static Instant instant(double epochMillis) {
        return Instant.ofEpochMilli(Math.round(epochMillis));
    }
}
