package org.moultwright.ui.round;

import java.util.ArrayList;
import java.util.List;

/** Writes down what a tally says by ear. */
final class HeardTally implements TallySounds {
    final List<String> notes = new ArrayList<>();

    Runnable whenMute = () -> {};

    @Override
    public void turnedOn(Runnable told) {
        notes.add("on");
        whenMute = told;
    }

    @Override
    public void counted(int place) {
        notes.add("stage " + place);
    }

    @Override
    public void takenBack() {
        notes.add("taken back");
    }

    @Override
    public void refused() {
        notes.add("refused");
    }
}
