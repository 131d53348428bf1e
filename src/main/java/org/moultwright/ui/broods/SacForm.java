package org.moultwright.ui.broods;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.WrittenDay;
import org.moultwright.ui.shell.DeedLine;
import org.moultwright.workflow.Deed;
import org.moultwright.workflow.FormDraft;
import org.moultwright.workflow.ShelfAt;
import org.moultwright.workflow.Standing;

/** A form about a sac: its fields are on disk as they are typed, and what they say is kept as one deed. */
abstract class SacForm {
    private static final LocalTime SOME_TIME_OF_DAY = LocalTime.NOON;

    private final BroodsDesk desk;
    private final BegunForms begun;
    private final String form;
    private final String about;
    private final DeedLine deeds;
    private final Runnable close;
    private final Map<String, FormField> fields = new LinkedHashMap<>();
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    private final ReadOnlyBooleanWrapper written = new ReadOnlyBooleanWrapper();
    private boolean isReady;

    SacForm(SacFormDesk desk, String form, String about) {
        this.desk = desk.desk();
        this.begun = desk.begun();
        this.deeds = desk.deeds();
        this.close = desk.close();
        this.form = form;
        this.about = about;
        deeds.say("");
    }

    /** Why it could not be kept, where no single field is at fault; empty when nothing stands in the way. */
    final ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }

    /** Why what is typed is not on the disk, in a sentence; empty while it is. */
    final ReadOnlyStringProperty notOnDiskProperty() {
        return begun.problemProperty();
    }

    /** Whether anything is written that could be dropped. */
    final ReadOnlyBooleanProperty writtenProperty() {
        return written.getReadOnlyProperty();
    }

    /** Why it was not kept although nothing stood in the way, in a sentence; empty where it was. */
    final ReadOnlyStringProperty notSavedProperty() {
        return deeds.problemProperty();
    }

    final BroodsDesk desk() {
        return desk;
    }

    final String about() {
        return about;
    }

    /** The brood to be looked at once the form is left. */
    String brood() {
        return about;
    }

    /** Leaves the form as it is; it is begun, and there again. */
    final void leave() {
        close.run();
    }

    /** Forgets what was written, and leaves. */
    final void drop() {
        begun.drop(form, about);
        close.run();
    }

    /** Keeps what the form says, unless something stands in the way, which is then said. */
    final void keep() {
        keep(() -> {});
    }

    final void keep(Runnable then) {
        problem.set("");
        filledIn()
                .ifPresent(keeping -> deeds.keep(keeping, () -> {
                    begun.drop(form, about);
                    close.run();
                    then.run();
                }));
    }

    /** What is to be kept; empty where something is wrong, which is then said at its field. */
    abstract Optional<Supplier<Deed.Summary>> filledIn();

    /** A field for a container; one that does not exist is said so of once the field is left. */
    final FormField placeField(String key, String name) {
        FormField field = field(key, name);
        field.whenLeft(() -> isPlace(field));
        return field;
    }

    /** A field for a day; one that cannot be is said so of once the field is left. */
    final FormField dayField(String key, String name) {
        FormField field = field(key, name);
        field.whenLeft(() -> day(field));
        return field;
    }

    final FormField field(String key, String name) {
        FormField field = new FormField(key, name);
        fields.put(key, field);
        field.textProperty().addListener((observed, before, now) -> typed());
        return field;
    }

    /** Something was typed. */
    void changed() {}

    private void typed() {
        if (!isReady) {
            return;
        }
        changed();
        Map<String, String> words = new LinkedHashMap<>();
        fields.values().stream()
                .filter(field -> !field.isEmpty() && isOwn(field))
                .forEach(field -> words.put(field.key(), field.textProperty().get()));
        written.set(!words.isEmpty());
        begun.keep(new FormDraft(form, about, words));
    }

    /** Whether a field holds the keeper's own words, and not what the form put there. */
    boolean isOwn(FormField field) {
        return !field.written().equals(usual(field));
    }

    /** What the form puts into a field by itself. */
    String usual(FormField field) {
        return "";
    }

    /** Lays back what was begun the last time. From then on what is typed is kept; the last thing done in making a form. */
    final void layBack() {
        begun.find(form, about).ifPresent(draft -> {
            // A field may bring others, so that all are there only after once through.
            layBack(draft);
            layBack(draft);
        });
        isReady = true;
        written.set(begun.find(form, about).isPresent());
    }

    private void layBack(FormDraft draft) {
        draft.fields().forEach((key, words) -> {
            FormField field = fields.get(key);
            if (field != null) {
                field.set(words);
            }
        });
    }

    final boolean refuse(FormField field, String sentence) {
        field.problemProperty().set(sentence);
        return false;
    }

    final boolean refuse(FormField field, Optional<String> sentence) {
        return sentence.map(words -> refuse(field, words)).orElse(true);
    }

    final void refuse(String sentence) {
        problem.set(sentence);
    }

    final LocalDate today() {
        return desk.days().date(now());
    }

    final Instant now() {
        return desk.clock().instant();
    }

    /** The instant meant by a day: today is now, any other day its noon. */
    final Instant instant(LocalDate day) {
        return day.equals(today())
                ? now()
                : day.atTime(SOME_TIME_OF_DAY).atZone(desk.days().zone()).toInstant();
    }

    /** The day written in a field; said at the field where it is none. */
    final Optional<LocalDate> day(FormField field) {
        Optional<LocalDate> day = WrittenDay.read(field.written(), today());
        if (day.isEmpty() && !field.isEmpty()) {
            refuse(field, Texts.say("Write the day as 26 Feb or 26.2."));
        } else if (day.filter(read -> read.isAfter(today())).isPresent()) {
            refuse(field, Texts.say("That day is yet to come."));
            return Optional.empty();
        }
        return day;
    }

    /** What a day is read as, in words, beside its field. */
    final String dayInWords(String text) {
        return WrittenDay.read(text, today())
                .map(day -> desk.days()
                        .longDay(day.atTime(SOME_TIME_OF_DAY)
                                .atZone(desk.days().zone())
                                .toInstant()))
                .orElse("");
    }

    /** The containers something can be put into, in the shelf's order. */
    final List<String> places() {
        List<String> places = new ArrayList<>();
        shelf().all().stream()
                .filter(place -> !place.kind().holdsBrood() && !place.code().equals(about))
                .map(Standing::code)
                .forEach(places::add);
        return places;
    }

    final ShelfAt shelf() {
        return ShelfAt.of(desk.room().get(), desk.room().get().now());
    }

    /** Whether the place written is on the shelf; said at the field where it is not. */
    final boolean isPlace(FormField field) {
        if (field.isEmpty() || places().contains(field.written())) {
            return true;
        }
        List<String> some = places();
        return refuse(
                field,
                some.isEmpty()
                        ? Texts.say(
                                "Nothing stands on the shelf yet. Leave it empty, or add {0} on the Shelf.",
                                field.written())
                        : Texts.say(
                                "There is no '{0}' on the shelf. Arrow keys go through what is there.",
                                field.written()));
    }

    final Optional<String> place(FormField field) {
        return field.isEmpty() ? Optional.empty() : Optional.of(field.written());
    }
}
