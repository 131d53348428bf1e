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

    private static final String NO_SOUND =
            "This machine has no sound that can be used: alarms are only seen. Plug in a speaker, or run a command at an alarm.";

    private final AtomicBoolean playing = new AtomicBoolean();

    /** Plays it once, aside; one that plays already is not joined by another. */
    public void play() {
        if (playing.compareAndSet(false, true)) {
            Thread thread = new Thread(this::sound, "alarm tone");
            thread.setDaemon(true);
            thread.start();
        }
    }

    /** Plays it once and waits until it has sounded; whether anything was played, in a sentence. */
    String tryOut() {
        if (!playing.compareAndSet(false, true)) {
            return "It is being played at this moment.";
        }
        try {
            return playOnce() ? "Played. If you heard nothing, look at the machine's volume." : NO_SOUND;
        } finally {
            playing.set(false);
        }
    }

    private void sound() {
        try {
            // Where nothing can sound the banner says it all the same.
            playOnce();
        } finally {
            playing.set(false);
        }
    }

    /** Whether the machine's sound took all of it. */
    private static boolean playOnce() {
        AudioFormat format = new AudioFormat(SAMPLES_PER_SECOND, Short.SIZE, 1, true, false);
        try (SourceDataLine line = AudioSystem.getSourceDataLine(format)) {
            byte[] samples = samples();
            line.open(format);
            line.start();
            int taken = line.write(samples, 0, samples.length);
            line.drain();
            return taken == samples.length && line.getLongFramePosition() > 0;
        } catch (LineUnavailableException | IllegalArgumentException noSound) {
            return false;
        }
    }

    static byte[] samples() {
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
