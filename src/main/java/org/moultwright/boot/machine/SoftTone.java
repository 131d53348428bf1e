package org.moultwright.boot.machine;

import java.util.concurrent.atomic.AtomicBoolean;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.SourceDataLine;

/** Two soft notes, the second higher, swelling and fading so that nobody starts. Silent where nothing can sound. */
public final class SoftTone {
    private static final float SAMPLES_PER_SECOND = 44_100;
    private static final double[] HERTZ = {587.33, 880};
    private static final double NOTE_SECONDS = 0.55;
    private static final double LOUDNESS = 0.3;

    private final AtomicBoolean playing = new AtomicBoolean();

    /** Plays it once, aside; one that plays already is not joined by another. */
    public void play() {
        if (playing.compareAndSet(false, true)) {
            Thread thread = new Thread(this::sound, "alarm tone");
            thread.setDaemon(true);
            thread.start();
        }
    }

    private void sound() {
        AudioFormat format = new AudioFormat(SAMPLES_PER_SECOND, Short.SIZE, 1, true, false);
        try (SourceDataLine line = AudioSystem.getSourceDataLine(format)) {
            byte[] samples = samples();
            line.open(format);
            line.start();
            line.write(samples, 0, samples.length);
            line.drain();
        } catch (LineUnavailableException | IllegalArgumentException noSound) {
            // A machine without sound: the banner says it all the same.
            return;
        } finally {
            playing.set(false);
        }
    }

    private static byte[] samples() {
        int perNote = (int) (NOTE_SECONDS * SAMPLES_PER_SECOND);
        byte[] bytes = new byte[HERTZ.length * perNote * Short.BYTES];
        for (int i = 0; i < HERTZ.length * perNote; i++) {
            double swell = Math.sin(Math.PI * (i % perNote) / perNote);
            double wave = Math.sin(2 * Math.PI * HERTZ[i / perNote] * i / SAMPLES_PER_SECOND);
            short value = (short) (Short.MAX_VALUE * LOUDNESS * swell * swell * wave);
            bytes[2 * i] = (byte) value;
            bytes[2 * i + 1] = (byte) (value >> Byte.SIZE);
        }
        return bytes;
    }
}
