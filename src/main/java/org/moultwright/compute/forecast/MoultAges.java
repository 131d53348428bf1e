package org.moultwright.compute.forecast;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.moultwright.compute.stage.Chance;
import org.moultwright.compute.stage.CohortLaw;
import org.moultwright.compute.stage.PassedBefore;
import org.moultwright.compute.stage.PassingLaw;
import org.moultwright.compute.stage.PassingState;
import org.moultwright.compute.stage.StageParameters;
import org.moultwright.compute.stage.TrayHistory;

/**
 * Plays one tray's moults through for every possible truth: how many pass in the end, and at what ages the
 * milestones fall. None of it depends on the temperatures to come.
 *
 * <p>An animal's milestones keep their order from boundary to boundary.
 */
final class MoultAges {
    /** What the fates of two animals of a tray have in common (assumption). */
    private static final double FATE_CORRELATION = 0.012;

    private final TrayHistory tray;
    private final int trayIndex;
    private final Outlook outlook;
    private final List<PassedBefore> before;
    private final double lastLookAge;

    /** Seconds of sharpness are plenty, in half the room. */
    private final float[][][] ages;

    private final int[][] finallyPassed;

    MoultAges(TrayHistory tray, int trayIndex, Outlook outlook, Chance chance) {
        this.tray = tray;
        this.trayIndex = trayIndex;
        this.outlook = outlook;
        this.before = tray.evidence().stream().map(PassedBefore::of).toList();
        this.lastLookAge = tray.lastLookAge();
        int boundaries = tray.evidence().size();
        this.finallyPassed = new int[boundaries][outlook.size()];
        this.ages = new float[boundaries][Milestone.values().length][outlook.size()];
        int[][] coming = new int[boundaries][outlook.size()];
        for (int boundary = 0; boundary < boundaries; boundary++) {
            PassAges passAges = new PassAges(tray.evidence().get(boundary), chance);
            for (int draw = 0; draw < outlook.size(); draw++) {
                play(boundary, draw, coming, passAges, chance);
            }
        }
    }

    /** How many animals pass the last boundary in the end, by draw. */
    int[] finallyPassedLast() {
        return finallyPassed[finallyPassed.length - 1];
    }

    /** The draws in which any animal passes a boundary. */
    int[] drawsWithAny(int boundary) {
        return IntStream.range(0, outlook.size())
                .filter(draw -> finallyPassed[boundary][draw] > 0)
                .toArray();
    }

    /** The age at a milestone, by draw. */
    float[] at(int boundary, Milestone milestone) {
        return ages[boundary][milestone.ordinal()];
    }

    private void play(int boundary, int draw, int[][] coming, PassAges passAges, Chance chance) {
        PassingLaw law = outlook.parameters(draw).law(trayIndex, boundary);
        int comingBefore = boundary == 0 ? 0 : coming[boundary - 1][draw];
        int stillComing = coming(boundary, draw, comingBefore, law, chance);
        int total = (int) Math.round(tray.evidence().get(boundary).last().passed()) + stillComing;
        coming[boundary][draw] = stillComing;
        finallyPassed[boundary][draw] = total;
        Optional<CohortLaw> cohort = boundary > 0 && stillComing > 0
                ? Optional.of(cohort(boundary, draw, comingBefore, law))
                : Optional.empty();
        for (Milestone milestone : Milestone.values()) {
            double earliest = boundary == 0 ? 0 : at(boundary - 1, milestone)[draw];
            double age = total > 0 ? passAges.draw(milestone.rank(total), stillComing, law, cohort) : 0;
            at(boundary, milestone)[draw] = (float) Math.max(earliest, age);
        }
    }

    private CohortLaw cohort(int boundary, int draw, int comingBefore, PassingLaw law) {
        return new CohortLaw(
                before.get(boundary - 1),
                outlook.parameters(draw).law(trayIndex, boundary - 1),
                comingBefore,
                law,
                outlook.likeBefore()[boundary],
                tray.evidence().get(boundary).last().age());
    }

    /** How many of those waiting will pass: of those past the boundary before, and of those yet to come to it. */
    private int coming(int boundary, int draw, int comingBefore, PassingLaw law, Chance chance) {
        StageParameters parameters = outlook.parameters(draw);
        PassingState last = tray.evidence().get(boundary).last();
        double waitingBefore = boundary == 0 ? 0 : tray.waiting().get(boundary - 1);
        int inStage = (int) Math.round(Math.max(0, tray.waiting().get(boundary) - waitingBefore));
        double stuck = parameters.stuckShare(boundary);
        double stuckIfWaiting = stuck / (stuck + (1 - stuck) * law.survival(last.age()));
        double median = parameters.medianAge(boundary);
        double known = Math.max(last.age(), lastLookAge);
        double lives = outlook.survival(trayIndex, draw, known, Math.max(known, median));
        int passing = chance.betaBinomial(inStage, (1 - stuckIfWaiting) * lives, FATE_CORRELATION);
        if (boundary == 0) {
            return passing;
        }
        double from = Math.max(known, parameters.medianAge(boundary - 1));
        double livesOn = outlook.survival(trayIndex, draw, from, Math.max(from, median));
        int following = chance.betaBinomial(comingBefore, (1 - stuck) * livesOn, FATE_CORRELATION);
        // The boundary before may have been counted earlier, when some were still waiting there that have passed both.
        return Math.min((int) Math.round(tray.waiting().get(boundary)), passing + following);
    }
}
