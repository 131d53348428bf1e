package org.moultwright.ui.takealong;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import org.moultwright.domain.label.Paper;
import org.moultwright.language.Texts;
import org.moultwright.task.Outcome;
import org.moultwright.ui.plan.PlanChoices;
import org.moultwright.workflow.CalendarEntry;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.SitterSheet;

/** A sitter's sheet and a calendar, as they would be saved now, and what became of saving them. */
final class TakeAlongViewModel {
    private static final String BACKWARDS = Texts.say("The last day away is before the first. Change one of them.");
    private static final String NO_DAYS = Texts.say("Write the first and the last day away.");
    private static final String NO_TRAYS = Texts.say("No tray holds animals, so there is nothing to look after yet.");
    private static final String NO_DATES =
            Texts.say("Too early to say when anything happens: there is nothing for a calendar yet.");

    private final TakeAlongDesk desk;
    private final StringProperty phone;
    private final ObjectProperty<Paper> paper;
    private final ObservableList<CalendarEntry> entries = FXCollections.observableArrayList();
    private final ObservableList<SitterSheet.Tray> trays = FXCollections.observableArrayList();
    private final ReadOnlyStringWrapper sheetProblem = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper calendarProblem = new ReadOnlyStringWrapper("");
    private final ReadOnlyObjectWrapper<Optional<String>> failure = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyStringWrapper saved = new ReadOnlyStringWrapper("");

    TakeAlongViewModel(TakeAlongDesk desk) {
        this.desk = desk;
        this.phone = new SimpleStringProperty(desk.plans().settings().phone());
        this.paper = new SimpleObjectProperty<>(desk.plans().settings().paper());
        paper.addListener((observed, before, now) -> keepTyped());
        plans().awayFromProperty().addListener((observed, before, now) -> check());
        plans().awayToProperty().addListener((observed, before, now) -> check());
        plans().safetyProperty().addListener((observed, before, now) -> read());
        plans().settingsProperty().addListener((observed, before, now) -> read());
        desk.room().addListener((observed, before, now) -> read());
        desk.vocabulary().addListener((observed, before, now) -> read());
        read();
    }

    PlanChoices plans() {
        return desk.plans();
    }

    /** The keeper's number; empty for a line to write it on. */
    StringProperty phoneProperty() {
        return phone;
    }

    ObjectProperty<Paper> paperProperty() {
        return paper;
    }

    /** What the sheet would say of each tray; empty while there can be none. */
    ObservableList<SitterSheet.Tray> trays() {
        return trays;
    }

    /** What would stand in the calendar. */
    ObservableList<CalendarEntry> entries() {
        return entries;
    }

    /** "9 to 14 May", of an entry. */
    String when(CalendarEntry entry) {
        return desk.days()
                .days(
                        entry.first().atStartOfDay(desk.days().zone()).toInstant(),
                        entry.last().atStartOfDay(desk.days().zone()).toInstant());
    }

    /** Why there can be no sheet yet, and what to do; empty while there can. */
    ReadOnlyStringProperty sheetProblemProperty() {
        return sheetProblem.getReadOnlyProperty();
    }

    /** Why there can be no calendar yet; empty while there can. */
    ReadOnlyStringProperty calendarProblemProperty() {
        return calendarProblem.getReadOnlyProperty();
    }

    /** Why what was saved last was not, and what to do. */
    ReadOnlyObjectProperty<Optional<String>> failureProperty() {
        return failure.getReadOnlyProperty();
    }

    /** What is on disk since a moment ago, and where. */
    ReadOnlyStringProperty savedProperty() {
        return saved.getReadOnlyProperty();
    }

    /** What was said of the last saving is said no more. */
    void openAnew() {
        saved.set("");
        failure.set(Optional.empty());
    }

    /** Keeps the phone number as it is typed now, and the paper. */
    void keepTyped() {
        plans().keep(plans().settings().withPhone(phone.get().strip()).withPaper(paper.get()));
    }

    void saveSheet() {
        keepTyped();
        sheet().ifPresent(sheet -> desk.sheetChooser()
                .choose("sitter-" + plans().awayFromProperty().get() + ".pdf")
                .ifPresent(pdf -> save(
                        pdf, Texts.say("Sitter's sheet"), file -> desk.sheets().save(sheet, file))));
    }

    void saveCalendar() {
        if (calendarProblem.get().isEmpty()) {
            List<CalendarEntry> told = List.copyOf(entries);
            desk.calendarChooser()
                    .choose("moultwright.ics")
                    .ifPresent(ics -> save(
                            ics,
                            Texts.say("Calendar"),
                            file -> desk.calendars().save(told, desk.clock().instant(), file)));
        }
    }

    private Optional<SitterSheet> sheet() {
        LocalDate from = plans().awayFromProperty().get();
        LocalDate to = plans().awayToProperty().get();
        return from == null || to == null || !sheetProblem.get().isEmpty()
                ? Optional.empty()
                : Optional.of(new SheetOfSitter(from, to)
                        .of(room(), desk.vocabulary().get(), desk.days(), plans().settings(), room().now()));
    }

    private void save(Path file, String what, Consumer<Path> write) {
        Supplier<Path> work = () -> {
            write.accept(file);
            return file;
        };
        desk.runner().<Path>run(progress -> work.get(), outcome -> {
            boolean isSaved = outcome instanceof Outcome.Done<Path>;
            saved.set(isSaved ? Texts.say("{0} saved: {1}", what, file) : "");
            failure.set(
                    outcome instanceof Outcome.Failed<Path> failed
                            ? Optional.of(String.valueOf(failed.fault().getMessage()))
                            : Optional.empty());
        });
    }

    private void read() {
        check();
        entries.setAll(CalendarEntries.of(
                room(), desk.vocabulary().get(), desk.days(), plans().terms(desk.days(), room().now())));
        calendarProblem.set(entries.isEmpty() ? NO_DATES : "");
    }

    private void check() {
        sheetProblem.set(problem(
                plans().awayFromProperty().get(), plans().awayToProperty().get()));
        trays.setAll(sheet().map(SitterSheet::trays).orElse(List.of()));
    }

    private String problem(@Nullable LocalDate from, @Nullable LocalDate to) {
        if (Expected.in(room()).isEmpty()) {
            return NO_TRAYS;
        }
        if (from == null || to == null) {
            return NO_DAYS;
        }
        return to.isBefore(from) ? BACKWARDS : "";
    }

    private RoomView room() {
        return desk.room().get();
    }
}
