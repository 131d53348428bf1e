package org.moultwright.device.profile;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.moultwright.workflow.LineForms.Proposal;
import org.moultwright.workflow.LineForms.WouldRead;

/**
 * How well a profile explains records.
 *
 * @param profile the profile
 * @param records the records as they are kept
 * @param told what it makes of each
 */
record Explanation(LineProfile profile, List<String> records, List<Told> told) {
    /** What a room with spiders can have; common practice, no source. */
    private static final double COLDEST_CELSIUS = 5;

    private static final double WARMEST_CELSIUS = 45;
    private static final double DRIEST_PERCENT = 10;

    static Explanation of(LineProfile profile, List<String> records) {
        return new Explanation(
                profile, records, records.stream().map(profile::decode).toList());
    }

    /** How much it makes sense of; a failed check and a value that no probe measures make none. */
    double understoodFraction() {
        return fraction(Explanation::isUnderstood);
    }

    double measuredFraction() {
        return fraction(decoded -> decoded instanceof Decoded.Measured);
    }

    double roomLikeFraction() {
        return fraction(decoded -> decoded instanceof Decoded.Measured measured
                && measured.temperatureCelsius() >= COLDEST_CELSIUS
                && measured.temperatureCelsius() <= WARMEST_CELSIUS
                && !(measured.humidityPercent() < DRIEST_PERCENT));
    }

    /** How much is told beside the temperature: a humidity, who says it, which record it is. */
    double toldPerRecord() {
        return told.stream().mapToInt(Explanation::toldBeside).average().orElse(0);
    }

    boolean isChecked() {
        return profile.isChecked();
    }

    boolean isUnasked() {
        return profile.poll().isEmpty();
    }

    Proposal proposal() {
        List<WouldRead> reads = IntStream.range(0, records.size())
                .mapToObj(i -> wouldRead(records.get(i), told.get(i)))
                .toList();
        return new Proposal(profile.choice(), profile.title(), understoodFraction(), reads);
    }

    private double fraction(Predicate<Decoded> counts) {
        return told.stream()
                .mapToDouble(each -> counts.test(each.decoded()) ? 1 : 0)
                .average()
                .orElse(0);
    }

    private static boolean isUnderstood(Decoded decoded) {
        return decoded instanceof Decoded.Fault fault
                ? fault.cause() != FaultCause.CHECKSUM && fault.cause() != FaultCause.OUT_OF_RANGE
                : !(decoded instanceof Decoded.Unreadable);
    }

    private static int toldBeside(Told each) {
        int humidity =
                each.decoded() instanceof Decoded.Measured measured && Double.isFinite(measured.humidityPercent())
                        ? 1
                        : 0;
        int who = each.origin().mark().isEmpty() ? 0 : 1;
        return humidity + who + (each.origin().sequence().isEmpty() ? 0 : 1);
    }

    private static WouldRead wouldRead(String rawLine, Told each) {
        if (each.decoded() instanceof Decoded.Measured measured) {
            double humidityPercent =
                    Double.isFinite(measured.humidityPercent()) ? measured.humidityPercent() : Double.NaN;
            return new WouldRead(
                    rawLine,
                    measured.temperatureCelsius(),
                    humidityPercent,
                    "",
                    each.origin().mark());
        }
        return new WouldRead(
                rawLine,
                Double.NaN,
                Double.NaN,
                fault(each.decoded()),
                each.origin().mark());
    }

    private static String fault(Decoded decoded) {
        if (decoded instanceof Decoded.Fault fault) {
            return fault.cause().key();
        }
        return decoded instanceof Decoded.Ignored ? "ignored" : "unreadable";
    }
}
