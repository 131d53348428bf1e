package org.moultwright.domain;

/**
 * A span in which a probe measured one container, with what is known of its error.
 *
 * @param probe the probe's code
 * @param container the container it measured
 * @param span from when until when
 * @param offsetCelsius how much too high it reads: the air is the reading less this
 * @param sdCelsius standard uncertainty of the offset
 */
public record ProbeStay(String probe, String container, Span span, double offsetCelsius, double sdCelsius) {
    public ProbeStay {
        Require.text("probe", probe);
        Require.text("container", container);
        Require.within("offsetCelsius", offsetCelsius, -20, 20);
        Require.within("sdCelsius", sdCelsius, 0, 20);
    }
}
