package org.moultwright.boot.machine;

import java.util.List;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Supplier;
import java.util.stream.DoubleStream;
import org.moultwright.ui.round.TallySounds;

/** A tally's notes, one after another on a thread of their own. */
public final class TallyNotes implements TallySounds {
    private static final double NOTE_SECONDS = 0.07;

    private final Executor toolkit;
    private final ExecutorService player = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "tally notes");
        thread.setDaemon(true);
        return thread;
    });
    private volatile Runnable whenMute = () -> {};

    /** @param toolkit where it is told that nothing can be heard */
    public TallyNotes(Executor toolkit) {
        this.toolkit = toolkit;
    }

    @Override
    public void turnedOn(Runnable told) {
        whenMute = told;
        play(() -> Scale.TURNED_ON);
    }

    @Override
    public void counted(int place) {
        play(() -> Scale.STAGES.get(Math.min(place, Scale.STAGES.size() - 1)));
    }

    @Override
    public void takenBack() {
        play(() -> Scale.TAKEN_BACK);
    }

    @Override
    public void refused() {
        play(() -> Scale.REFUSED);
    }

    private void play(Supplier<Notes> notes) {
        player.execute(() -> {
            if (!notes.get().play()) {
                toolkit.execute(whenMute);
            }
        });
    }

    /** Worked out when the first is played, which few desks do. */
    private static final class Scale {
        /** The five notes of a pentatonic scale from the A of 440 Hz, in equal temperament: none sounds like the next. */
        static final List<Notes> STAGES = DoubleStream.of(0, 3, 5, 7, 10)
                .mapToObj(semitones -> new Notes(NOTE_SECONDS, 440 * Math.pow(2, semitones / 12)))
                .toList();

        static final Notes TURNED_ON = new Notes(NOTE_SECONDS, 293.66, 440);
        static final Notes TAKEN_BACK = new Notes(NOTE_SECONDS, 440, 293.66);
        static final Notes REFUSED = new Notes(2 * NOTE_SECONDS, 146.83);
    }
}
