package org.moultwright.ui.control;

import javafx.beans.value.ChangeListener;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.Scene;

/** Makes what is in a part of the frame only once it is put into a window: a desk that opens does without it at first. */
public final class FirstScene {
    private FirstScene() {}

    /**
     * Has it made when the part is first put in, which it is not yet.
     *
     * @param make is run once
     */
    public static void of(Node part, Runnable make) {
        part.sceneProperty().addListener(new ChangeListener<>() {
            @Override
            public void changed(ObservableValue<? extends Scene> scene, Scene before, Scene now) {
                scene.removeListener(this);
                make.run();
            }
        });
    }
}
