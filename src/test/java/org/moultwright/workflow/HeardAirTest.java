package org.moultwright.workflow;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.moultwright.domain.ContainerKind;
import org.moultwright.workflow.Standing.Air;
import org.moultwright.workflow.Standing.Source;

class HeardAirTest {
    private static final Instant READ = InventedShelf.NOW;
    private static final Instant HEARD = READ.plusSeconds(240);
    private static final Instant NOW = READ.plusSeconds(300);
    private static final Air SET = new Air(28, 75, Optional.empty(), "INC-1");
    private static final Air MEASURED = new Air(26.2, 77, Optional.of(new Source("P-1", READ)), "box 1");

    private final ShelfAt shelf = new ShelfAt(
            READ,
            List.of(standing(
                    "INC-1",
                    ContainerKind.INCUBATOR,
                    SET,
                    standing("box 1", ContainerKind.BOX, MEASURED, standing("A1", ContainerKind.TRAY, MEASURED)),
                    standing("box 2", ContainerKind.BOX, SET))));

    @Test
    void isThatOfAContainerAndOfAllThatHasNoneNearer() {
        ShelfAt heard = heard(place("box 1", "P-1", 19.2, HEARD));
        assertThat(heard.at()).isEqualTo(NOW);
        Air now = new Air(19.2, 60, Optional.of(new Source("P-1", HEARD)), "box 1");
        assertThat(air(heard, "box 1")).contains(now);
        assertThat(air(heard, "A1")).contains(now);
        assertThat(air(heard, "INC-1")).contains(SET);
        assertThat(air(heard, "box 2")).contains(SET);
    }

    @Test
    void goesBeforeASetPointAndNotBeforeWhatMeasuresNearer() {
        ShelfAt heard = heard(place("INC-1", "P-3", 27.9, HEARD));
        assertThat(air(heard, "box 2").map(Air::celsius)).contains(27.9);
        assertThat(air(heard, "A1")).contains(MEASURED);
    }

    @Test
    void neitherTakesTheEarlierForTheLaterNorTheUnheardForAReading() {
        assertThat(heard(place("box 1", "P-1", 19.2, READ.minus(Duration.ofHours(1))))
                        .outermost())
                .isEqualTo(shelf.outermost());
        assertThat(shelf.heard(
                                List.of(new WatchView.Place("box 1", "P-1", Double.NaN, Double.NaN, Optional.empty())),
                                NOW)
                        .outermost())
                .isEqualTo(shelf.outermost());
    }

    private ShelfAt heard(WatchView.Place place) {
        return shelf.heard(List.of(place), NOW);
    }

    private static WatchView.Place place(String container, String probe, double celsius, Instant at) {
        return new WatchView.Place(container, probe, celsius, 60, Optional.of(at));
    }

    private static Optional<Air> air(ShelfAt shelf, String code) {
        return shelf.find(code).flatMap(Standing::air);
    }

    private static Standing standing(String code, ContainerKind kind, Air air, Standing... contents) {
        return new Standing(
                code, kind, Optional.empty(), Optional.empty(), List.of(), false, Optional.of(air), List.of(contents));
    }
}
