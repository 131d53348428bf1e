package org.moultwright.ui.climate;

import java.util.Optional;
import org.moultwright.compute.psychro.CondensationRisk;
import org.moultwright.compute.psychro.MeasuredAir;
import org.moultwright.compute.psychro.MoistAir;
import org.moultwright.compute.psychro.WallState;
import org.moultwright.domain.ColdestWall;
import org.moultwright.language.Degrees;
import org.moultwright.language.Numbers;
import org.moultwright.language.Texts;
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
        String words = Texts.say(
                "{0} % RH\ndew point {1} ± {2} {5}\n{3} g/m³, lacks {4} kPa",
                Numbers.fixed(sample.humidityPercent(), 0),
                Degrees.number(air.dewPointCelsius(), 1),
                Degrees.apart(air.dewPointSdCelsius(sample.sdCelsius(), sample.humiditySdPercent()), 1),
                Numbers.fixed(air.absoluteHumidityGramsPerCubicMetre(), 1),
                Numbers.fixed(air.vapourDeficitKilopascal(), 2),
                Degrees.symbol());
        if (said.isEmpty()) {
            return new AirNow(words, Texts.say("Nothing tells how cold the wall is."), "", Tone.MUTED);
        }
        return sample.wall(said.get(), measured)
                .map(wall -> judged(words, sample.risk(wall), wall, said.get()))
                .orElseGet(() -> new AirNow(
                        words,
                        Texts.say(
                                "The probe on the wall, {0}, is silent.",
                                said.get().probe().orElse("")),
                        "",
                        Tone.WARN));
    }

    private static AirNow judged(String words, CondensationRisk risk, MeasuredAir.Wall wall, ColdestWall said) {
        return new AirNow(words, wall(wall.celsius(), risk), assumes(said), tone(risk.state()));
    }

    private static String wall(double celsius, CondensationRisk risk) {
        String chance = risk.chanceOfWater() < 0.005
                ? Texts.say("chance of water under 1 %")
                : risk.chanceOfWater() > 0.995
                        ? Texts.say("chance of water over 99 %")
                        : Texts.say("chance of water {0} %", Numbers.fixed(100 * risk.chanceOfWater(), 0));
        String state =
                switch (risk.state()) {
                    case DRY -> Texts.say("stays dry");
                    case MAY_WET -> Texts.say("may get wet");
                    case WILL_WET -> Texts.say("most likely gets wet, air the box");
                };
        return Texts.say(
                "Wall {0}: {1}, {2} ({3} ± {4} from dew)",
                Degrees.words(celsius, 1),
                state,
                chance,
                Degrees.signedApart(risk.aboveDewPointCelsius(), 1),
                Degrees.apart(risk.sdCelsius(), 1));
    }

    private static String assumes(ColdestWall wall) {
        return wall.probe()
                .map(probe -> Texts.say("By probe {0} on the wall.", probe))
                .orElseGet(() -> Texts.say(
                        "Assumes the coldest wall {0} ± {1} {2} below the air, as you said; nothing measures it.",
                        Degrees.apart(wall.belowAirCelsius(), 1),
                        Degrees.apart(wall.sdCelsius(), 1),
                        Degrees.symbol()));
    }

    private static Tone tone(WallState state) {
        return switch (state) {
            case DRY -> Tone.OK;
            case MAY_WET -> Tone.WARN;
            case WILL_WET -> Tone.BAD;
        };
    }
}
