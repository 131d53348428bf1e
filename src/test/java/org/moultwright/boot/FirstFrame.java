package org.moultwright.boot;

import javafx.animation.AnimationTimer;

/** Says on standard output that what was laid out is on screen: two frames later, so that one was painted. */
final class FirstFrame extends AnimationTimer {
    private static final int FRAMES = 2;

    private final String words;
    private int frames;

    private FirstFrame(String words) {
        this.words = words;
    }

    static void say(String words) {
        new FirstFrame(words).start();
    }

    @Override
    public void handle(long now) {
        frames++;
        if (frames == FRAMES) {
            stop();
            System.out.println(words);
        }
    }
}
