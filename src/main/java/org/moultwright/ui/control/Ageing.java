package org.moultwright.ui.control;

import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.scene.Node;
import javafx.util.Duration;

/** What was measured grows older while it is looked at. */
public final class Ageing {
    private static final Duration EVERY = Duration.seconds(5);

    /** What is seen again has aged meanwhile; it is drawn first. */
    private static final Duration AT_FIRST = Duration.millis(200);

    private Ageing() {}

    /** Does something shortly after a part comes into a window, and every few seconds until it leaves it. */
    public static void whileSeen(Node part, Runnable age) {
        Timeline ageing = new Timeline(new KeyFrame(EVERY, event -> age.run()));
        ageing.setCycleCount(Animation.INDEFINITE);
        part.sceneProperty().addListener((observed, before, now) -> {
            if (now == null) {
                ageing.stop();
            } else {
                ageing.playFrom(EVERY.subtract(AT_FIRST));
            }
        });
    }
}
