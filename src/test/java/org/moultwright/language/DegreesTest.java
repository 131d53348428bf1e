package org.moultwright.language;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** The factors are those of NIST Special Publication 811 (2008), appendix B.8; the pairs its defining points. */
class DegreesTest {
    @AfterEach
    void showCelsiusAgain() {
        Degrees.use(TemperatureUnit.CELSIUS);
    }

    @Test
    void temperaturesAndDifferencesConvertApart() {
        assertThat(TemperatureUnit.FAHRENHEIT.shown(0)).isEqualTo(32);
        assertThat(TemperatureUnit.FAHRENHEIT.shown(100)).isEqualTo(212);
        assertThat(TemperatureUnit.FAHRENHEIT.shown(-40)).isEqualTo(-40);
        assertThat(TemperatureUnit.FAHRENHEIT.shownApart(5)).isEqualTo(9);
        assertThat(TemperatureUnit.FAHRENHEIT.celsiusApart(9)).isEqualTo(5);
    }

    @Test
    void whatIsTypedIsShownAgainAsTyped() {
        for (TemperatureUnit unit : TemperatureUnit.values()) {
            Degrees.use(unit);
            for (int hundredths = -4000; hundredths <= 18500; hundredths++) {
                double typed = hundredths / 100.0;
                assertThat(Degrees.number(Degrees.celsius(typed), 2)).isEqualTo(Numbers.fixed(typed, 2));
                assertThat(Degrees.apart(Degrees.celsiusApart(typed), 2)).isEqualTo(Numbers.fixed(typed, 2));
            }
        }
    }

    @Test
    void aTemperatureComesBackFromAnyUnit() {
        for (TemperatureUnit unit : TemperatureUnit.values()) {
            for (int thousandths = -40_000; thousandths <= 85_000; thousandths += 7) {
                double celsius = thousandths / 1000.0;
                assertThat(unit.celsius(unit.shown(celsius))).isCloseTo(celsius, within(1e-9));
                assertThat(unit.celsiusApart(unit.shownApart(celsius))).isCloseTo(celsius, within(1e-9));
            }
        }
    }

    @Test
    void theUnitIsTheUsualOneOfAPlace() {
        assertThat(TemperatureUnit.usual(Locale.US)).isEqualTo(TemperatureUnit.FAHRENHEIT);
        assertThat(TemperatureUnit.usual(Locale.UK)).isEqualTo(TemperatureUnit.CELSIUS);
        assertThat(TemperatureUnit.usual(Locale.ENGLISH)).isEqualTo(TemperatureUnit.CELSIUS);
    }

    @Test
    void wordsCarryTheUnit() {
        Degrees.use(TemperatureUnit.FAHRENHEIT);
        assertThat(Degrees.words(27, 1)).isEqualTo("80.6 °F");
        assertThat(Degrees.apartWords(2, 0)).isEqualTo("4 °F");
        assertThat(Degrees.signedApart(-0.5, 1)).isEqualTo("-0.9");
        assertThat(Scale.APART.words(0.1)).isEqualTo("0.18");
        assertThat(Scale.TEMPERATURE.words(25)).isEqualTo("77");
    }
}
