package org.moultwright.ui.shell;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.Node;

/** A screen made when it is first asked for, so that the desk stands before all of its screens do. */
public final class LaterScreen implements Screen {
    private final ScreenName name;
    private final Supplier<Screen> maker;
    private Optional<Screen> made = Optional.empty();

    /** @param maker makes the screen of that name, once */
    public LaterScreen(ScreenName name, Supplier<Screen> maker) {
        this.name = name;
        this.maker = maker;
    }

    @Override
    public ScreenName name() {
        return name;
    }

    @Override
    public Node node() {
        return made().node();
    }

    @Override
    public void shown() {
        made().shown();
    }

    @Override
    public List<KeyHint> keys() {
        return made().keys();
    }

    private Screen made() {
        Screen screen = made.orElseGet(maker);
        made = Optional.of(screen);
        return screen;
    }
}
