package org.moultwright.ui.potting;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.value.ObservableObjectValue;
import org.moultwright.domain.Pot;
import org.moultwright.domain.Stage;
import org.moultwright.domain.code.PotPrefix;
import org.moultwright.domain.label.PrintShift;
import org.moultwright.task.Outcome;
import org.moultwright.text.DayWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.workflow.BroodView;
import org.moultwright.workflow.Deed;
import org.moultwright.workflow.LabelJob;
import org.moultwright.workflow.PotSlings.Potting;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.TrayView;

/** The potting bench: one brood at a time, its labels, and what really went into pots. */
final class PottingViewModel {
    private final PottingDesk desk;
    private final LabelForm form = new LabelForm();
    private final PreviewModel preview;
    private final ReadOnlyObjectWrapper<Optional<Bench>> bench = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<List<String>> choices = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyObjectWrapper<BenchSums> sums = new ReadOnlyObjectWrapper<>(BenchSums.NOTHING);
    private final ReadOnlyStringWrapper empty = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper subtitle = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper news = new ReadOnlyStringWrapper("");
    private boolean saving;
    private boolean laying;

    PottingViewModel(PottingDesk desk) {
        this.desk = desk;
        this.preview = new PreviewModel(desk.printer(), desk.runner());
        form.whenChanged(this::edited);
        preview.faultProperty()
                .addListener((observed, before, now) ->
                        problem.set(now.map(fault -> PottingWords.fault(fault, "The labels cannot be drawn"))
                                .orElse("")));
        desk.room().addListener((observed, before, now) -> read(now));
        desk.vocabulary()
                .addListener((observed, before, now) -> read(desk.room().get()));
        read(desk.room().get());
    }

    LabelForm form() {
        return form;
    }

    PreviewModel preview() {
        return preview;
    }

    /** The brood at the bench; none while no animal is ready. */
    ReadOnlyObjectProperty<Optional<Bench>> benchProperty() {
        return bench.getReadOnlyProperty();
    }

    /** The codes of the broods that have animals ready. */
    ReadOnlyObjectProperty<List<String>> choicesProperty() {
        return choices.getReadOnlyProperty();
    }

    ReadOnlyObjectProperty<BenchSums> sumsProperty() {
        return sums.getReadOnlyProperty();
    }

    /** Why the bench is empty; empty itself while it is not. */
    ReadOnlyStringProperty emptyProperty() {
        return empty.getReadOnlyProperty();
    }

    ReadOnlyStringProperty subtitleProperty() {
        return subtitle.getReadOnlyProperty();
    }

