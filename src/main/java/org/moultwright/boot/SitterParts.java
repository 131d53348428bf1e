package org.moultwright.boot;

import javafx.beans.InvalidationListener;
import javafx.scene.Node;
import javafx.scene.layout.StackPane;
import org.moultwright.ui.control.FirstScene;
import org.moultwright.ui.takealong.SitterView;
import org.moultwright.ui.takealong.SitterViewModel;

/** The desk's frame, or the sitter's view in its place while the desk is in a sitter's hands. */
final class SitterParts extends StackPane {
    private final SitterViewModel sitter;
    private final Node frame;
    private final Runnable whenBack;

    /** @param whenBack puts the keeper's hands where they were */
    SitterParts(SitterViewModel sitter, Node frame, Runnable whenBack) {
        this.sitter = sitter;
        this.frame = frame;
        this.whenBack = whenBack;
        InvalidationListener show = changed -> show();
        sitter.sittingProperty().addListener(show);
        getChildren().add(frame);
        show();
    }

    /** The frame stays in the window, unseen, for what asks for its window. */
    private void show() {
        boolean isSitting = sitter.sittingProperty().get();
        getChildren().removeIf(child -> !child.equals(frame));
        frame.setVisible(!isSitting);
        if (isSitting) {
            SitterView view = new SitterView(sitter);
            // A desk opened in a sitter's hands has no window yet, which would lead the keyboard to "One dead".
            FirstScene.of(view, view::takeFocus);
            getChildren().add(view);
        } else if (getScene() != null) {
            whenBack.run();
        }
    }
}
