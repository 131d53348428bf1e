package org.moultwright.domain;

import java.util.Optional;

/**
 * A span in which a container stood in one place.
 *
 * @param container the container's code
 * @param kind what sort of container it is
 * @param inside the code of the container it stood in, empty for the outermost
 * @param span from when until when
 */
public record Stay(String container, ContainerKind kind, Optional<String> inside, Span span) {
    public Stay {
        Require.text("container", container);
        Require.that(
                inside.isEmpty() || !inside.get().equals(container), "'" + container + "' cannot stand inside itself");
    }
}
