package org.moultwright.ui.shell;

import java.util.List;
import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableBooleanValue;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Card;
import org.moultwright.ui.control.EmptyState;

/**
 * A screen of a room that may not be read yet. Until it is, the screen says so: shown empty, a room full of broods would
 * be taken for lost.
 */
public final class WhenRead implements Screen {
    private final Screen screen;
    private final ObservableBooleanValue isAwaited;
    private final StackPane layers = new StackPane();

    /** @param isAwaited whether there is a room that is not read yet */
    public WhenRead(Screen screen, ObservableBooleanValue isAwaited) {
        this.screen = screen;
        this.isAwaited = isAwaited;
    }

    @Override
    public ScreenName name() {
        return screen.name();
    }

    @Override
    public Node node() {
        if (layers.getChildren().isEmpty()) {
            Node inner = screen.node();
            inner.visibleProperty().bind(Bindings.not(isAwaited));
            StackPane waiting = new StackPane(new Card(new EmptyState(
                    name().icon(),
                    Texts.say("Not read yet: the dates of all trays are worked out first, which takes a minute where "
                            + "there are many. Nothing is lost, and the round can be walked meanwhile."))));
            waiting.getStyleClass().add("page");
            waiting.visibleProperty().bind(isAwaited);
            waiting.managedProperty().bind(isAwaited);
            layers.getChildren().setAll(inner, waiting);
        }
        return layers;
    }

    @Override
    public void shown() {
        screen.shown();
    }

    @Override
    public List<Region> canWait() {
        return screen.canWait();
    }

    @Override
    public List<KeyHint> keys() {
        return screen.keys();
    }
}
