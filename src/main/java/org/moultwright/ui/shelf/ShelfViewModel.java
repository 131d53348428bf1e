package org.moultwright.ui.shelf;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleIntegerProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.beans.value.ObservableObjectValue;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import org.moultwright.domain.Stage;
import org.moultwright.language.Texts;
import org.moultwright.text.DayWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.shell.DeedLine;
import org.moultwright.workflow.PotLabel;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.ShelfAt;
import org.moultwright.workflow.ShelfRules;
import org.moultwright.workflow.Standing;
import org.moultwright.workflow.Standing.Occupants;

/** The shelf on screen: the day shown, the card that has the focus, and what is being done to it. */
final class ShelfViewModel {
    private final ShelfDesk desk;
    private final DeedLine deeds;
    private Consumer<List<PotLabel>> labels = wanted -> {};
    private final ReadOnlyObjectWrapper<ShelfAt> shelf = new ReadOnlyObjectWrapper<>(ShelfAt.NOTHING);
    private final ReadOnlyObjectWrapper<ShelfAt> aired = new ReadOnlyObjectWrapper<>(ShelfAt.NOTHING);
    private final ObservableList<ShelfRow> rows = FXCollections.observableArrayList();
    private final IntegerProperty columns = new SimpleIntegerProperty(3);
    private final ObjectProperty<@Nullable LocalDate> day = new SimpleObjectProperty<>();
    private final StringProperty focus = new SimpleStringProperty("");
    private final ReadOnlyStringWrapper drop = new ReadOnlyStringWrapper("");

    /** The code of the container carried last. */
    private String inHand = "";

    /** The code of a container that was added and not read yet; empty while there is none. */
    private String awaited = "";

    private final ReadOnlyObjectWrapper<Optional<ShelfForm>> form = new ReadOnlyObjectWrapper<>(Optional.empty());

    ShelfViewModel(ShelfDesk desk) {
        this.desk = desk;
        this.deeds = new DeedLine(desk.runner(), desk.undo(), desk.saveLine(), desk.readAgain());
        desk.room().addListener((observed, before, now) -> read());
        day.addListener((observed, before, now) -> {
            closeForm();
            // What was said is of the day that was shown.
            deeds.say("");
            read();
        });
        columns.addListener((observed, before, now) -> lay(shelf.get()));
        read();
    }

    ReadOnlyObjectProperty<ShelfAt> shelfProperty() {
        return shelf.getReadOnlyProperty();
    }

    /** The same with the air as it is by now: it comes and ages while nothing is written. */
    ReadOnlyObjectProperty<ShelfAt> airedProperty() {
        return aired.getReadOnlyProperty();
    }

    /** A container of the shelf with its air as it is by now. */
    Standing aired(Standing standing) {
        return aired.get().find(standing.code()).orElse(standing);
    }

    /** Time went by. */
    void age() {
        if (!isPast()) {
            aired.set(shelf.get().heard(desk.heard().get(), desk.clock().instant()));
        }
    }

    ObservableList<ShelfRow> rows() {
        return rows;
    }

    /** How many cards have room side by side. */
    IntegerProperty columnsProperty() {
        return columns;
    }

    /** The day shown; none or today is now. */
    ObjectProperty<@Nullable LocalDate> dayProperty() {
        return day;
    }

    /** The code of the card that has the focus. */
    StringProperty focusProperty() {
        return focus;
    }

    /** The code of the container that what is carried would come into; empty while there is none. */
    ReadOnlyStringProperty dropProperty() {
        return drop.getReadOnlyProperty();
    }

    ReadOnlyObjectProperty<Optional<ShelfForm>> formProperty() {
        return form.getReadOnlyProperty();
    }

    DeedLine deeds() {
        return deeds;
    }

    DayWords days() {
        return desk.days();
    }

    ObservableObjectValue<Vocabulary> vocabularyProperty() {
        return desk.vocabulary();
    }

    RoomView room() {
        return desk.room().get();
    }

    /** Has somebody told which labels are wanted. */
    void whenLabels(Consumer<List<PotLabel>> told) {
        labels = told;
    }

    Optional<Standing> focused() {
        return shelf.get().find(focus.get());
    }

    /** Whether a day before today is shown: nothing of it can be changed. */
    boolean isPast() {
        LocalDate shown = day.get();
        return shown != null && shown.isBefore(today());
    }

    void step(int days) {
        LocalDate shown = day.get() == null ? today() : day.get();
        LocalDate other = shown.plusDays(days);
        day.set(other.isBefore(today()) ? other : null);
    }

    void toTonight() {
        day.set(null);
    }

    void along(int steps) {
        new ShelfFocus(rows).along(focus.get(), steps).ifPresent(focus::set);
    }

    void across(int direction) {
        new ShelfFocus(rows).across(focus.get(), direction).ifPresent(focus::set);
    }

    int focusedRow() {
        return new ShelfFocus(rows).rowOf(focus.get());
    }

    void openMove() {
        open((there, standing) -> Optional.of(new MoveForm(desk, there, standing)));
    }

    /** A container is carried over another, or over none. */
    void carryOver(String code, Optional<String> over) {
        inHand = code;
        drop.set(over.filter(place -> !isPast())
                .flatMap(place -> carried(code).flatMap(carried -> carried.into(place)))
                .orElse(""));
    }

