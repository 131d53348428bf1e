package org.moultwright.ui.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.moultwright.domain.ContainerKind;
import org.moultwright.domain.Stage;
import org.moultwright.ui.RoomFixture;
import org.moultwright.workflow.MemoryBroodBook;
import org.moultwright.workflow.ShelfAt;
import org.moultwright.workflow.Standing;
import org.moultwright.workflow.Standing.Occupants;

/** Forms half filled in while somebody else changes the shelf beneath them. */
class ShelfFormsTest {
    private static final String BROOD = "CC-26-A";

    private final ShelfDesk desk = InventedShelfDesk.of(RoomFixture.room(), new MemoryBroodBook());

    @Test
    void aSplitTellsTheFigureInForceAndKeepsWhatWasTyped() {
        SplitForm form = split(shelf(tray("A1", 56), tray("A2", 50)));
        form.counts().get(Stage.INSTAR1).set(OptionalInt.of(54));
        assertThat(form.seen(Stage.INSTAR1).getValue()).isEqualTo("of 56");
        form.see(shelf(tray("A1", 52), tray("A2", 50)));
        assertThat(form.seen(Stage.INSTAR1).getValue()).isEqualTo("of 52 now");
        assertThat(form.counts().get(Stage.INSTAR1).get()).hasValue(54);
        assertThat(form.filledIn()).isEmpty();
        assertThat(form.problemOf(form.counts().get(Stage.INSTAR1)).getValue())
                .isEqualTo("A1 holds 52 animals; 54 cannot leave it. Write fewer.");
        form.see(shelf(tray("A1", 56), tray("A2", 50)));
        assertThat(form.seen(Stage.INSTAR1).getValue()).isEqualTo("of 56");
        assertThat(form.filledIn()).isPresent();
    }

    @Test
    void aSplitFromATrayThatIsGoneSaysThatItHoldsNothing() {
        SplitForm form = split(shelf(tray("A1", 56)));
        form.counts().get(Stage.INSTAR1).set(OptionalInt.of(3));
        form.see(shelf());
        assertThat(form.seen(Stage.INSTAR1).getValue()).isEqualTo("of 0 now");
        assertThat(form.filledIn()).isEmpty();
    }

    /** What was proposed as new must not become a tray somebody else filled; what was typed stays. */
    @Test
    void theNewCodeProposedStaysNew() {
        SplitForm form = split(shelf(tray("A1", 56)));
        assertThat(form.toProperty().get()).isEqualTo("A2");
        form.see(shelf(tray("A1", 50), tray("A2", 6)));
        assertThat(form.toProperty().get()).isEqualTo("A3");
        form.toProperty().set("A7");
        form.see(shelf(tray("A1", 50), tray("A2", 6), tray("A3", 1)));
        assertThat(form.toProperty().get()).isEqualTo("A7");
    }

    /** The keeper meant a tray of their own; whether it is to be the other's after all they say by writing it again. */
    @Test
    void aTrayMadeMeanwhileIsNotTakenForTheNewOne() {
        SplitForm form = split(shelf(tray("A1", 56)));
        form.counts().get(Stage.INSTAR1).set(OptionalInt.of(3));
        form.toProperty().set("A7");
        form.see(shelf(tray("A1", 56), tray("A7", 6)));
        assertThat(form.filledIn()).isEmpty();
        assertThat(form.problemOf(form.toProperty()).getValue())
                .isEqualTo(
                        "A7 was put on the shelf while you wrote. Choose another code, or write A7 again to put them into that tray.");
        assertThat(form.counts().get(Stage.INSTAR1).get()).hasValue(3);
        form.toProperty().set("");
        form.toProperty().set("A7");
        assertThat(form.filledIn()).isPresent();
    }

    /** Nor is a tray put away meanwhile made anew. */
    @Test
    void aTrayPutAwayMeanwhileIsNotMadeAnew() {
        SplitForm form = split(shelf(tray("A1", 56), tray("A2", 6)));
        form.counts().get(Stage.INSTAR1).set(OptionalInt.of(3));
        form.toProperty().set("A2");
        form.see(shelf(tray("A1", 56)));
        assertThat(form.filledIn()).isEmpty();
        assertThat(form.problemOf(form.toProperty()).getValue())
                .isEqualTo(
                        "A2 was put away while you wrote. Choose another tray, or write A2 again to make a new one of that code.");
        form.toProperty().set("");
        form.toProperty().set("A2");
        assertThat(form.filledIn()).isPresent();
    }

    @Test
    void aJoinOffersTheTraysInForce() {
        ShelfAt before = shelf(tray("A1", 56), tray("A2", 50));
        Standing tray = before.find("A1").orElseThrow();
        MergeForm form = new MergeForm(desk, before, tray, tray.occupants().get(0));
        form.targets().step(1);
        form.see(shelf(tray("A1", 56), tray("A2", 49), tray("A3", 1)));
        assertThat(form.targets().fitting().stream().map(Targets.Target::detail))
                .containsExactly("CC-26-A, 49 animals", "CC-26-A, 1 animal");
        assertThat(form.targets().chosen().flatMap(Targets.Target::code)).contains("A2");
        form.see(shelf(tray("A1", 56), tray("A3", 1)));
        assertThat(form.filledIn()).isEmpty();
    }

    @Test
    void aContainerToBeAddedIsOfferedThePlacesInForce() {
        AddForm form = new AddForm(desk, shelf(box("box 1")), Optional.of(box("box 1")));
        form.codeProperty().set("A4");
        form.kindProperty().set(ContainerKind.TRAY);
        form.see(shelf(box("box 1"), box("box 2"), tray("A4", 3)));
        assertThat(form.places()).containsExactly(MoveForm.NOTHING, "box 1", "box 2");
        assertThat(form.insideProperty().get()).isEqualTo("box 1");
        assertThat(form.filledIn()).isEmpty();
        assertThat(form.problemOf(form.codeProperty()).getValue())
                .isEqualTo("A4 is on the shelf already. Choose another code.");
    }

    private SplitForm split(ShelfAt shelf) {
        Standing tray = shelf.find("A1").orElseThrow();
        return new SplitForm(desk, shelf, tray, tray.occupants().get(0), List.of(Stage.values()), false);
    }

    private static ShelfAt shelf(Standing... outermost) {
        return new ShelfAt(Instant.EPOCH, Stream.of(outermost).toList());
    }

    private static Standing box(String code) {
        return standing(code, ContainerKind.BOX, List.of());
    }

    private static Standing tray(String code, int nymphs) {
        return standing(
                code,
                ContainerKind.TRAY,
                List.of(new Occupants(BROOD, "Testfera inventa", nymphs, Map.of(Stage.INSTAR1, nymphs))));
    }

    private static Standing standing(String code, ContainerKind kind, List<Occupants> occupants) {
        return new Standing(
                code, kind, Optional.empty(), Optional.empty(), occupants, false, Optional.empty(), List.of());
    }
}
