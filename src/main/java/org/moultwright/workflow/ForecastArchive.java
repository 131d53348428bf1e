package org.moultwright.workflow;

import java.util.List;
import java.util.Optional;

/**
 * The forecasts made, kept to be scored when the truth is known. Nothing in it is ever undone or edited. Forecasts of a
 * brood whose beginning was undone are of no brood any more, whoever has its code.
 */
public interface ForecastArchive {

    /** Keeps a forecast; it is on disk when this returns. One already there by id stays as it is. */
    void keep(MadeForecast forecast);

    /** The forecast of a brood that was kept last. */
    Optional<MadeForecast> latest(String brood);

    /** The forecasts made of a brood, in the order they were made. */
    List<MadeForecast> of(String brood);
}
