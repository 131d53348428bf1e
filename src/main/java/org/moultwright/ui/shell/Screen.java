package org.moultwright.ui.shell;

import java.util.List;
import javafx.scene.Node;
import org.kordamp.ikonli.Ikon;

/** One screen of the workbench, as the frame round it sees it. Screens never see each other. */
public interface Screen {
    /** Names the screen for ever, such as {@code round}. */
    String id();

    /** The word in the rail. */
    String word();

    /** The icon over that word. */
    Ikon icon();

    /** What the screen shows; always the same node. */
    Node node();

    /** The keeper has come to this screen: read anew what may have changed, and take the focus. */
    default void shown() {}

    /** The keys of this screen, for the sheet of keys. */
    default List<KeyHint> keys() {
        return List.of();
    }
}
