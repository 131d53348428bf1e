package org.moultwright.ui.shelf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import org.moultwright.domain.ContainerKind;
import org.moultwright.language.Texts;
import org.moultwright.workflow.Deed;
import org.moultwright.workflow.ShelfAt;
import org.moultwright.workflow.ShelfRules;
import org.moultwright.workflow.Standing;

/** A container to be stood on the shelf. */
final class AddForm extends ShelfForm {
    private final ShelfDesk desk;
    private ShelfAt shelf;
    private final ObservableList<String> places = FXCollections.observableArrayList();
    private final StringProperty code = new SimpleStringProperty("");
    private final ObjectProperty<@Nullable ContainerKind> kind = new SimpleObjectProperty<>(ContainerKind.BOX);
    private final ObjectProperty<@Nullable String> inside = new SimpleObjectProperty<>(MoveForm.NOTHING);

    /** @param beside where it is proposed to stand */
    AddForm(ShelfDesk desk, ShelfAt shelf, Optional<Standing> beside) {
        super(Texts.say("Add a container"), Texts.say("Add"));
        this.desk = desk;
        this.shelf = shelf;
        places.setAll(places(shelf));
        beside.flatMap(focused -> focused.kind().holdsBrood()
                        ? focused.inside().filter(around -> shelf.find(around).isPresent())
                        : Optional.of(focused.code()))
                .ifPresent(inside::set);
        if (shelf.outermost().isEmpty()) {
            kind.set(ContainerKind.INCUBATOR);
        }
    }

    /** A place chosen stays so, even where it is gone: then it is said once it is to be kept. */
    @Override
    void see(ShelfAt read) {
        shelf = read;
        if (!places.equals(places(read))) {
            String chosen = inside.get();
            places.setAll(places(read));
            inside.set(chosen);
        }
    }

    StringProperty codeProperty() {
        return code;
    }

    ObjectProperty<@Nullable ContainerKind> kindProperty() {
        return kind;
    }

    /** The code of the container around it, or {@link MoveForm#NOTHING}. */
    ObjectProperty<@Nullable String> insideProperty() {
        return inside;
    }

    /** Where it can stand. */
    ObservableList<String> places() {
        return places;
    }

    private static List<String> places(ShelfAt shelf) {
        List<String> places = new ArrayList<>(List.of(MoveForm.NOTHING));
        shelf.all().stream()
                .filter(place -> !place.kind().holdsBrood())
                .map(Standing::code)
                .forEach(places::add);
        return places;
    }

    @Override
    Optional<Supplier<Deed.Summary>> filledIn() {
        String chosen = written();
        ContainerKind sort = kind.get() == null ? ContainerKind.BOX : kind.get();
        Optional<String> around = Optional.ofNullable(inside.get()).filter(place -> !place.equals(MoveForm.NOTHING));
        Optional<Refusal> wrong = ShelfRules.againstCode(shelf, chosen)
                .map(why -> new Refusal(code, why))
                .or(() -> ShelfRules.againstPlace(shelf, chosen, sort, around).map(why -> new Refusal(inside, why)));
        return unless(wrong, () -> desk.arrange().add(chosen, sort, around));
    }

    @Override
    Optional<String> leadsTo() {
        return Optional.of(written());
    }

    private String written() {
        return code.get().strip();
    }
}
