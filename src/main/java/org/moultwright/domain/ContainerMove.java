package org.moultwright.domain;

import java.time.Instant;
import java.util.Optional;

/**
 * A container put somewhere else, stood there for the first time, or put away.
 *
 * @param container the container's code
 * @param kind what sort of container it is
 * @param to where it stands from then on, empty where it is put away
 * @param at when
 */
public record ContainerMove(String container, ContainerKind kind, Optional<Place> to, Instant at) {
    public ContainerMove {
        Require.text("container", container);
        Require.that(
                to.flatMap(Place::inside).filter(container::equals).isEmpty(),
                "'" + container + "' cannot stand inside itself");
    }

    /** The container something stands in; of the outermost, none. */
    public Optional<String> inside() {
        return to.flatMap(Place::inside);
    }

    /**
     * A place a container can stand in.
     *
     * @param inside the code of the container around it, empty for what stands in nothing
     */
    public record Place(Optional<String> inside) {}
}
