package org.moultwright.compute.forecast;

import java.time.Instant;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.moultwright.compute.stage.Chance;
import org.moultwright.compute.stage.PassingLaw;
import org.moultwright.compute.stage.PassingState;
import org.moultwright.compute.stage.TrayHistory;
import org.moultwright.domain.Stage;

/** What one tray will hold at an instant: its survivors, and how many of them past each boundary. */
final class TrayComposition {
    private static final int MOST_DRAWS = 400;

    private final TrayHistory tray;
    private final int trayIndex;
    private final TrayClock clock;
    private final Outlook outlook;
    private final List<Stage> boundaries;

    TrayComposition(TrayHistory tray, int trayIndex, TrayClock clock, Outlook outlook, List<Stage> boundaries) {
        this.tray = tray;
        this.trayIndex = trayIndex;
        this.clock = clock;
        this.outlook = outlook;
        this.boundaries = boundaries;
    }

    Composition at(Instant instant, Stage lowest, Chance chance) {
        int draws = Math.min(MOST_DRAWS, outlook.size());
        double[][] past = new double[boundaries.size() + 1][draws];
        for (int draw = 0; draw < draws; draw++) {
            play(instant, draw * outlook.size() / draws, past, draw, chance);
        }
        Map<Stage, CountInterval> byStage = new EnumMap<>(Stage.class);
        for (int k = 0; k <= boundaries.size(); k++) {
            double[] inStage = past[k].clone();
            for (int draw = 0; k < boundaries.size() && draw < draws; draw++) {
                inStage[draw] -= past[k + 1][draw];
            }
            byStage.put(
                    k == 0 ? lowest : boundaries.get(k - 1),
                    Quantiles.of(inStage).counts());
        }
        return new Composition(instant, byStage, Quantiles.of(past[0]).counts());
    }

    /** Fills in, for one draw, all alive and those alive past each boundary, never more than past the one before. */
    private void play(Instant instant, int draw, double[][] past, int column, Chance chance) {
        double now = clock.age();
        double then = clock.ageAt(instant, draw);
        double survival = outlook.survival(trayIndex, draw, now, then);
        past[0][column] = chance.binomial((int) Math.round(tray.alive()), survival);
        for (int k = 0; k < boundaries.size(); k++) {
            PassingLaw law = outlook.parameters(draw).law(trayIndex, k);
            PassingState last = tray.evidence().get(k).last();
            double chancePassed = law.passedIfWaitingAt(last.age(), then) * survival;
            double alivePast = chance.binomial((int) Math.round(tray.alivePast().get(k)), survival)
                    + chance.binomial((int) Math.round(tray.waiting().get(k)), chancePassed);
            past[k + 1][column] = Math.min(past[k][column], alivePast);
        }
    }
}