    /** What went wrong, in a sentence; empty when nothing did. */
    ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }

    /** What was just done, in a sentence; possibly empty. */
    ReadOnlyStringProperty newsProperty() {
        return news.getReadOnlyProperty();
    }

    DayWords days() {
        return desk.days();
    }

    ObservableObjectValue<Vocabulary> vocabularyProperty() {
        return desk.vocabulary();
    }

    void open(String broodCode) {
        desk.room().get().brood(broodCode).ifPresent(this::lay);
    }

    /** Saves the labels of all animals taken as one PDF, where the keeper says. */
    void saveLabels() {
        preview.jobProperty()
                .get()
                .ifPresent(job ->
                        desk.pdfChooser().choose(PottingWords.fileName(job)).ifPresent(pdf -> save(job, pdf)));
    }

    /** Writes down what really went into pots. */
    void done() {
        if (!saving && sums.get().canBeDone()) {
            bench.get().ifPresent(this::done);
        }
    }

    private void save(LabelJob job, Path pdf) {
        desk.runner()
                .<Path>run(
                        progress -> {
                            desk.printer().save(job, pdf);
                            return pdf;
                        },
                        this::labelsSaved);
    }

    private void labelsSaved(Outcome<Path> outcome) {
        if (outcome instanceof Outcome.Done<Path> done) {
            problem.set("");
            news.set(PottingWords.labelsSaved(done.value()));
        } else if (outcome instanceof Outcome.Failed<Path> failed) {
            problem.set(PottingWords.fault(failed.fault(), "Not saved"));
        }
    }

    private void done(Bench open) {
        Instant at = desk.clock().instant();
        LabelJob job = preview.jobProperty().get().orElseThrow();
        Potting potting = open.potting(labels(open, form.prefix().orElseThrow()), at);
        saving = true;
        desk.runner().<Deed.Summary>run(progress -> desk.potSlings().save(potting), outcome -> {
            saving = false;
            kept(job, outcome);
        });
    }

    private void kept(LabelJob job, Outcome<Deed.Summary> outcome) {
        if (outcome instanceof Outcome.Done<Deed.Summary> done) {
            desk.saveLine().saved(done.value().doneAt(), this::takeBack);
            bench.set(Optional.empty());
            form.firstCellProperty().set(OptionalInt.of(nextFreeCell(job)));
            desk.readAgain().run();
            news.set(PottingWords.kept(done.value().words()));
        } else if (outcome instanceof Outcome.Failed<Deed.Summary> failed) {
            problem.set(PottingWords.fault(failed.fault(), "Not saved"));
        }
    }

    /** The sheet that was begun goes on where it was left. */
    private static int nextFreeCell(LabelJob job) {
        return (job.firstCell() - 1 + job.labels().size()) % job.sheet().cells() + 1;
    }

    private void takeBack() {
        desk.runner().<Optional<Deed.Summary>>run(progress -> desk.undo().undo(), outcome -> {
            if (outcome instanceof Outcome.Failed<Optional<Deed.Summary>> failed) {
                problem.set(PottingWords.fault(failed.fault(), "Not undone"));
                return;
            }
            bench.set(Optional.empty());
            desk.readAgain().run();
            news.set(PottingWords.UNDONE);
        });
    }

    /** A bench with animals on it is left as it is while its trays are; anything else is laid anew. */
    private void read(RoomView room) {
        List<BroodView> ready = room.broods().stream()
                .filter(brood -> Bench.of(brood).ready() > 0)
                .toList();
        choices.set(ready.stream().map(BroodView::code).toList());
        List<TrayView> trays = room.occupiedTrays();
        Stage stage = room.broods().stream()
                .map(brood -> brood.record().brood().lastStage())
                .findFirst()
                .orElse(Stage.INSTAR2);
        Vocabulary names = desk.vocabulary().get();
        subtitle.set(trays.isEmpty() ? "" : PottingWords.subtitle(desk.days(), room.now(), names, stage));
        empty.set(ready.isEmpty() ? PottingWords.empty(trays, stage, names, desk.days()) : "");
        Optional<String> before = bench.get().map(open -> open.brood().code());
        Optional<BroodView> next = ready.stream()
                .filter(brood -> before.isPresent() && brood.code().equals(before.get()))
                .findFirst()
                .or(() -> ready.stream()
                        .max(Comparator.comparing(brood -> Bench.of(brood).ready())));
        boolean unchanged = next.isPresent()
                && bench.get()
                        .filter(open -> open.trays().equals(Bench.of(next.get()).trays()))
                        .isPresent();
        if (!unchanged) {
            next.ifPresentOrElse(this::lay, this::clear);
        }
    }

    private void lay(BroodView brood) {
        laying = true;
        Bench laid = Bench.of(brood);
        laid.takings()
                .forEach(taking -> Stream.of(taking.takenProperty(), taking.pottedProperty(), taking.lostProperty())
                        .forEach(number -> number.addListener((observed, before, now) -> edited())));
        form.prefixProperty()
                .set(PotPrefix.of(brood.record().brood(), desk.room().get().now())
                        .text());
        bench.set(Optional.of(laid));
        laying = false;
        recompute();
    }

    private void clear() {
        bench.set(Optional.empty());
        recompute();
    }

    private void edited() {
        if (!laying) {
            news.set("");
            recompute();
        }
    }

    private void recompute() {
        preview.show(bench.get().flatMap(this::job));
        sums.set(bench.get().map(this::sums).orElse(BenchSums.NOTHING));
    }

    private Optional<LabelJob> job(Bench open) {
        boolean takes = open.taken() > 0
                && open.takings().stream()
                        .allMatch(taking -> taking.problemProperty().get().isEmpty());
        OptionalInt firstCell = form.firstCell();
        Optional<PrintShift> shift = form.shift();
        Optional<PotPrefix> prefix = form.prefix();
        if (!takes || firstCell.isEmpty() || shift.isEmpty() || prefix.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new LabelJob(
                form.sheetProperty().get(),
                firstCell.getAsInt(),
                shift.get(),
                labels(open, prefix.get()).all(),
                desk.room().get().now()));
    }

    private BenchSums sums(Bench open) {
        boolean ready = open.holdsTogether() && preview.jobProperty().get().isPresent();
        Bench.Labels labels = labels(
                open, form.prefix().orElse(PotPrefix.of(open.brood().record().brood(), now())));
        return new BenchSums(
                open.taken(),
                open.potted(),
                open.lost(),
                PottingWords.balanceDetail(open.takings(), open.leftOver(labels)),
                ready);
    }

    private Bench.Labels labels(Bench open, PotPrefix prefix) {
        return open.labels(prefix, existingPots(), desk.vocabulary().get(), desk.days(), now());
    }

    private Instant now() {
        return desk.room().get().now();
    }

    private List<Pot> existingPots() {
        List<Pot> pots = new ArrayList<>();
        desk.room().get().broods().forEach(brood -> pots.addAll(brood.record().pots()));
        return pots;
    }
}
