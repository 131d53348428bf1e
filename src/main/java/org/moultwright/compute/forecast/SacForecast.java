package org.moultwright.compute.forecast;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.moultwright.domain.Stage;

/**
 * What is expected inside a sac nobody has opened, from the laying, the belief and the climate where it is.
 *
 * @param warmDays its age
 * @param days its age by the calendar
 * @param moults one for each stage to be entered; first and 95 % as of {@link #EGGS_SUPPOSED} eggs
 */
public record SacForecast(double warmDays, double days, List<MoultForecast> moults) {
    /** How many eggs are supposed to be in it (assumption): the first of few comes later than the first of many. */
    public static final int EGGS_SUPPOSED = 100;

    public SacForecast {
        moults = List.copyOf(moults);
    }

    /** When its animals enter a stage. */
    public Optional<MoultForecast> moult(Stage into) {
        return moults.stream().filter(moult -> moult.into() == into).findFirst();
    }

    /** When to take it from the mother, where both ends of the stage with legs are known. */
    public Optional<PullWindow> pull() {
        return moult(Stage.POSTEMBRYO)
                .flatMap(legs -> moult(Stage.INSTAR1)
                        .map(nymph ->
                                new PullWindow(legs.half().p50(), nymph.half().p50())));
    }

    /**
     * The days on which most are eggs with legs, which can be sorted and have yet to moult: from the middle of the date
     * by which half have legs to the middle of that by which half are nymphs. Common practice, no source.
     */
    public record PullWindow(Instant from, Instant to) {}
}
