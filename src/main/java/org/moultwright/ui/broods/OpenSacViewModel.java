package org.moultwright.ui.broods;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.InstantRange;
import org.moultwright.domain.Stage;
import org.moultwright.task.Outcome;
import org.moultwright.workflow.OpenSac;

/** The form that takes in a newly opened sac. */
final class OpenSacViewModel {
    /** What a sac may hold when it is opened; nobody opens one of slings. */
    static final List<Stage> COUNTED = List.of(Stage.EGG, Stage.POSTEMBRYO, Stage.INSTAR1);

    private final BroodsDesk desk;
    private final Runnable close;
    private final StringProperty code = new SimpleStringProperty("");
    private final StringProperty taxon = new SimpleStringProperty("");
    private final ObjectProperty<@Nullable LocalDate> laidFrom = new SimpleObjectProperty<>();
    private final ObjectProperty<@Nullable LocalDate> laidTo = new SimpleObjectProperty<>();
    private final ObjectProperty<@Nullable LocalDate> pulled = new SimpleObjectProperty<>();
    private final ObjectProperty<OptionalInt> infertile = new SimpleObjectProperty<>(OptionalInt.empty());
    private final ObservableList<TrayEntry> trays = FXCollections.observableArrayList();
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");

    OpenSacViewModel(BroodsDesk desk, Runnable close) {
        this.desk = desk;
        this.close = close;
        addTray();
    }

    StringProperty codeProperty() {
        return code;
    }

    StringProperty taxonProperty() {
        return taxon;
    }

    /** The first day the sac may have been laid; null while not known. */
    ObjectProperty<@Nullable LocalDate> laidFromProperty() {
        return laidFrom;
    }

    /** The last day it may have been laid; null while it is the first. */
    ObjectProperty<@Nullable LocalDate> laidToProperty() {
        return laidTo;
    }

    /** The day it was taken from its mother; null while not known. */
    ObjectProperty<@Nullable LocalDate> pulledProperty() {
        return pulled;
    }

    ObjectProperty<OptionalInt> infertileProperty() {
        return infertile;
    }

    ObservableList<TrayEntry> trays() {
        return trays;
    }

    /** Why it could not be kept, in a sentence; empty when nothing stands in the way. */
    ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }

    String stageWord(Stage stage) {
        return desk.vocabulary().get().label(stage);
    }

    void addTray() {
        trays.add(new TrayEntry());
    }

    void cancel() {
        close.run();
    }

    void keep() {
        problem.set(missing());
        if (!problem.get().isEmpty()) {
            return;
        }
        OpenSac.Sac sac = sac();
        desk.runner().run(progress -> keep(sac), this::kept);
    }

    /** Keeps the sac unless its code is taken. */
    private Optional<BroodRecord> keep(OpenSac.Sac sac) {
        return desk.waysIn().openSac().isFree(sac.code())
                ? Optional.of(desk.waysIn().openSac().open(sac))
                : Optional.empty();
    }

    private void kept(Outcome<Optional<BroodRecord>> outcome) {
        if (outcome instanceof Outcome.Failed<Optional<BroodRecord>> failed) {
            problem.set("Not saved: " + failed.fault().getMessage() + ". What you wrote is kept on screen.");
        } else if (outcome instanceof Outcome.Done<Optional<BroodRecord>> done) {
            if (done.value().isEmpty()) {
                problem.set("There is a brood " + code.get().strip() + " already. Choose another code.");
                return;
            }
            desk.readAgain().run();
            close.run();
        }
    }

    private String missing() {
        LocalDate from = laidFrom.get();
        LocalDate to = laidTo.get();
        if (code.get().isBlank()) {
            return "The brood needs a code, such as the species' initials, the year and a letter.";
        }
        if (taxon.get().isBlank()) {
            return "Which species? Its scientific name finds what earlier broods have taught.";
        }
        if (from != null && to != null && to.isBefore(from)) {
            return "The last day of laying is before the first.";
        }
        if (trays.stream()
                .filter(TrayEntry::isUsed)
                .anyMatch(tray -> tray.code().get().isBlank())) {
            return "A tray with animals has no code.";
        }
        if (used().stream().map(OpenSac.SacTray::code).distinct().count() < used().size()) {
            return "Two trays have the same code.";
        }
        return used().isEmpty() ? "Count at least one animal into a tray." : "";
    }

    private List<OpenSac.SacTray> used() {
        return trays.stream().filter(TrayEntry::isUsed).map(TrayEntry::counted).toList();
    }

    private OpenSac.Sac sac() {
        ZoneId zone = desk.days().zone();
        LocalDate from = laidFrom.get();
        LocalDate to = laidTo.get();
        LocalDate day = pulled.get();
        Optional<InstantRange> laid = Optional.ofNullable(from == null ? to : from)
                .map(first -> new InstantRange(start(first, zone), start((to == null ? first : to).plusDays(1), zone)));
        return new OpenSac.Sac(
                code.get().strip(),
                taxon.get().strip(),
                zone,
                laid,
                Optional.ofNullable(day).map(date -> start(date, zone)),
                desk.clock().instant(),
                used(),
                infertile.get().orElse(0));
    }

    private static Instant start(LocalDate day, ZoneId zone) {
        return day.atStartOfDay(zone).toInstant();
    }

    /** One tray and what is counted into it. */
    static final class TrayEntry {
        private final StringProperty code = new SimpleStringProperty("");
        private final Map<Stage, ObjectProperty<OptionalInt>> counts = new EnumMap<>(Stage.class);

        TrayEntry() {
            COUNTED.forEach(stage -> counts.put(stage, new SimpleObjectProperty<>(OptionalInt.empty())));
        }

        StringProperty code() {
            return code;
        }

        Map<Stage, ObjectProperty<OptionalInt>> counts() {
            return counts;
        }

        private boolean isUsed() {
            return counts.values().stream().anyMatch(count -> count.get().orElse(0) > 0);
        }

        private OpenSac.SacTray counted() {
            Map<Stage, Integer> numbers = new EnumMap<>(Stage.class);
            counts.forEach((stage, count) -> numbers.put(stage, count.get().orElse(0)));
            return new OpenSac.SacTray(code.get().strip(), numbers);
        }
    }
}
