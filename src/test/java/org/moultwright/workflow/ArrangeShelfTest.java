package org.moultwright.workflow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.moultwright.workflow.InventedShelf.NOW;
import static org.moultwright.workflow.InventedShelf.START;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.moultwright.domain.ContainerKind;

class ArrangeShelfTest {
    private final MemoryBroodBook book = new MemoryBroodBook();
    private final ArrangeShelf arrange = new ArrangeShelf(book, () -> NOW, UUID::randomUUID);

    @BeforeEach
    void fill() {
        InventedShelf.takeIn(book);
    }

    @Test
    void aTrayMovedStandsThereFromThenOnAndStoodElsewhereBefore() {
        Instant monday = START.plus(Duration.ofDays(5));
        assertThat(arrange.move("A1", Optional.of("box 2"), monday).words()).isEqualTo("A1 moved into box 2");
        assertThat(place("A1", monday.minusNanos(1))).contains("box 1");
        assertThat(place("A1", monday)).contains("box 2");
        assertThat(place("A1", NOW)).contains("box 2");
    }

    @Test
    void aMoveWrittenLaterOfAnEarlierTimeHoldsUntilTheOneKnownAlready() {
        arrange.move("A1", Optional.of("box 2"), START.plus(Duration.ofDays(8)));
        arrange.move("A1", Optional.of("INC-1"), START.plus(Duration.ofDays(4)));
        assertThat(place("A1", START.plus(Duration.ofDays(3)))).contains("box 1");
        assertThat(place("A1", START.plus(Duration.ofDays(5)))).contains("INC-1");
        assertThat(place("A1", START.plus(Duration.ofDays(9)))).contains("box 2");
    }

    @Test
    void undoPutsItBackWhereItStood() {
        arrange.move("box 1", Optional.of("box 2"), NOW);
        arrange.putAway(arrange("box 9"));
        undo();
        assertThat(shelf().find("box 9")).isPresent();
        undo();
        assertThat(shelf().find("box 9")).isEmpty();
        undo();
        assertThat(place("box 1", NOW)).contains("INC-1");
        assertThat(shelf()).isEqualTo(before());
    }

    @Test
    void nothingStandsInATrayInItselfOrInACircle() {
        refused(() -> arrange.move("A1", Optional.of("A2"), NOW), "A2 is a tray; nothing stands inside one");
        refused(() -> arrange.move("A1", Optional.of("A1"), NOW), "cannot stand inside itself");
        refused(
                () -> arrange.move("INC-1", Optional.of("box 1"), NOW),
                "box 1 stands inside INC-1, so INC-1 cannot go into it.");
        refused(
                () -> arrange.move("A1", Optional.of("box 7"), NOW),
                "There is no 'box 7' on the shelf. Choose another place.");
        refused(
                () -> arrange.move("A1", Optional.of("box 1"), NOW),
                "A1 stands in box 1 then already. Choose another place or time.");
        refused(() -> arrange.move("A1", Optional.of("box 2"), NOW.plusSeconds(1)), "yet to come");
    }

    @Test
    void whatIsNotThereIsSaidSoOf() {
        refused(
                () -> arrange.move("A7", Optional.of("box 2"), NOW),
                "A7 is not on the shelf any more. Choose another container.");
        refused(() -> arrange.putAway("A7"), "A7 is not on the shelf any more. Choose another container.");
        String box = arrange("box 9");
        Instant before = NOW.minusSeconds(60);
        refused(
                () -> arrange.move("A1", Optional.of(box), before),
                "box 9 was not on the shelf yet then. Choose a later time.");
        refused(
                () -> arrange.move(box, Optional.of("box 1"), before),
                "box 9 was not on the shelf yet then. Choose a later time.");
    }

    @Test
    void aMoveOfThePastThatWouldCloseACircleLaterIsRefused() {
        arrange.move("box 2", Optional.empty(), START.plus(Duration.ofDays(2)));
        arrange.move("box 2", Optional.of("box 1"), START.plus(Duration.ofDays(10)));
        refused(
                () -> arrange.move("box 1", Optional.of("box 2"), START.plus(Duration.ofDays(5))),
                "would come to stand inside itself");
    }

    @Test
    void onlyWhatIsEmptyIsPutAway() {
        refused(() -> arrange.putAway("A1"), "A1 still holds 40 animals. Move or pot them first.");
        refused(() -> arrange.putAway("box 2"), "box 2 still holds B1. Move what is in it first.");
        arrange.move("B1", Optional.of("box 1"), NOW);
        arrange.putAway("box 2");
        assertThat(shelf().find("box 2")).isEmpty();
        assertThat(ShelfAt.of(book, book.shelf(), START).find("box 2")).isPresent();
    }

    @Test
    void aNewContainerHasACodeOfItsOwn() {
        refused(() -> arrange.add("box 1", ContainerKind.BOX, Optional.empty()), "box 1 is on the shelf already");
        refused(() -> arrange.add(" ", ContainerKind.BOX, Optional.empty()), "Give it a code");
        refused(() -> arrange.add("dead", ContainerKind.BOX, Optional.empty()), "names something else in the ledger");
        refused(() -> arrange.add("R1", ContainerKind.RACK, Optional.of("A1")), "nothing stands inside one");
        arrange.add("R1", ContainerKind.RACK, Optional.of("INC-1"));
        assertThat(place("R1", NOW)).contains("INC-1");
    }

    @Test
    void theOrderIsAsPeopleCount() {
        List<String> codes = List.of("A10", "A2", "A1", "B1");
        assertThat(codes.stream().sorted(new CountingOrder())).containsExactly("A1", "A2", "A10", "B1");
    }

    private String arrange(String code) {
        arrange.add(code, ContainerKind.BOX, Optional.of("INC-1"));
        return code;
    }

    private ShelfAt before() {
        MemoryBroodBook fresh = new MemoryBroodBook();
        InventedShelf.takeIn(fresh);
        return ShelfAt.of(fresh, fresh.shelf(), NOW);
    }

    private ShelfAt shelf() {
        return ShelfAt.of(book, book.shelf(), NOW);
    }

    private Optional<String> place(String code, Instant at) {
        return book.shelf().stayOf(code, at).flatMap(stay -> stay.inside());
    }

    private void undo() {
        assertThat(new UndoDeed(book, () -> NOW, UUID::randomUUID).undo()).isPresent();
    }

    private static void refused(ThrowingCallable deed, String why) {
        assertThatThrownBy(deed).isInstanceOf(IllegalArgumentException.class).hasMessageContaining(why);
    }
}
