package org.moultwright.compute.psychro;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.moultwright.compute.psychro.VapourPressure.SONNTAG_1990;
import static org.moultwright.compute.psychro.VapourPressure.WMO_8;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MoistAirReferenceTest {

    @ParameterizedTest
    @CsvSource({
        // °C, WMO Guide No. 8, Sonntag 1990, in hPa: published formulas, values computed independently.
        "0, 6.1120, 6.1121",
        "10, 12.2603, 12.2813",
        "20, 23.3260, 23.3925",
        "25, 31.6006, 31.6990",
        "30, 42.3372, 42.4703",
        "40, 73.6746, 73.8530"
    })
    void saturationAgreesWithTheFormulasTables(double celsius, double wmo, double sonntag) {
        assertThat(WMO_8.saturationHectopascal(celsius)).isCloseTo(wmo, within(6e-5));
        assertThat(SONNTAG_1990.saturationHectopascal(celsius)).isCloseTo(sonntag, within(6e-5));
    }

    @ParameterizedTest
    @CsvSource({
        // °C, hPa by Buck 1981, hPa by IAPWS-IF97: computed independently from the published formulas.
        "0, 6.1121, 6.1121",
        "10, 12.2760, 12.2818",
        "20, 23.3728, 23.3921",
        "25, 31.6703, 31.6975",
        "30, 42.4351, 42.4669",
        "40, 73.8418, 73.8443"
    })
    void saturationAgreesWithOtherFormulasWithinATenthOfAPercent(double celsius, double buck, double if97) {
        double ours = SONNTAG_1990.saturationHectopascal(celsius);
        assertThat(ours).isCloseTo(buck, within(1e-3 * buck)).isCloseTo(if97, within(1e-3 * if97));
    }

    @ParameterizedTest
    @CsvSource({
        // CRC Handbook, kPa.
        "20, 2.3388",
        "25, 3.169",
        "30, 4.2455",
        "35, 5.6267",
        "40, 7.3814"
    })
    void saturationAgreesWithTheHandbookWithinATenthOfAPercent(double celsius, double kilopascal) {
        assertThat(SONNTAG_1990.saturationHectopascal(celsius) / 10).isCloseTo(kilopascal, within(1e-3 * kilopascal));
    }

    @ParameterizedTest
    @CsvSource({
        // °C, Pa, source.
        "5, 872.6, ASHRAE Fundamentals 2017",
        "25, 3169.7, ASHRAE Fundamentals 2017",
        "50, 12351.3, ASHRAE Fundamentals 2017",
        "15, 1705, FAO-56",
        "26.85, 3536.58941, IAPWS-IF97 at 300 K"
    })
    void saturationAgreesWithOtherTablesWithinATenthOfAPercent(double celsius, double pascal, String source) {
        assertThat(SONNTAG_1990.saturationHectopascal(celsius) * 100)
                .as(source)
                .isCloseTo(pascal, within(1e-3 * pascal));
    }

    @ParameterizedTest
    @CsvSource({
        // °C, % RH, dew point, g/m³, deficit in kPa: computed independently with the WMO constants.
        "20, 80, 16.442, 13.793, .4665",
        "25, 60, 16.693, 13.779, 1.2640",
        "26, 70, 20.102, 17.002, 1.0060",
        "28, 80, 24.224, 21.707, .7542",
        "30, 90, 28.178, 27.235, .4234"
    })
    void moistAirAgreesWithTheWmoFormulas(
            double celsius, double humidity, double dewPoint, double absolute, double deficit) {
        MoistAir air = new MoistAir(celsius, humidity, WMO_8);

        assertThat(air.dewPointCelsius()).isCloseTo(dewPoint, within(6e-4));
        assertThat(air.absoluteHumidityGramsPerCubicMetre()).isCloseTo(absolute, within(6e-4));
        assertThat(air.vapourDeficitKilopascal()).isCloseTo(deficit, within(6e-5));
        assertThat(MoistAir.of(celsius, humidity).dewPointCelsius()).isCloseTo(dewPoint, within(0.02));
    }

    @ParameterizedTest
    @CsvSource({"-20", "0", "15", "27.5", "60"})
    void theDewPointOfSaturatedAirIsItsTemperature(double celsius) {
        assertThat(MoistAir.of(celsius, 100).dewPointCelsius()).isCloseTo(celsius, within(1e-8));
    }

    @Test
    void aWallWetsByItsDistanceFromTheDewPoint() {
        MoistAir air = MoistAir.of(28, 80);
        double dewPoint = air.dewPointCelsius();

        assertThat(air.wall(dewPoint - 0.3, 0.2)).isEqualTo(WallState.WILL_WET);
        assertThat(air.wall(dewPoint - 0.1, 0.2)).isEqualTo(WallState.MAY_WET);
        assertThat(air.wall(dewPoint + 0.6, 0.2)).isEqualTo(WallState.MAY_WET);
        assertThat(air.wall(dewPoint + 0.8, 0.2)).isEqualTo(WallState.DRY);
    }

    @ParameterizedTest
    @CsvSource({"28, 80", "25, 60", "20, 95", "30, 40"})
    void theDewPointsUncertaintyIsThatOfRepeatedMeasuring(double celsius, double humidity) {
        SplittableRandom random = new SplittableRandom(3);
        double mean = MoistAir.of(celsius, humidity).dewPointCelsius();
        double squares = 0;
        int tries = 20_000;
        for (int i = 0; i < tries; i++) {
            double dewPoint = MoistAir.of(
                            celsius + 0.2 * random.nextGaussian(), Math.min(humidity + random.nextGaussian(), 100))
                    .dewPointCelsius();
            squares += (dewPoint - mean) * (dewPoint - mean);
        }
        assertThat(MoistAir.of(celsius, humidity).dewPointSdCelsius(0.2, 1))
                .isCloseTo(Math.sqrt(squares / tries), within(0.01));
    }

    @Test
    void theRiskOfAWallCountsTheUncertaintyOfAirAndWall() {
        MoistAir air = MoistAir.of(28, 80);
        double dewPoint = air.dewPointCelsius();
        double sd = Math.hypot(air.dewPointSdCelsius(0.1, 2), 0.3);

        CondensationRisk atDewPoint = CondensationRisk.of(air, 0.1, 2, dewPoint, 0.3);
        assertThat(atDewPoint.sdCelsius()).isCloseTo(sd, within(1e-12));
        assertThat(atDewPoint.chanceOfWater()).isCloseTo(0.5, within(1e-12));
        assertThat(atDewPoint.state()).isEqualTo(WallState.MAY_WET);
        // One standard normal deviation below: Φ(1) = 0.8413.
        CondensationRisk below = CondensationRisk.of(air, 0.1, 2, dewPoint - sd - 1e-9, 0.3);
        assertThat(below.chanceOfWater()).isCloseTo(0.8413, within(1e-4));
        assertThat(below.state()).isEqualTo(WallState.WILL_WET);
        assertThat(CondensationRisk.of(air, 0, 0, dewPoint + 1, 0).chanceOfWater())
                .isZero();
    }
}
