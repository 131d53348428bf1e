package org.moultwright.compute.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.moultwright.domain.CalibrationPoint;

/** Against OIML R 121:1996, table 1. */
class SaturatedSaltReferenceTest {

    @ParameterizedTest
    @CsvSource({
        // Salt, % RH at 20, 25 and 30 °C, printed uncertainty at 25 °C (about two standard ones).
        "LITHIUM_CHLORIDE, 12, 11.3, 11.3, .3",
        "MAGNESIUM_CHLORIDE, 33.1, 32.8, 32.4, .2",
        "POTASSIUM_CARBONATE, 43.2, 43.2, 43.2, .4",
        "SODIUM_CHLORIDE, 75.5, 75.3, 75.1, .2",
        "POTASSIUM_CHLORIDE, 85.1, 84.2, 83.6, .3",
        "POTASSIUM_SULPHATE, 97.6, 97.3, 97.0, .5"
    })
    void theTableIsThePublishedOne(SaturatedSalt salt, double at20, double at25, double at30, double expanded) {
        assertThat(salt.humidityPercent(20)).isEqualTo(at20);
        assertThat(salt.humidityPercent(25)).isEqualTo(at25);
        assertThat(salt.humidityPercent(30)).isEqualTo(at30);
        assertThat(salt.sdPercent(25)).isCloseTo(expanded / 2, within(1e-12));
    }

    @ParameterizedTest
    @EnumSource(SaturatedSalt.class)
    void betweenTheTablesTemperaturesItRunsStraight(SaturatedSalt salt) {
        double middle = (salt.humidityPercent(20) + salt.humidityPercent(25)) / 2;

        assertThat(salt.humidityPercent(22.5)).isCloseTo(middle, within(1e-12));
        assertThatIllegalArgumentException().isThrownBy(() -> salt.humidityPercent(19.9));
        assertThatIllegalArgumentException().isThrownBy(() -> salt.sdPercent(30.1));
    }

    @Test
    void aPointSaysWhichTableItUsed() {
        CalibrationPoint point = KnownPoints.salt(SaturatedSalt.POTASSIUM_CHLORIDE, 25, 82, 0.3);

        assertThat(point.source()).isEqualTo("OIML R 121:1996, KCl at 25.0 °C");
        assertThat(point.correction()).isCloseTo(2.2, within(1e-12));
    }
}
