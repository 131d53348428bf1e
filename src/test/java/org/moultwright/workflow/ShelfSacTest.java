package org.moultwright.workflow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.moultwright.domain.ContainerKind;
import org.moultwright.domain.InstantRange;
import org.moultwright.domain.Shelf;
import org.moultwright.domain.Span;
import org.moultwright.domain.Stay;

/** A sac on the shelf, from its laying to its opening. */
class ShelfSacTest {
    private static final Instant LAID = InventedShelf.START.minus(Duration.ofDays(30));
    private static final String SAC = "XX-26-C";
    private static final ZoneId ZONE = ZoneId.of("Europe/Berlin");

    private final MemoryBroodBook book = new MemoryBroodBook();

    @BeforeEach
    void writeDown() {
        InventedShelf.takeIn(book);
        new BeginBrood(book, () -> InventedShelf.NOW, UUID::randomUUID)
                .begin(new BeginBrood.Sac(
                        SAC,
                        "Testfera inventa",
                        ZONE,
                        "",
                        Optional.of(new InstantRange(LAID, LAID.plus(Duration.ofDays(1)))),
                        Optional.of(LAID.plus(Duration.ofDays(20))),
                        Optional.of("box 1")));
    }

    @Test
    void isInTheContainerOfItsCodeUntilItIsOpened() {
        assertThat(at(LAID.plus(Duration.ofDays(2)))).isTrue();
        assertThat(at(InventedShelf.NOW)).isTrue();
        assertThat(at(LAID.minus(Duration.ofDays(1)))).isFalse();
    }

    /** A place written down for longer than the sac was there holds it no longer. */
    @Test
    void isNowhereOnceItWasOpened() {
        Shelf forGood = new Shelf(List.of(new Stay(
                InventedShelf.A,
                ContainerKind.HAMMOCK,
                Optional.empty(),
                new Span(LAID.minus(Duration.ofDays(100)), Optional.empty()))));
        assertThat(holdsSac(forGood, InventedShelf.A, InventedShelf.START.minus(Duration.ofMinutes(1))))
                .isTrue();
        assertThat(holdsSac(forGood, InventedShelf.A, InventedShelf.START)).isFalse();
    }

    @Test
    void noAnimalsArePutToIt() {
        ShelfAt shelf = ShelfAt.of(book, book.shelf(), InventedShelf.NOW);
        assertThat(ShareTrays.againstTarget(shelf, InventedShelf.A, "A1", SAC))
                .contains("XX-26-C holds a sac that is not opened yet. Choose another tray.");
        assertThat(ShareTrays.againstTarget(shelf, InventedShelf.A, "A1", "A2")).isEmpty();
    }

    /** Else its sac would have a place nowhere, and its warm-days no air. */
    @Test
    void isNotPutAwayWithTheSacInIt() {
        ArrangeShelf arrange = new ArrangeShelf(book, () -> InventedShelf.NOW, UUID::randomUUID);
        assertThatThrownBy(() -> arrange.putAway(SAC))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(
                        "XX-26-C holds a sac that is not opened yet. Open the sac first, on the page of its brood.");
        assertThat(at(InventedShelf.NOW)).isTrue();
    }

    private boolean at(Instant instant) {
        return holdsSac(book.shelf(), SAC, instant);
    }

    private boolean holdsSac(Shelf shelf, String code, Instant instant) {
        return ShelfAt.of(book, shelf, instant)
                .find(code)
                .filter(Standing::holdsSac)
                .isPresent();
    }
}
