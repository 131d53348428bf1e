package org.moultwright.compute.rate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Published development times of Helicoverpa armigera. */
class ThermalRequirementReferenceTest {

    @Test
    void larvaeOfNoorUlAneAndOthers2018() {
        // Bull. Entomol. Res., doi 10.1017/S0007485317000724, 15-35 °C: published 11.1 °C and 247.7
        // degree-days; least squares on 1/days computed independently 11.12, 248.2, R² .979.
        ThermalRequirement larva = ThermalRequirement.fit(times(
                new double[] {15, 17.5, 20, 25, 27.5, 30, 35},
                new double[] {70.2, 49.7, 25.3, 15.9, 15.1, 13.2, 10.8}));

        assertThat(larva.lowerCelsius()).isCloseTo(11.1, within(0.05)).isCloseTo(11.12, within(0.005));
        assertThat(larva.degreeDays()).isCloseTo(247.7, within(0.6)).isCloseTo(248.2, within(0.05));
        assertThat(larva.rSquared()).isCloseTo(0.979, within(5e-4));
    }

    @Test
    void pupaeOfNoorUlAneAndOthers2018() {
        // Least squares computed independently 10.37 and 203.7; published 9.9 and 213.
        ThermalRequirement pupa = ThermalRequirement.fit(
                times(new double[] {17.5, 20, 25, 27.5, 30, 35}, new double[] {31.8, 22.2, 12.5, 11.4, 10.7, 8.5}));

        assertThat(pupa.lowerCelsius()).isCloseTo(10.37, within(0.005));
        assertThat(pupa.degreeDays()).isCloseTo(203.7, within(0.05));
    }

    @Test
    void eggsOfKay1981() {
        // Aust. J. Entomol., hours; least squares on all seven computed independently.
        double[] hours = {443.5, 205.7, 121.3, 81.9, 59.9, 49.2, 48.8};
        double[] days = new double[hours.length];
        for (int i = 0; i < hours.length; i++) {
            days[i] = hours[i] / 24;
        }
        ThermalRequirement egg =
                ThermalRequirement.fit(times(new double[] {13.3, 17.8, 20.8, 24.4, 27.2, 31.4, 35}, days));

        assertThat(egg.lowerCelsius()).isCloseTo(11.44, within(0.005));
        assertThat(egg.degreeDays()).isCloseTo(43.99, within(0.005));
        assertThat(egg.rSquared()).isCloseTo(0.968, within(5e-4));
    }

    @Test
    void refusesTimesThatTellNothingOfTemperature() {
        assertThatThrownBy(() -> ThermalRequirement.fit(times(new double[] {25, 25}, new double[] {4, 5})))
                .hasMessageContaining("fewer than two different temperatures");
        assertThatThrownBy(() -> ThermalRequirement.fit(times(new double[] {25, 30}, new double[] {4, 5})))
                .hasMessageContaining("no rise");
    }

    private static List<DevelopmentTime> times(double[] celsius, double[] days) {
        List<DevelopmentTime> times = new ArrayList<>();
        for (int i = 0; i < celsius.length; i++) {
            times.add(new DevelopmentTime(celsius[i], days[i]));
        }
        return times;
    }
}
