package org.moultwright.ui.round;

import java.util.function.BiConsumer;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.scene.Parent;
import org.moultwright.domain.Cause;
import org.moultwright.domain.Stage;
import org.moultwright.workflow.RoomView;

/** The round in the states worth looking at. */
final class RoundPictures {
    private RoundPictures() {}

    static Parent counting() {
        return at(2, (model, open) -> {
            write(open, "", "", "51", "8", "0");
            open.keys().typed('w');
        });
    }

    static Parent mouldAndDead() {
        return at(2, (model, open) -> {
            write(open, "", "", "seen", "7/20", "none");
            open.fields().take(Stage.INSTAR1, Cause.MOULD, 2);
            open.fields().take(Stage.DARKENED, Cause.FAILED_MOULT, 1);
            open.keys().typed('m');
            open.keys().typed('l');
        });
    }

    static Parent unbalanced() {
        return at(2, (model, open) -> {
            write(open, "", "", "50", "8", "0");
            model.done();
        });
    }

    static Parent asking() {
        return at(2, (model, open) -> {
            open.keys().typed('d');
            open.keys().typed('3');
        });
    }

    static Parent empty() {
        InventedRoom room = new InventedRoom();
        RoundDesk desk = room.desk();
        return (Parent) new RoundScreen(new RoundDesk(
                        new ReadOnlyObjectWrapper<>(RoomView.EMPTY),
                        desk.readAgain(),
                        desk.record(),
                        desk.undo(),
                        desk.runner(),
                        desk.saveLine(),
                        desk.clock(),
                        desk.days(),
                        desk.vocabulary()))
                .node();
    }

    private static Parent at(int position, BiConsumer<RoundViewModel, OpenSheet> fill) {
        RoundViewModel model = new RoundViewModel(new InventedRoom().desk());
        RoundView view = new RoundView(model);
        for (int done = 0; done < position; done++) {
            model.openProperty().get().orElseThrow().keys().typed('=');
            model.done();
        }
        fill.accept(model, model.openProperty().get().orElseThrow());
        return view;
    }

    private static void write(OpenSheet open, String... looks) {
        for (int i = 0; i < looks.length; i++) {
            open.fields().rows().get(i).textProperty().set(looks[i]);
        }
    }
}
