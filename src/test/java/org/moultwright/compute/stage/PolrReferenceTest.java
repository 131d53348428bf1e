package org.moultwright.compute.stage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.moultwright.compute.Fixture;

/**
 * What stands between two thresholds of a normal law, held against R's MASS::polr: the deviance of its probit fit of the
 * housing table, and that no estimate of it can be moved without a loss.
 */
class PolrReferenceTest {
    private static final String FIT = "polr.housing.probit";
    private static final Fixture R = Fixture.at("stage/polr.csv");
    private static final Fixture HOUSING = Fixture.at("stage/housing.csv");

    @Test
    void theDevianceIsThatOfTheFit() {
        assertThat(deviance(estimates())).isCloseTo(R.value(FIT, "deviance"), within(1e-8));
    }

    @Test
    void noEstimateCanBeMovedWithoutALoss() {
        estimates().forEach((name, estimate) -> {
            for (double step : new double[] {-1e-3, 1e-3}) {
                Map<String, Double> moved = new TreeMap<>(estimates());
                moved.put(name, estimate + step);
                assertThat(deviance(moved)).as("%s by %s", name, step).isGreaterThan(deviance(estimates()));
            }
        });
    }

    private static double deviance(Map<String, Double> estimates) {
        return -2
                * HOUSING.rows().stream()
                        .mapToDouble(row -> logLikelihood(row, estimates))
                        .sum();
    }

    private static double logLikelihood(CSVRecord row, Map<String, Double> estimates) {
        double mean = level("Infl" + row.get("influence"), estimates)
                + level("Type" + row.get("type"), estimates)
                + level("Cont" + row.get("contact"), estimates);
        double lower = estimates.get("Low|Medium") - mean;
        double upper = estimates.get("Medium|High") - mean;
        return Double.parseDouble(row.get("low")) * NormalTails.logCdf(lower)
                + Double.parseDouble(row.get("medium")) * NormalTails.logDifference(lower, upper)
                + Double.parseDouble(row.get("high")) * NormalTails.logCdf(-upper);
    }

    /** The first level of each factor stands at 0. */
    private static double level(String name, Map<String, Double> estimates) {
        return estimates.getOrDefault(name, 0.0);
    }

    private static Map<String, Double> estimates() {
        Map<String, Double> estimates = new TreeMap<>();
        for (String name :
                new String[] {"InflMedium", "InflHigh", "TypeApartment", "TypeAtrium", "TypeTerrace", "ContHigh"}) {
            estimates.put(name, R.value(FIT, "coef[" + name + "]"));
        }
        estimates.put("Low|Medium", R.value(FIT, "zeta[Low|Medium]"));
        estimates.put("Medium|High", R.value(FIT, "zeta[Medium|High]"));
        return estimates;
    }
}
