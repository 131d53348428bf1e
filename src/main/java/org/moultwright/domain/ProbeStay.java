package org.moultwright.domain;

import java.time.Instant;
import java.util.Optional;

/**
 * A span in which a probe measured one container, with what is known of its error.
 *
 * @param probe the probe's code
 * @param container the container it measured
 * @param span from when until when
 * @param correction what its indications of temperature need
 * @param calibratedAt when it was calibrated for that, empty where the correction was only written down
 */
public record ProbeStay(
        String probe, String container, Span span, Correction correction, Optional<Instant> calibratedAt) {
    /** About where broods live; the error of a sloping correction is told for here. */
    private static final double USUAL_CELSIUS = Brood.DEFAULT_REFERENCE_CELSIUS;

    public ProbeStay {
        Require.text("probe", probe);
        Require.text("container", container);
        Require.within("offsetCelsius", -correction.at(USUAL_CELSIUS), -20, 20);
        Require.within("sdCelsius", correction.sdAt(USUAL_CELSIUS), 0, 20);
    }

    /**
     * A stay whose probe reads the same everywhere too high.
     *
     * @param offsetCelsius how much too high it reads: the air is the reading less this
     * @param sdCelsius standard uncertainty of the offset
     */
    public ProbeStay(String probe, String container, Span span, double offsetCelsius, double sdCelsius) {
        this(probe, container, span, Correction.constant(-offsetCelsius, sdCelsius), Optional.empty());
    }

    /** How much too high it reads where broods live. */
    public double offsetCelsius() {
        return 0 - correction.at(USUAL_CELSIUS);
    }

    /** Standard uncertainty of the offset. */
    public double sdCelsius() {
        return correction.sdAt(USUAL_CELSIUS);
    }

    /** The air's temperature behind an indication of the probe. */
    public double airCelsius(double indicatedCelsius) {
        return correction.correct(indicatedCelsius);
    }

    public ProbeStay with(Span other) {
        return new ProbeStay(probe, container, other, correction, calibratedAt);
    }
}
