package org.moultwright.compute.forecast;

import java.util.List;
import java.util.Optional;
import org.moultwright.domain.Stage;

/**
 * What is expected of one tray.
 *
 * @param tray the tray's code
 * @param warmDays its age in warm-days
 * @param expectedAlive animals alive in it now, the best estimate from counts and ledger
 * @param moults one for each stage yet to be entered or already entered; empty where there is too little to go on
 * @param compositions one for each instant asked for; empty where there is too little to go on
 * @param possible the same moults in each of many possible truths
 */
public record TrayForecast(
        String tray,
        double warmDays,
        double expectedAlive,
        List<MoultForecast> moults,
        List<Composition> compositions,
        PossibleDates possible) {
    public TrayForecast {
        moults = List.copyOf(moults);
        compositions = List.copyOf(compositions);
    }

    /** A tray whose dates are known each by itself only. */
    public TrayForecast(
            String tray,
            double warmDays,
            double expectedAlive,
            List<MoultForecast> moults,
            List<Composition> compositions) {
        this(tray, warmDays, expectedAlive, moults, compositions, PossibleDates.NONE);
    }

    /** When its animals enter a stage; empty where there is too little to go on. */
    public Optional<MoultForecast> moult(Stage into) {
        return moults.stream().filter(moult -> moult.into() == into).findFirst();
    }
}
