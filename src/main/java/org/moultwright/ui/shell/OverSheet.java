package org.moultwright.ui.shell;

import javafx.scene.layout.StackPane;

/**
 * A sheet laid over the open screen until it is closed; a click beside what is on it closes it. While it is open the
 * keyboard does not leave it.
 */
public abstract class OverSheet extends StackPane {
    private final HeldKeyboard keyboard = new HeldKeyboard(this);
    private Runnable whenClosed = () -> {};

    protected OverSheet() {
        getStyleClass().add("over-sheet");
        setVisible(false);
        // One that is away makes no room for itself.
        managedProperty().bind(visibleProperty());
        setOnMouseClicked(event -> {
            if (event.getTarget() == this) {
                close();
            }
        });
    }

    /** It has been laid over the screen: show what is so now, and take the focus. */
    protected abstract void opened();

    /** Takes it away; the screen beneath has the focus again. */
    public final void close() {
        if (isVisible()) {
            keyboard.letGo();
            setVisible(false);
            whenClosed.run();
        }
    }

    /** Lays it over the screen; one that is open already shows what is so now. */
    public final void open() {
        setVisible(true);
        opened();
        keyboard.hold();
    }

    final void whenClosed(Runnable told) {
        whenClosed = told;
    }
}
