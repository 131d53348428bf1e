package org.moultwright.ui.broods;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.value.ChangeListener;
import javafx.beans.value.WeakChangeListener;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.moultwright.domain.AssumedTiming;
import org.moultwright.domain.Brood;
import org.moultwright.domain.Stage;
import org.moultwright.domain.Timing;
import org.moultwright.language.Texts;
import org.moultwright.task.Outcome;
import org.moultwright.text.BasisWords;
import org.moultwright.workflow.BroodView;
import org.moultwright.workflow.Deed;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.TaughtBy;

/** One brood's timing: what its keeper believes, what its dates rest on, and which broods taught it. */
final class TimingViewModel {
    private final BroodsDesk desk;
    private final BeliefWays ways;
    private final String code;
    private final Runnable close;
    private final BeliefForm form;
    private final ObservableList<String> basis = FXCollections.observableArrayList();
    private final ObservableList<String> sources = FXCollections.observableArrayList();
    private final ObservableList<TeacherLine> teachers = FXCollections.observableArrayList();
    private final ObservableList<String> ages = FXCollections.observableArrayList();
    private final ReadOnlyStringWrapper taught = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper believed = new ReadOnlyStringWrapper("");

    /** Held here, since the room outlives this. */
    private final ChangeListener<RoomView> onRoom = (observed, before, now) -> read();

    TimingViewModel(BroodsDesk desk, BroodView brood, Runnable close) {
        this.desk = desk;
        this.ways = desk.beliefs();
        this.code = brood.code();
        this.close = close;
        this.form = new BeliefForm(brood.record().brood().stages());
        brood.record().brood().timing().ifPresent(form::show);
        desk.room().addListener(new WeakChangeListener<>(onRoom));
        read();
    }

    String code() {
        return code;
    }

    BeliefForm form() {
        return form;
    }

    /** What the dates rest on, in sentences. */
    ObservableList<String> basis() {
        return basis;
    }

    /** Where the figures of an assumption are from, and where it can be changed. */
    ObservableList<String> sources() {
        return sources;
    }

    /** What is expected of the brood before any look, after what was learned, in sentences. */
    ObservableList<String> ages() {
        return ages;
    }

    /** The completed broods of the species. */
    ObservableList<TeacherLine> teachers() {
        return teachers;
    }

    /** How many of them teach, in a sentence. */
    ReadOnlyStringProperty taughtProperty() {
        return taught.getReadOnlyProperty();
    }

    /** Whether anything is believed, in a sentence. */
    ReadOnlyStringProperty believedProperty() {
        return believed.getReadOnlyProperty();
    }

    /** Why something could not be kept, in a sentence; empty when nothing stands in the way. */
    ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }

    String stageWord(Stage stage) {
        return desk.vocabulary().get().label(stage);
    }

    /** What holds of a stage where the keeper writes nothing. */
    String usual(Stage stage) {
        return Optional.ofNullable(assumed().timing().medianWarmDays().get(stage))
                .map(Figure::words)
                .orElse("");
    }

    String usualPercent() {
        return Figure.words(100 * assumed().timing().batchSd());
    }

    void close() {
        close.run();
    }

    void keep() {
        problem.set("");
        Optional<Timing> written = form.read();
        if (written.isEmpty()) {
            problem.set(Texts.say("Not kept yet: see what stands beneath the fields."));
            return;
        }
        deed(() -> ways.belief().believe(code, written));
    }

    /** Believes nothing any more: the assumption for the species holds. */
    void believeNothing() {
        deed(() -> ways.belief().believe(code, Optional.empty()));
    }

    void leaveOut(String teacher, String reason) {
        deed(() -> ways.belief().leaveOut(teacher, reason));
    }

    void learnAgain(String teacher) {
        deed(() -> ways.belief().learnAgain(teacher));
    }

    private void deed(Supplier<Deed.Summary> keep) {
        desk.runner().run(progress -> keep.get(), this::kept);
    }

    private void kept(Outcome<Deed.Summary> outcome) {
        if (outcome instanceof Outcome.Failed<Deed.Summary> failed) {
            problem.set(Texts.say(
                    "Not saved: {0} What you wrote is kept on screen.",
                    failed.fault().getMessage()));
        } else if (outcome instanceof Outcome.Done<Deed.Summary> done) {
            problem.set("");
            ways.saveLine().saved(done.value().doneAt(), this::takeBack);
            desk.readAgain().run();
        }
    }

    private void takeBack() {
        desk.runner().<Optional<Deed.Summary>>run(progress -> ways.undo().undo(), outcome -> {
            if (outcome instanceof Outcome.Failed<Optional<Deed.Summary>> failed) {
                problem.set(Texts.say("Not taken back: {0}", failed.fault().getMessage()));
            }
            desk.readAgain().run();
        });
    }

    private void read() {
        desk.room().get().brood(code).ifPresent(this::read);
    }

    private void read(BroodView view) {
        Brood brood = view.record().brood();
        RoomView room = desk.room().get();
        BasisWords words = new BasisWords(desk.vocabulary().get());
        AssumedTiming assumed = ways.assumed().of(brood.taxon());
        boolean isOwn = brood.timing()
                .filter(timing -> !timing.medianWarmDays().isEmpty())
                .isPresent();
        believed.set(
                isOwn
                        ? Texts.say("You believe this of the brood; an empty age keeps the usual proportion.")
                        : Texts.say("You believe nothing of it yet. The grey figures are what is assumed."));
        basis.setAll(Texts.say("Before the brood has shown anything: {0}.", words.inShort(brood, assumed)));
        basis.addAll(words.figures(brood, assumed));
        sources.setAll(words.sources(brood, assumed));
        if (!isOwn) {
            sources.add(Texts.say("From {0}.", assumed.file()));
        }
        sources.add(Texts.say(
                "Your own assumptions, for a species, a genus or all, are read at the start from {0}.",
                ways.ownFile()));
        ages.setAll(view.forecast().stream()
                .flatMap(forecast -> forecast.expectedAges().stream())
                .map(words::expected)
                .toList());
        if (!ages.isEmpty()) {
            ages.add(0, Texts.say("In warm-days, before any look at this brood, eight of ten times:"));
        }
        teachers.setAll(TaughtBy.couldTeach(brood, room).stream()
                .map(other ->
                        TeacherLine.of(other, Optional.ofNullable(room.leftOut().get(other.code())), desk.days()))
                .toList());
        taught.set(taught(teachers));
    }

    private static String taught(List<TeacherLine> teachers) {
        long left = teachers.stream().filter(line -> line.leftOut().isPresent()).count();
        if (teachers.isEmpty()) {
            return Texts.say("No other brood of this species is completed yet. Once one is, its counts teach this one "
                    + "its timing, and stand here.");
        }
        return Texts.say(
                "Timing, spread and deaths are learned from {0} of {1} completed {2} of the species.",
                teachers.size() - left, teachers.size(), Texts.count(teachers.size(), "brood", "broods"));
    }

    private AssumedTiming assumed() {
        return desk.room()
                .get()
                .brood(code)
                .map(view -> ways.assumed().of(view.record().brood().taxon()))
                .orElseGet(() -> ways.assumed().general());
    }
}
