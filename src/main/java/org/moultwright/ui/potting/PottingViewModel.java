package org.moultwright.ui.potting;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.StringProperty;
import javafx.beans.value.ObservableObjectValue;
import org.moultwright.domain.Pot;
import org.moultwright.domain.Stage;
import org.moultwright.domain.code.PotPrefix;
import org.moultwright.language.Texts;
import org.moultwright.text.DayWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.label.LabelNews;
import org.moultwright.ui.label.LabelOutput;
import org.moultwright.ui.label.LabelWords;
import org.moultwright.ui.label.PreviewModel;
import org.moultwright.workflow.BroodView;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.TrayView;

/** The potting bench: one brood at a time, its labels, and what really went into pots. */
final class PottingViewModel {
    private final PottingDesk desk;
    private final LabelForm form = new LabelForm();
    private final PreviewModel preview;
    private final LabelNews news = new LabelNews();
    private final LabelOutput output;
    private final PottingDeeds deeds;
    private final ReadOnlyObjectWrapper<Optional<Bench>> bench = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<List<String>> choices = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyObjectWrapper<BenchSums> sums = new ReadOnlyObjectWrapper<>(BenchSums.NOTHING);
    private final ReadOnlyStringWrapper empty = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper subtitle = new ReadOnlyStringWrapper("");
    private boolean laying;

    PottingViewModel(PottingDesk desk) {
        this.desk = desk;
        this.preview = new PreviewModel(desk.printer(), desk.runner());
        this.output = new LabelOutput(desk.labels(), news);
        this.deeds = new PottingDeeds(desk, news, () -> bench.set(Optional.empty()));
        form.whenChanged(this::edited);
        preview.faultProperty()
                .addListener((observed, before, now) ->
                        news.failed(now.map(fault -> LabelWords.fault(fault, Texts.say("The labels cannot be drawn")))
                                .orElse("")));
        desk.room().addListener((observed, before, now) -> read(now));
        desk.vocabulary().addListener((observed, before, now) -> read(room()));
        read(room());
    }

    LabelForm form() {
        return form;
    }

    PreviewModel preview() {
        return preview;
    }

    LabelNews news() {
        return news;
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

    DayWords days() {
        return desk.days();
    }

    ObservableObjectValue<Vocabulary> vocabularyProperty() {
        return desk.vocabulary();
    }

    void open(String broodCode) {
        room().brood(broodCode).ifPresent(this::lay);
    }

    void saveLabels() {
        preview.jobProperty().get().ifPresent(output::save);
    }

    void printLabels() {
        preview.jobProperty().get().ifPresent(output::print);
    }

    void saveCalibration() {
        form.sheet().calibration(desk.clock().instant()).ifPresent(output::saveCalibration);
    }

    void printCalibration() {
        form.sheet().calibration(desk.clock().instant()).ifPresent(output::printCalibration);
    }

    /** Writes down what really went into pots. */
    void done() {
        if (sums.get().canBeDone()) {
            bench.get().ifPresent(open -> {
                Bench.Labels labels = labels(open, form.prefix().orElseThrow());
                deeds.keep(
                        open.potting(
                                labels,
                                form.potSizeProperty().get(),
                                desk.clock().instant()),
                        preview.jobProperty().get().orElseThrow(),
                        job -> form.sheet().firstCellProperty().set(OptionalInt.of(LabelWords.nextFreeCell(job))));
            });
        }
    }

    /** A bench with animals on it is left as it is while its trays are; anything else is laid anew. */
    private void read(RoomView room) {
        ReadyBroods ready = ReadyBroods.of(room);
        choices.set(ready.codes());
        tellWhere(room, ready.codes().isEmpty());
        Optional<BroodView> next = ready.next(bench.get());
        boolean unchanged = next.isPresent()
                && bench.get()
                        .filter(open -> open.trays().equals(Bench.of(next.get()).trays()))
                        .isPresent();
        if (!unchanged) {
            next.ifPresentOrElse(this::lay, this::clear);
        }
    }

    private void tellWhere(RoomView room, boolean nothingReady) {
        List<TrayView> trays = room.occupiedTrays();
        Stage stage = room.broods().stream()
                .map(brood -> brood.record().brood().lastStage())
                .findFirst()
                .orElse(Stage.INSTAR2);
        Vocabulary names = desk.vocabulary().get();
        subtitle.set(trays.isEmpty() ? "" : PottingWords.subtitle(desk.days(), room.now(), names, stage));
        empty.set(nothingReady ? PottingWords.empty(trays, stage, names, desk.days()) : "");
    }

    private void lay(BroodView brood) {
        laying = true;
        Bench laid = Bench.of(brood);
        laid.takings()
                .forEach(taking -> Stream.of(taking.takenProperty(), taking.pottedProperty(), taking.lostProperty())
                        .forEach(number -> number.addListener((observed, before, now) -> edited())));
        laid.takings().forEach(taking -> taking.potSizeProperty().addListener((observed, before, now) -> edited()));
        form.prefixProperty()
                .set(PotPrefix.of(brood.record().brood(), room().now()).text());
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
            news.pass();
            recompute();
        }
    }

    private void recompute() {
        preview.show(bench.get()
                .filter(Bench::takesWhatIsThere)
                .flatMap(open -> form.prefix()
                        .flatMap(prefix -> form.sheet().job(labels(open, prefix).all(), room().now()))));
        sums.set(bench.get().map(this::sums).orElse(BenchSums.NOTHING));
    }

    private BenchSums sums(Bench open) {
        boolean ready = open.holdsTogether() && preview.jobProperty().get().isPresent();
        PotPrefix prefix =
                form.prefix().orElse(PotPrefix.of(open.brood().record().brood(), room().now()));
        return new BenchSums(
                open.taken(),
                open.potted(),
                open.lost(),
                PottingWords.balanceDetail(open.takings(), open.leftOver(labels(open, prefix))),
                ready);
    }

    private Bench.Labels labels(Bench open, PotPrefix prefix) {
        List<Pot> existing = new ArrayList<>();
        room().broods().forEach(brood -> existing.addAll(brood.record().pots()));
        Instant now = room().now();
        return open.labels(
                prefix,
                existing,
                taking -> PottingWords.labelLine(
                        desk.vocabulary().get(),
                        open.stage(),
                        desk.days(),
                        open.seen(taking, now),
                        taking.potSize(form.potSizeProperty().get())));
    }

    /** The size of all pots whose tray names no other. */
    StringProperty potSizeProperty() {
        return form.potSizeProperty();
    }

    private RoomView room() {
        return desk.room().get();
    }
}
