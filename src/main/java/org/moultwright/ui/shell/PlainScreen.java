package org.moultwright.ui.shell;

import java.util.List;
import javafx.scene.Node;
import org.kordamp.ikonli.Ikon;

/**
 * A screen made of its parts.
 *
 * @param takeFocus puts the keeper's hands where they begin, once the screen is shown
 */
public record PlainScreen(String id, String word, Ikon icon, Node node, Runnable takeFocus, List<KeyHint> keys)
        implements Screen {
    public PlainScreen {
        keys = List.copyOf(keys);
    }

    @Override
    public void shown() {
        takeFocus.run();
    }
}
