package org.moultwright.ui.control;

import javafx.application.Platform;
import javafx.scene.Parent;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;

/**
 * Room kept in a scrolled page for what is made once it comes into sight, or just below it, so that Tab finds it there.
 * What is made takes its place.
 */
public final class MadeInSight extends Region {
    /** So far below what is seen, in sizes of text. */
    private static final double AHEAD_EMS = 6;

    private final Em type = new Em();
    private final double heightEms;
    private final Runnable make;
    private boolean isToLook;

    /**
     * @param heightEms how high it will be, about, in sizes of text
     * @param make makes it and takes this away
     */
    public MadeInSight(double heightEms, Runnable make) {
        this.heightEms = heightEms;
        this.make = make;
        getChildren().add(type);
        localToSceneTransformProperty().addListener(moved -> lookSoon());
        sceneProperty().addListener(moved -> lookSoon());
    }

    @Override
    protected double computePrefHeight(double width) {
        return heightEms * type.pixels();
    }

    /** Where it stands is known once all is laid out. */
    private void lookSoon() {
        // Who is not asked is not told again.
        getLocalToSceneTransform();
        if (!isToLook) {
            isToLook = true;
            Platform.runLater(this::look);
        }
    }

    private void look() {
        isToLook = false;
        for (Parent around = getParent(); around != null; around = around.getParent()) {
            if (around instanceof ScrollPane page) {
                double top = page.sceneToLocal(localToScene(0, 0)).getY();
                if (page.getHeight() > 0 && getHeight() > 0 && top < page.getHeight() + AHEAD_EMS * type.pixels()) {
                    make.run();
                }
                return;
            }
        }
    }
}
