package org.moultwright.ui.shell;

import java.util.List;
import java.util.function.Supplier;
import javafx.scene.Node;
import org.moultwright.task.Once;

/** A screen made when it is first asked for, so that the desk stands before all of its screens do. */
public final class LaterScreen implements Screen {
    private final ScreenName name;
    private final Once<Screen> screen;

    /** @param maker makes the screen of that name, once */
    public LaterScreen(ScreenName name, Supplier<Screen> maker) {
        this.name = name;
        this.screen = new Once<>(maker);
    }

    @Override
    public ScreenName name() {
        return name;
    }

    @Override
    public Node node() {
        return screen.get().node();
    }

    @Override
    public void shown() {
        screen.get().shown();
    }

    @Override
    public List<KeyHint> keys() {
        return screen.get().keys();
    }
}