    /** The shelf went by beneath the container that is carried. */
    void carryOver(Optional<String> over) {
        carryOver(inHand, over);
    }

    /** Moves a container to where it was carried by hand and let go. */
    void letGo(String code, Optional<String> over) {
        drop.set("");
        if (refusedAsPast()) {
            return;
        }
        focus.set(code);
        over.ifPresentOrElse(
                place -> carried(code).ifPresent(carried -> letGo(carried, place)),
                () -> deeds.refuse(
                        Texts.say("{0} stays where it stood. Let it go over the container it is to stand in.", code)));
    }

    private void letGo(Carried carried, String over) {
        carried.against(over)
                .ifPresentOrElse(
                        deeds::refuse,
                        () -> deeds.keep(
                                () -> desk.arrange()
                                        .move(
                                                carried.standing().code(),
                                                carried.into(over),
                                                desk.clock().instant()),
                                () -> {}));
    }

    private Optional<Carried> carried(String code) {
        return shelf.get().find(code).map(standing -> new Carried(shelf.get(), standing));
    }

    void openSplit(boolean isolates) {
        openForAnimals((standing, occupants) ->
                new SplitForm(desk, shelf.get(), standing, occupants, stagesOf(occupants.brood()), isolates));
    }

    void openMerge() {
        openForAnimals((standing, occupants) -> new MergeForm(desk, shelf.get(), standing, occupants));
    }

    void openAdd() {
        if (!refusedAsPast()) {
            form.set(Optional.of(new AddForm(desk, shelf.get(), focused())));
        }
    }

    void closeForm() {
        form.set(Optional.empty());
    }

    /** Does what the open form says. */
    void submit() {
        form.get()
                .ifPresent(open -> open.filledIn().ifPresent(keeping -> {
                    Optional<String> next = open.leadsTo();
                    deeds.keep(keeping, () -> {
                        next.ifPresent(this::lead);
                        closeForm();
                    });
                }));
    }

    /** Gives a container the focus, at once or as soon as it stands on the shelf. */
    private void lead(String code) {
        if (shelf.get().find(code).isPresent()) {
            focus.set(code);
        } else {
            awaited = code;
        }
    }

    void putAway() {
        open((there, standing) -> {
            ShelfRules.againstPuttingAway(standing)
                    .ifPresentOrElse(
                            deeds::refuse, () -> deeds.keep(() -> desk.arrange().putAway(standing.code()), () -> {}));
            return Optional.empty();
        });
    }

    void printLabels() {
        focused().map(ShelfLabels::of).ifPresent(labels);
    }

    private void openForAnimals(BiFunction<Standing, Occupants, ShelfForm> made) {
        open((there, standing) -> {
            if (standing.occupants().isEmpty()) {
                deeds.refuse(
                        Texts.say("No animals live in {0} itself. Choose a tray that holds some.", standing.code()));
                return Optional.empty();
            }
            return Optional.of(made.apply(standing, standing.occupants().get(0)));
        });
    }

    private void open(BiFunction<ShelfAt, Standing, Optional<ShelfForm>> made) {
        if (!refusedAsPast()) {
            focused().flatMap(standing -> made.apply(shelf.get(), standing)).ifPresent(opened -> {
                deeds.say("");
                form.set(Optional.of(opened));
            });
        }
    }

    private boolean refusedAsPast() {
        if (isPast()) {
            deeds.refuse(Texts.say("This is the past: it is only shown. Go back to tonight to change something."));
        }
        return isPast();
    }

    private List<Stage> stagesOf(String brood) {
        return room().brood(brood).map(view -> view.record().brood().stages()).orElse(List.of(Stage.values()));
    }

    LocalDate today() {
        return desk.days().date(desk.clock().instant());
    }

    private Instant shownInstant() {
        LocalDate shown = day.get();
        return shown != null && isPast()
                ? shown.plusDays(1).atStartOfDay(desk.days().zone()).toInstant().minusNanos(1)
                : room().now();
    }

    private void read() {
        ShelfAt read = isPast() ? ShelfAt.of(room(), shownInstant()) : ShelfAt.NOW.of(room());
        aired.set(isPast() ? read : read.heard(desk.heard().get(), desk.clock().instant()));
        // Who hears of the shelf asks in which row a card is.
        lay(read);
        shelf.set(read);
        form.get().ifPresent(open -> open.see(read));
        if (read.find(awaited).isPresent()) {
            focus.set(awaited);
            awaited = "";
        }
        if (focused().isEmpty()) {
            focus.set(first());
        }
    }

    /** The first tray, for it is what keepers come for; else whatever stands first. */
    private String first() {
        List<Standing> all = shelf.get().all();
        return all.stream()
                .filter(standing -> standing.alive() > 0)
                .findFirst()
                .or(() -> all.stream().findFirst())
                .map(Standing::code)
                .orElse("");
    }

    private void lay(ShelfAt shown) {
        List<ShelfRow> laid = ShelfRow.of(shown, columns.get());
        if (!laid.equals(rows)) {
            rows.setAll(laid);
        }
    }
}
