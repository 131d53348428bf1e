package org.moultwright.ui.shell;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.Region;

/** One screen of the workbench, as the frame round it sees it. Screens never see each other. */
public interface Screen {
    /** What the screen is known by. */
    ScreenName name();

    /** What the screen shows; always the same node. */
    Node node();

    /** The keeper has come to this screen: read anew what may have changed, and take the focus. */
    default void shown() {}

    /** Parts of it a keeper can do without for the first key, each in a pane; they are left out of the window until then. */
    default List<Region> canWait() {
        return List.of();
    }

    /** The keys of this screen, for the sheet of keys. */
    default List<KeyHint> keys() {
        return List.of();
    }
}
