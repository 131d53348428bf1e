package org.moultwright.domain;

import java.util.Optional;

/**
 * How cold the coldest wall of a container is, as the keeper says: a probe lies on it, or it is so much colder than
 * the air.
 *
 * @param probe the code of the probe that lies on it, empty where none does
 * @param belowAirCelsius how much colder it is than the air, in K; counts only without a probe
 * @param sdCelsius standard uncertainty of that
 */
public record ColdestWall(Optional<String> probe, double belowAirCelsius, double sdCelsius) {
    public ColdestWall {
        probe.ifPresent(code -> Require.text("probe", code));
        Require.within("belowAirCelsius", belowAirCelsius, 0, 30);
        Require.within("sdCelsius", sdCelsius, 0, 10);
    }

    public static ColdestWall measuredBy(String probe) {
        return new ColdestWall(Optional.of(probe), 0, 0);
    }

    public static ColdestWall below(double belowAirCelsius, double sdCelsius) {
        return new ColdestWall(Optional.empty(), belowAirCelsius, sdCelsius);
    }
}
