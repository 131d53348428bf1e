package org.moultwright.ui.round;

/** Whether tallies are heard, for all sheets of this sitting. */
final class TallyEar {
    /** What the ear is told. */
    enum State {
        CLOSED,
        OPEN,
        /** Sounds are wanted, and the machine has none. */
        MUTE
    }

    private final TallySounds sounds;
    private State state = State.CLOSED;

    TallyEar(TallySounds sounds) {
        this.sounds = sounds;
    }

    State state() {
        return state;
    }

    /**
     * Opens it, or closes it if it is open.
     *
     * @param whenMute is run if it turns out that nothing can be heard
     */
    void turn(Runnable whenMute) {
        if (state == State.OPEN) {
            state = State.CLOSED;
        } else {
            state = State.OPEN;
            sounds.turnedOn(() -> mute(whenMute));
        }
    }

    /** What is to be heard now. */
    TallySounds sounds() {
        return state == State.OPEN ? sounds : TallySounds.SILENT;
    }

    private void mute(Runnable told) {
        if (state == State.OPEN) {
            state = State.MUTE;
            told.run();
        }
    }
}
