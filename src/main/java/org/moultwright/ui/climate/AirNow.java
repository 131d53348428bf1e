package org.moultwright.ui.climate;

import java.util.Locale;
import java.util.Optional;
import org.moultwright.compute.psychro.CondensationRisk;
import org.moultwright.compute.psychro.MoistAir;
import org.moultwright.compute.psychro.WallState;
import org.moultwright.settings.WallSetting;
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

    /** Of a humidity probe nobody calibrated: an assumption of ours, near what sheets of cheap probes say. */
    static final double UNTRIED_HUMIDITY_SD_PERCENT = 3;

    /**
     * What is known of the air.
     *
     * @param humidityPercent corrected, above 0 and at most 100
     */
    record Sample(double celsius, double sdCelsius, double humidityPercent, double humiditySdPercent) {
        MoistAir air() {
            return MoistAir.of(celsius, humidityPercent);
        }
    }

    /** A wall's temperature by a probe that lies on it. */
    record OnWall(double celsius, double sdCelsius) {}

    /** @param measured the wall as its probe says, where one lies there and was heard lately */
    static AirNow of(Sample sample, Optional<WallSetting> said, Optional<OnWall> measured) {
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
        WallSetting wall = said.get();
        if (wall.probe().isPresent() && measured.isEmpty()) {
            return new AirNow(words, "The probe on the wall, " + wall.probe().get() + ", is silent.", "", Tone.WARN);
        }
        double celsius = measured.map(OnWall::celsius).orElse(sample.celsius() - wall.belowAirCelsius());
        double sd = measured.map(OnWall::sdCelsius).orElse(wall.sdCelsius());
        CondensationRisk risk = CondensationRisk.of(air, sample.sdCelsius(), sample.humiditySdPercent(), celsius, sd);
        return new AirNow(words, wall(celsius, risk), assumes(wall), tone(risk.state()));
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

    private static String assumes(WallSetting wall) {
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
