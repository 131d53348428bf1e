package org.moultwright.ui.forecast;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.moultwright.compute.forecast.HandsEvent;
import org.moultwright.compute.forecast.InstantInterval;
import org.moultwright.compute.forecast.MoultForecast;
import org.moultwright.domain.Stage;
import org.moultwright.text.ForecastWords;
import org.moultwright.ui.chart.Lane;

/**
 * How likely things are to happen in one tray on days nobody is there; probabilities within [0, 1].
 *
 * @param tray its code
 * @param moults those into the last stage and into nymphs, the last stage leading; empty where too little is known
 * @param separation when its animals should be separated; empty where too little is known
 */
record AwayChances(String tray, List<Moult> moults, Optional<Separation> separation) {
    static AwayChances of(Foreseen tray, Lane.Absence away) {
        List<Moult> moults = Stream.of(tray.lastStage(), Stage.INSTAR1)
                .distinct()
                .flatMap(into -> tray.moult(into).stream())
                .map(moult -> Moult.of(moult, away))
                .toList();
        return new AwayChances(
                tray.code(), moults, tray.moult(tray.lastStage()).map(moult -> Separation.of(moult.first(), away)));
    }

    /** How likely the tray needs hands on those days: what falls due before is done before leaving. */
    double needsHands() {
        return separation.map(due -> due.beforeReturn() - due.beforeLeaving()).orElse(0.0);
    }

    /**
     * A moult on those days.
     *
     * @param into the stage entered
     * @param hasBegun whether the first was seen: then only the others are still to come
     */
    record Moult(Stage into, boolean hasBegun, double first, double half, double most) {
        private static Moult of(MoultForecast moult, Lane.Absence away) {
            boolean hasBegun = ForecastWords.hasBegun(moult);
            return new Moult(
                    moult.into(),
                    hasBegun,
                    hasBegun ? 0 : moult.first().chanceBetween(away.from(), away.to()),
                    moult.half().chanceBetween(away.from(), away.to()),
                    moult.most().chanceBetween(away.from(), away.to()));
        }
    }

    /** How likely the time to separate them is over before the keeper leaves, and before the keeper returns. */
    record Separation(double beforeLeaving, double beforeReturn) {
        private static Separation of(InstantInterval first, Lane.Absence away) {
            return new Separation(
                    first.chanceBy(away.from().minus(HandsEvent.TOGETHER)),
                    first.chanceBy(away.to().minus(HandsEvent.TOGETHER)));
        }
    }
}
