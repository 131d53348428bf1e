package org.moultwright.ui.potting;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.value.ObservableObjectValue;
import javafx.beans.value.ObservableValue;
import org.moultwright.domain.Stage;
import org.moultwright.domain.code.CodePattern;
import org.moultwright.language.Texts;
import org.moultwright.text.DayWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.label.LabelNews;
import org.moultwright.ui.label.LabelOutput;
import org.moultwright.ui.label.SheetForm;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.TrayView;

/** The potting bench: the broods on it, their labels, and what really went into pots. */
final class PottingViewModel {
    private final PottingDesk desk;
    private final LabelForm form;
    private final LabelNews news = new LabelNews();
    private final LabelOutput output;
    private final PottingDeeds deeds;
    /** One for all fields: what observes it for each of them would outlive them. */
    private final ObservableValue<String> sizeHint;

    private final OnBench onBench = new OnBench(this::edited);
    private final BenchLabels labels;
    private final ReadOnlyObjectWrapper<BenchSums> sums = new ReadOnlyObjectWrapper<>(BenchSums.NOTHING);
    private final ReadOnlyStringWrapper empty = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper subtitle = new ReadOnlyStringWrapper("");

    PottingViewModel(PottingDesk desk) {
        this.desk = desk;
        this.form =
                new LabelForm(desk.pattern().chosen(), desk.design().chosen().get());
        this.sizeHint = form.potSizeProperty().map(ofAll -> ofAll.isBlank() ? Texts.say("size") : ofAll);
        this.output = new LabelOutput(desk.labels(), news);
        this.deeds = new PottingDeeds(desk, news, onBench::clear);
        this.labels = new BenchLabels(desk, form, news, this::edited, this::recompute);
        form.whenChanged(this::edited);
        news.whenTold(this::keepStack);
        desk.room().addListener((observed, before, now) -> read(now));
        desk.vocabulary()
                .addListener((observed, before, now) -> read(desk.room().get()));
        read(desk.room().get());
    }

    LabelForm form() {
        return form;
    }

    OnBench onBench() {
        return onBench;
    }

    BenchLabels labels() {
        return labels;
    }

    LabelNews news() {
        return news;
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

    /** When the room was read. */
    Instant now() {
        return desk.room().get().now();
    }

    ObservableObjectValue<Vocabulary> vocabularyProperty() {
        return desk.vocabulary();
    }

    /** What a field for a tray's own size says while it is empty: the size of all pots, if one is written. */
    ObservableValue<String> sizeHint() {
        return sizeHint;
    }

    /** Lays a brood on the bench, or takes it off; the last one stays. */
    void lay(String broodCode, boolean isOn) {
        onBench.lay(broodCode, isOn);
        recompute();
    }

    /** Begins a portion of this tray's animals for pots of another size. */
    void addSize(Taking taking) {
        onBench.addSize(taking);
        recompute();
    }

    void saveLabels() {
        output.save(labels.jobsProperty().get());
    }

    void printLabels() {
        output.print(labels.jobsProperty().get());
    }

    void saveCalibration() {
        shownForm().calibration(desk.clock().instant()).ifPresent(output::saveCalibration);
    }

    void printCalibration() {
        shownForm().calibration(desk.clock().instant()).ifPresent(output::printCalibration);
    }

    /** Writes down what really went into pots. */
    void done() {
        if (sums.get().canBeDone()) {
            onBench.bench().ifPresent(open -> {
                CodePattern pattern = form.pattern().orElseThrow();
                List<SheetWay> used = labels.used();
                deeds.keep(
                        open.potting(
                                labels.of(open, pattern),
                                form.potSizeProperty().get(),
                                desk.clock().instant()),
                        () -> {
                            desk.pattern().choose().accept(pattern);
                            desk.design().choose().accept(form.designProperty().get());
                            BenchLabels.goOnAfter(used);
                            onBench.forgetChoice();
                        });
            });
        }
    }

    /** Whenever labels went, or could not. Sheets of their own for a size last as long as the desk is open. */
    private void keepStack() {
        labels.sheets().common().form().stack().ifPresent(desk.stack().keep());
    }

    private SheetForm shownForm() {
        return labels.shownProperty().get().form();
    }

    private void read(RoomView room) {
        labels.read(room);
        tellWhere(room);
        onBench.read(room);
        recompute();
    }

    private void tellWhere(RoomView room) {
        List<TrayView> trays = room.occupiedTrays();
        Stage stage = room.broods().stream()
                .map(brood -> brood.record().brood().lastStage())
                .findFirst()
                .orElse(Stage.INSTAR2);
        Vocabulary names = desk.vocabulary().get();
        boolean nothingReady = ReadyBroods.of(room).codes().isEmpty();
        subtitle.set(trays.isEmpty() ? "" : PottingWords.subtitle(desk.days(), room.now(), names, stage));
        empty.set(
                !nothingReady
                        ? ""
                        : room.awaitsDates()
                                ? PottingWords.awaitsDates(names, stage)
                                : PottingWords.empty(trays, stage, names, desk.days(), room.now()));
    }

    private void edited() {
        news.pass();
        recompute();
    }

    private void recompute() {
        Optional<Bench> bench = onBench.bench();
        Optional<Bench.Labels> made = labels.make(bench);
        boolean isSound = !labels.jobsProperty().get().isEmpty();
        sums.set(bench.map(open -> new BenchSums(
                        open.taken(),
                        open.potted(),
                        open.lost(),
                        PottingWords.bySize(
                                open.pottedBySize(form.potSizeProperty().get())),
                        PottingWords.balanceDetail(
                                open, made.map(Bench.Labels::leftOver).orElse(List.of())),
                        open.holdsTogether() && isSound))
                .orElse(BenchSums.NOTHING));
    }
}
