package org.moultwright.ui.broods;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.moultwright.ui.shell.DeedLine;
import org.moultwright.workflow.BroodView;
import org.moultwright.workflow.FormDraft;

/** The forms about a sac: the one that is open, and those that are begun and not saved. */
final class SacForms {
    private final BroodsDesk desk;
    private final DeedLine deeds;
    private final Supplier<Optional<BroodView>> chosen;
    private final Consumer<String> choose;
    private final BegunForms begun;
    private final ReadOnlyObjectWrapper<Optional<SacForm>> open = new ReadOnlyObjectWrapper<>(Optional.empty());

    /**
     * Forms for the brood chosen.
     *
     * @param chosen the brood that is chosen
     * @param choose told of a brood to be chosen as soon as it is there
     */
    SacForms(BroodsDesk desk, DeedLine deeds, Supplier<Optional<BroodView>> chosen, Consumer<String> choose) {
        this.desk = desk;
        this.deeds = deeds;
        this.chosen = chosen;
        this.choose = choose;
        this.begun = new BegunForms(desk.waysIn().sacs().begun());
    }

    ReadOnlyObjectProperty<Optional<SacForm>> openProperty() {
        return open.getReadOnlyProperty();
    }

    BegunForms begun() {
        return begun;
    }

    /** Whether the chosen brood is a sac nobody has opened. */
    boolean isSac() {
        return sac().isPresent();
    }

    /** Whether the chosen brood is a sac that is still with its mother. */
    boolean isWithMother() {
        return sacWithMother().isPresent();
    }

    /** Writes down a new sac. */
    void begin() {
        open.set(Optional.of(new BeginForm(formDesk(), this::openUp)));
    }

    /** Writes down that the chosen sac was taken from its mother. */
    void pull() {
        sacWithMother().ifPresent(sac -> open.set(Optional.of(new PullForm(formDesk(), code(sac)))));
    }

    /** Opens the chosen sac. */
    void openUp() {
        sac().ifPresent(sac -> openUp(code(sac)));
    }

    /** Goes on with what was begun. */
    void goOn(FormDraft draft) {
        open.set(
                switch (draft.form()) {
                    case OpeningForm.FORM -> Optional.of(new OpeningForm(formDesk(), draft.about()));
                    case PullForm.FORM -> Optional.of(new PullForm(formDesk(), draft.about()));
                    default -> Optional.of(new BeginForm(formDesk(), this::openUp));
                });
    }

    private void openUp(String brood) {
        choose.accept(brood);
        open.set(Optional.of(new OpeningForm(formDesk(), brood)));
    }

    private void close() {
        open.get().ifPresent(closed -> choose.accept(closed.brood()));
        open.set(Optional.empty());
    }

    private SacFormDesk formDesk() {
        return new SacFormDesk(desk, begun, deeds, this::close);
    }

    private Optional<BroodView> sac() {
        return chosen.get().filter(brood -> brood.record().ledger().opened() == 0);
    }

    private Optional<BroodView> sacWithMother() {
        return sac().filter(brood -> brood.record().brood().pulled().isEmpty());
    }

    private static String code(BroodView brood) {
        return brood.record().brood().code();
    }
}
