package org.moultwright.ui.round;

/** Says a tally by ear, so that the eyes can stay on the animals. Each returns at once. */
public interface TallySounds {
    /** A desk without sound. */
    TallySounds SILENT = new TallySounds() {
        @Override
        public void turnedOn(Runnable whenMute) {}

        @Override
        public void counted(int place) {}

        @Override
        public void takenBack() {}

        @Override
        public void refused() {}
    };

    /**
     * Sounds are wanted from now on; plays a note, so that it is known at once whether any can be heard.
     *
     * @param whenMute is run on the toolkit's thread when this or a later note could not be played
     */
    void turnedOn(Runnable whenMute);

    /**
     * One animal was counted.
     *
     * @param place of its stage among the brood's, from 0: the later the stage, the higher the note
     */
    void counted(int place);

    /** The last one counted was taken back. */
    void takenBack();

    /** A key that counts nothing was pressed, or there was nothing to take back. */
    void refused();
}
