package org.moultwright.ui.forecast;

import java.util.Map;
import java.util.Optional;
import org.moultwright.compute.forecast.BroodForecast;

/**
 * What would be expected if every place were set alike from now on.
 *
 * @param celsius the set-point tried, in °C
 * @param byBrood the forecast under it, by brood code
 */
record WhatIfAnswer(double celsius, Map<String, BroodForecast> byBrood) {
    WhatIfAnswer {
        byBrood = Map.copyOf(byBrood);
    }

    Optional<BroodForecast> of(String brood) {
        return Optional.ofNullable(byBrood.get(brood));
    }
}
