package org.moultwright.ui.climate;

import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import javafx.beans.value.ObservableValue;
import org.moultwright.domain.ColdestWall;

/**
 * What the keeper said of the coldest walls.
 *
 * @param walls by container
 * @param note keeps what is said of a container's wall; empty takes it back
 */
public record WallBook(
        ObservableValue<Map<String, ColdestWall>> walls, BiConsumer<String, Optional<ColdestWall>> note) {
    Optional<ColdestWall> of(String container) {
        return Optional.ofNullable(walls.getValue().get(container));
    }
}
