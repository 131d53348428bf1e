package org.moultwright.ui.round;

/** Whether tallies are heard, for all sheets of this sitting. */
final class TallyEar {
    private final TallySounds sounds;
    private boolean open;

    TallyEar(TallySounds sounds) {
        this.sounds = sounds;
    }

    boolean isOpen() {
        return open;
    }

    void turn() {
        open = !open;
    }

    /** What is to be heard now. */
    TallySounds sounds() {
        return open ? sounds : TallySounds.SILENT;
    }
}
