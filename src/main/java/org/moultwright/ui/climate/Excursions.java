package org.moultwright.ui.climate;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.moultwright.domain.RollUp;
import org.moultwright.language.Numbers;
import org.moultwright.language.Texts;
import org.moultwright.text.DayWords;
import org.moultwright.ui.chart.Trace;

/** Stretches in which good readings stayed beyond a limit for some time without a break. */
final class Excursions {
    private final double lowCelsius;
    private final double highCelsius;
    private final Duration atLeast;
    private final Duration longestBridged;
    private final List<Trace.Stretch> found = new ArrayList<>();
    private int side;
    private long startMillis;
    private long lastMillis;

    private Excursions(double lowCelsius, double highCelsius, Duration atLeast, Duration longestBridged) {
        this.lowCelsius = lowCelsius;
        this.highCelsius = highCelsius;
        this.atLeast = atLeast;
        this.longestBridged = longestBridged;
    }

    /**
     * @param rollUps one counts where all of its good readings are beyond
     * @param atLeast shorter ones are left out
     * @param longestBridged a longer silence ends an excursion: nobody knows how long it lasted
     */
    static List<Trace.Stretch> of(List<RollUp> rollUps, Trace.Band limits, Duration atLeast, Duration longestBridged) {
        Excursions excursions = new Excursions(limits.lowCelsius(), limits.highCelsius(), atLeast, longestBridged);
        rollUps.stream().filter(rollUp -> rollUp.good() > 0).forEach(excursions::add);
        excursions.end();
        return excursions.found;
    }

    private void add(RollUp rollUp) {
        int now = rollUp.lowCelsius() > highCelsius ? 1 : rollUp.highCelsius() < lowCelsius ? -1 : 0;
        boolean broken = rollUp.firstMillis() - lastMillis > longestBridged.toMillis();
        if (now != side || broken) {
            end();
            side = now;
            startMillis = rollUp.firstMillis();
        }
        lastMillis = rollUp.lastMillis();
    }

    private void end() {
        Duration length = Duration.ofMillis(lastMillis - startMillis);
        if (side != 0 && length.compareTo(atLeast) >= 0) {
            String words = Texts.say(
                    "{0} {1} for {2}",
                    side > 0 ? Texts.say("above") : Texts.say("below"),
                    Numbers.fixed(side > 0 ? highCelsius : lowCelsius, 1),
                    DayWords.age(length));
            found.add(new Trace.Stretch(Instant.ofEpochMilli(startMillis), Instant.ofEpochMilli(lastMillis), words));
        }
        side = 0;
    }
}
