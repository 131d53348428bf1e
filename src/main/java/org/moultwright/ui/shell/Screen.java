package org.moultwright.ui.shell;

import java.util.List;
import javafx.scene.Node;

/** One screen of the workbench, as the frame round it sees it. Screens never see each other. */
public interface Screen {
    /** What the screen is known by. */
    ScreenName name();

    /** What the screen shows; always the same node. */
    Node node();

    /** The keeper has come to this screen: read anew what may have changed, and take the focus. */
    default void shown() {}

    /** The keys of this screen, for the sheet of keys. */
    default List<KeyHint> keys() {
        return List.of();
    }
}
