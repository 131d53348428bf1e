package org.moultwright.ui.finder;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.moultwright.workflow.RawWires;

/** A port over which a test speaks. */
public final class SpokenWire implements RawWires {
    private Optional<Listener> listener = Optional.empty();

    @Override
    public List<String> ports() {
        return List.of("/dev/probe");
    }

    @Override
    public List<String> settings() {
        return List.of("9600 8N1", "115200 8N1");
    }

    @Override
    public Hearing listen(String port, String settings, Listener told) {
        listener = Optional.of(told);
        return () -> listener = Optional.empty();
    }

    boolean isHeard() {
        return listener.isPresent();
    }

    void say(String text) {
        listener.ifPresent(told -> told.heard(text.getBytes(StandardCharsets.ISO_8859_1)));
    }
}
