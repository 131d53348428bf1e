package org.moultwright.ui.climate;

import java.util.Locale;
import java.util.Optional;
import org.moultwright.compute.psychro.CondensationRisk;
import org.moultwright.compute.psychro.MeasuredAir;
import org.moultwright.compute.psychro.MoistAir;
import org.moultwright.compute.psychro.WallState;
import org.moultwright.domain.ColdestWall;
import org.moultwright.ui.control.Tone;

/**
 * The air at the chosen probe, and whether its water settles on the coldest wall.
 *
 * @param air humidity, dew point, water in it and what it lacks; empty where humidity is not measured
 * @param wall what may be said of the wall
 * @param assumes what that rests on
 * @param tone how urgent the wall is
 */
record AirNow(String air, String wall, String assumes, Tone tone) {
    static final AirNow NOTHING = new AirNow("", "", "", Tone.MUTED);

    /** @param measured the wall as its probe says, where one lies there and was heard lately */
    static AirNow of(MeasuredAir sample, Optional<ColdestWall> said, Optional<MeasuredAir.Wall> measured) {
        MoistAir air = sample.air();
        String words = String.format(
                Locale.ROOT,
                "%.0f %% RH%ndew point %.1f ± %.1f °C%n%.1f g/m³, lacks %.2f kPa",
                sample.humidityPercent(),
                air.dewPointCelsius(),
                air.dewPointSdCelsius(sample.sdCelsius(), sample.humiditySdPercent()),
                air.absoluteHumidityGramsPerCubicMetre(),
                air.vapourDeficitKilopascal());
        if (said.isEmpty()) {
            return new AirNow(words, "Nothing tells how cold the wall is.", "", Tone.MUTED);
        }
        return sample.wall(said.get(), measured)
                .map(wall -> judged(words, sample.risk(wall), wall, said.get()))
                .orElseGet(() -> new AirNow(
                        words,
                        "The probe on the wall, " + said.get().probe().orElse("") + ", is silent.",
                        "",
                        Tone.WARN));
    }

    private static AirNow judged(String words, CondensationRisk risk, MeasuredAir.Wall wall, ColdestWall said) {
        return new AirNow(words, wall(wall.celsius(), risk), assumes(said), tone(risk.state()));
    }

    private static String wall(double celsius, CondensationRisk risk) {
        String chance = risk.chanceOfWater() < 0.005
                ? "chance of water under 1 %"
                : risk.chanceOfWater() > 0.995
                        ? "chance of water over 99 %"
                        : String.format(Locale.ROOT, "chance of water %.0f %%", 100 * risk.chanceOfWater());
        String state =
                switch (risk.state()) {
                    case DRY -> "stays dry";
                    case MAY_WET -> "may get wet";
                    case WILL_WET -> "most likely gets wet, air the box";
                };
        return String.format(
                Locale.ROOT,
                "Wall %.1f °C: %s, %s (%+.1f ± %.1f from dew)",
                celsius,
                state,
                chance,
                risk.aboveDewPointCelsius(),
                risk.sdCelsius());
    }

    private static String assumes(ColdestWall wall) {
        return wall.probe()
                .map(probe -> "By probe " + probe + " on the wall.")
                .orElseGet(() -> String.format(
                        Locale.ROOT,
                        "Assumes the coldest wall %.1f ± %.1f °C below the air, as you said; nothing measures it.",
                        wall.belowAirCelsius(),
                        wall.sdCelsius()));
    }

    private static Tone tone(WallState state) {
        return switch (state) {
            case DRY -> Tone.OK;
            case MAY_WET -> Tone.WARN;
            case WILL_WET -> Tone.BAD;
        };
    }
}
