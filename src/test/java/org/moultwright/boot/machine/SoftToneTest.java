package org.moultwright.boot.machine;

import static org.assertj.core.api.Assertions.assertThat;

import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.DataLine;
import javax.sound.sampled.SourceDataLine;
import org.junit.jupiter.api.Test;

class SoftToneTest {
    @Test
    void theToneIsSoftAndBeginsAndEndsInSilence() {
        byte[] samples = SoftTone.notes().samples();
        int loudest = 0;
        for (int i = 0; i < samples.length; i += 2) {
            loudest = Math.max(loudest, Math.abs(sample(samples, i)));
        }
        assertThat(loudest).isBetween((int) (0.28 * Short.MAX_VALUE), (int) (0.31 * Short.MAX_VALUE));
        assertThat(sample(samples, 0)).isZero();
        assertThat(Math.abs(sample(samples, samples.length - 2))).isLessThan(20);
    }

    @Test
    void whetherAnythingWasPlayedIsSaid() {
        AudioFormat format = new AudioFormat(44_100, Short.SIZE, 1, true, false);
        boolean canSound = AudioSystem.isLineSupported(new DataLine.Info(SourceDataLine.class, format));
        assertThat(new SoftTone().tryOut()).startsWith(canSound ? "Played." : "This machine has no sound");
    }

    private static int sample(byte[] samples, int at) {
        return (short) ((samples[at] & 0xFF) | (samples[at + 1] << 8));
    }
}
