package org.moultwright.ui.shell;

import java.util.List;
import javafx.scene.Node;

/**
 * A screen made of its parts.
 *
 * @param takeFocus puts the keeper's hands where they begin, once the screen is shown
 */
public record PlainScreen(ScreenName name, Node node, Runnable takeFocus, List<KeyHint> keys) implements Screen {
    public PlainScreen {
        keys = List.copyOf(keys);
    }

    @Override
    public void shown() {
        takeFocus.run();
    }
}
