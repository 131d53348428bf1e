package org.moultwright.ui.round;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.moultwright.domain.Stage;
import org.moultwright.task.InlineRunner;
import org.moultwright.task.Job;
import org.moultwright.task.Outcome;
import org.moultwright.task.Runner;
import org.moultwright.task.Work;

/** What is typed while a sheet is on its way to the disk is neither lost nor written for another tray. */
class SlowSaveTest {
    private static final int A1 = 0;

    private final InventedRoom room = new InventedRoom();
    private final Held disk = new Held();

    @Test
    void theNextTrayIsOpenAtOnceAndKeepsWhatIsTyped() {
        RoundViewModel model = new RoundViewModel(room.desk(room.memory, disk));
        open(model).keys().typed('=');
        model.done();
        assertThat(open(model).facts().tray()).isEqualTo("A2");
        assertThat(model.lines().get(A1).state()).isEqualTo("saving");
        write(model, Stage.INSTAR1, "12");
        disk.goOn();
        assertThat(model.lines().get(A1).state()).isEqualTo("✓ done");
        assertThat(open(model).facts().tray()).isEqualTo("A2");
        assertThat(read(model, Stage.INSTAR1)).isEqualTo("12");
        assertThat(room.lastCheck("CC-26-A").tray()).isEqualTo("A1");
    }

    @Test
    void theSameTrayKeepsWhatIsTypedOnceItIsSaved() {
        RoundViewModel model = new RoundViewModel(room.desk(room.memory, disk));
        open(model).keys().typed('=');
        model.done();
        model.open(A1);
        open(model).fields().noteProperty().set("lid was ajar");
        model.done();
        assertThat(model.problemProperty().get()).isEqualTo(RoundWords.STILL_SAVING);
        disk.goOn();
        assertThat(open(model).facts().tray()).isEqualTo("A1");
        assertThat(open(model).fields().noteProperty().get()).isEqualTo("lid was ajar");
    }

    @Test
    void aSheetThatCannotBeSavedWaitsWhileTheKeeperIsInAnother() {
        RoundViewModel model = new RoundViewModel(room.desk(room.fullDisk(), disk));
        OpenSheet first = open(model);
        first.keys().typed('=');
        model.done();
        write(model, Stage.INSTAR1, "12");
        disk.goOn();
        assertThat(open(model).facts().tray()).isEqualTo("A2");
        assertThat(read(model, Stage.INSTAR1)).isEqualTo("12");
        assertThat(model.problemProperty().get()).startsWith("A1 was not saved: the disk is full.");
        model.open(A1);
        assertThat(open(model)).isSameAs(first);
        assertThat(read(model, Stage.DARKENED)).isEqualTo("seen");
    }

    @Test
    void twoSheetsOfOneTrayBecomeOneThatLosesNothing() {
        RoundViewModel model = new RoundViewModel(room.desk(room.fullDisk(), disk));
        write(model, Stage.INSTAR1, "34");
        write(model, Stage.DARKENED, "22");
        open(model).fields().noteProperty().set("first look");
        open(model).keys().typed('w');
        model.done();
        model.open(A1);
        write(model, Stage.INSTAR1, "33");
        open(model).fields().noteProperty().set("second look");
        disk.goOn();
        assertThat(read(model, Stage.INSTAR1)).isEqualTo("33");
        assertThat(read(model, Stage.DARKENED)).isEqualTo("22");
        assertThat(open(model).fields().care()).containsExactly("watered");
        assertThat(open(model).fields().noteProperty().get())
                .isEqualTo("first look\nsecond look\nWritten first: Nymph 34.");
    }

    @Test
    void undoBringsTheSheetBackWithWhatWasTypedSince() {
        RoundViewModel model = new RoundViewModel(room.desk(room.memory, disk));
        open(model).keys().typed('=');
        model.done();
        disk.goOn();
        model.open(A1);
        write(model, Stage.INSTAR2, "1");
        room.undos.get(0).run();
        disk.goOn();
        assertThat(read(model, Stage.INSTAR2)).isEqualTo("1");
        assertThat(read(model, Stage.DARKENED)).isEqualTo("seen");
    }

    private static OpenSheet open(RoundViewModel model) {
        return model.openProperty().get().orElseThrow();
    }

    private static void write(RoundViewModel model, Stage stage, String text) {
        open(model).fields().row(stage).orElseThrow().textProperty().set(text);
    }

    private static String read(RoundViewModel model, Stage stage) {
        return open(model).fields().row(stage).orElseThrow().textProperty().get();
    }

    /** A disk that does nothing until it is told to go on. */
    private static final class Held implements Runner {
        private final Deque<Runnable> waiting = new ArrayDeque<>();

        @Override
        public <T> Job run(Work<T> work, Watcher watcher, Consumer<Outcome<T>> whenEnded) {
            waiting.add(() -> new InlineRunner().run(work, watcher, whenEnded));
            return () -> {};
        }

        void goOn() {
            waiting.remove().run();
        }
    }
}
