package org.moultwright.compute.survival;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.moultwright.compute.Fixture;
import org.moultwright.compute.survival.Turnbull.MassInterval;

/** The cosmesis data of Finkelstein and Wolfe 1985 against turnbull.csv beside this test. */
class TurnbullReferenceTest {
    private static final Fixture MASSES = Fixture.at("survival/turnbull.csv");

    @ParameterizedTest
    @ValueSource(strings = {"Rad", "RadChem"})
    void theMassesAgree(String group) {
        Turnbull estimate = Turnbull.of(intervals(group));
        List<CSVRecord> expected = rows(group).stream()
                .filter(row -> !row.get("left").equals("loglik"))
                .toList();

        assertThat(estimate.masses()).hasSameSizeAs(expected);
        for (int i = 0; i < expected.size(); i++) {
            MassInterval found = estimate.masses().get(i);
            assertThat(found.left()).isEqualTo(number(expected.get(i), "left"));
            assertThat(found.right()).isEqualTo(number(expected.get(i), "right"));
            assertThat(found.mass()).isCloseTo(number(expected.get(i), "mass"), within(1e-6));
            assertThat(found.survival()).isCloseTo(number(expected.get(i), "S"), within(1e-6));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"Rad", "RadChem"})
    void theLikelihoodAgrees(String group) {
        double expected = rows(group).stream()
                .filter(row -> row.get("left").equals("loglik"))
                .mapToDouble(row -> number(row, "mass"))
                .findFirst()
                .orElseThrow();

        assertThat(Turnbull.of(intervals(group)).logLikelihood()).isCloseTo(expected, within(1e-8));
    }

    @Test
    void exactTimesGiveTheirShares() {
        Turnbull estimate = Turnbull.of(List.of(
                new CensoredInterval(1, 1),
                new CensoredInterval(2, 2),
                new CensoredInterval(2, 2),
                new CensoredInterval(3, Double.POSITIVE_INFINITY)));

        assertThat(estimate.masses()).extracting(MassInterval::mass).satisfies(masses -> {
            assertThat(masses).hasSize(3);
            assertThat(masses.get(0)).isCloseTo(0.25, within(1e-9));
            assertThat(masses.get(1)).isCloseTo(0.5, within(1e-9));
        });
    }

    private static List<CSVRecord> rows(String group) {
        return MASSES.rows().stream()
                .filter(row -> row.get("group").equals(group))
                .toList();
    }

    private static List<CensoredInterval> intervals(String group) {
        return Fixture.at("survival/cosmesis.csv").rows().stream()
                .filter(row -> row.get("treatment").equals(group))
                .map(row -> new CensoredInterval(number(row, "left"), number(row, "right")))
                .toList();
    }

    private static double number(CSVRecord row, String column) {
        String written = row.get(column);
        return written.equals("Inf") ? Double.POSITIVE_INFINITY : Double.parseDouble(written);
    }
}
