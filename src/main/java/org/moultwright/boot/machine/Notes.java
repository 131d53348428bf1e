package org.moultwright.boot.machine;

import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.SourceDataLine;

/** Notes one after another, each swelling and fading so that nobody starts. */
final class Notes {
    static final float SAMPLES_PER_SECOND = 44_100;

    private static final double LOUDNESS = 0.3;

    private final byte[] samples;

    /**
     * @param noteSeconds how long each lasts
     * @param hertz their pitches
     */
    Notes(double noteSeconds, double... hertz) {
        int perNote = (int) (noteSeconds * SAMPLES_PER_SECOND);
        samples = new byte[hertz.length * perNote * Short.BYTES];
        for (int i = 0; i < hertz.length * perNote; i++) {
            double swell = Math.sin(Math.PI * (i % perNote) / perNote);
            double wave = Math.sin(2 * Math.PI * hertz[i / perNote] * i / SAMPLES_PER_SECOND);
            short value = (short) (Short.MAX_VALUE * LOUDNESS * swell * swell * wave);
            samples[2 * i] = (byte) value;
            samples[2 * i + 1] = (byte) (value >> Byte.SIZE);
        }
    }

    /** Sixteen bits a sample, the lower eight first. */
    byte[] samples() {
        return samples.clone();
    }

    /** Plays them and waits until they have sounded; whether the machine's sound took all of it. */
    boolean play() {
        AudioFormat format = new AudioFormat(SAMPLES_PER_SECOND, Short.SIZE, 1, true, false);
        try (SourceDataLine line = AudioSystem.getSourceDataLine(format)) {
            line.open(format);
            line.start();
            int taken = line.write(samples, 0, samples.length);
            line.drain();
            return taken == samples.length && line.getLongFramePosition() > 0;
        } catch (LineUnavailableException | IllegalArgumentException noSound) {
            return false;
        }
    }
}
