package org.moultwright.boot.machine;

import java.util.concurrent.atomic.AtomicBoolean;
import org.moultwright.language.Texts;
import org.moultwright.task.Once;

/** Two soft notes, the second higher. Silent where nothing can sound. */
public final class SoftTone {
    private static final String NO_SOUND =
            Texts.say("This machine has no sound that can be used: alarms are only seen. Plug in a speaker, or "
                    + "run a command at an alarm.");

    /** Not before the first alarm, which a desk that opens need not wait for. */
    private final Once<Notes> notes = new Once<>(SoftTone::notes);

    private final AtomicBoolean playing = new AtomicBoolean();

    static Notes notes() {
        return new Notes(0.55, 587.33, 880);
    }

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
            return Texts.say("It is being played at this moment.");
        }
        try {
            return notes.get().play()
                    ? Texts.say("Played. If you heard nothing, look at the machine's volume.")
                    : NO_SOUND;
        } finally {
            playing.set(false);
        }
    }

    private void sound() {
        try {
            // Where nothing can sound the banner says it all the same.
            notes.get().play();
        } finally {
            playing.set(false);
        }
    }
}
