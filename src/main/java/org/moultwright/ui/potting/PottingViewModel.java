package org.moultwright.ui.potting;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.StringProperty;
import javafx.beans.value.ObservableObjectValue;
import org.moultwright.domain.Pot;
import org.moultwright.domain.Stage;
import org.moultwright.domain.code.CodePattern;
import org.moultwright.domain.code.TakenCodes;
import org.moultwright.text.DayWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.label.LabelNews;
import org.moultwright.ui.label.LabelOutput;
import org.moultwright.ui.label.LabelWords;
import org.moultwright.ui.label.PreviewModel;
import org.moultwright.ui.label.SheetForm;
import org.moultwright.workflow.BroodView;
import org.moultwright.workflow.DocumentException;
import org.moultwright.workflow.LabelJob;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.TrayView;

/** The potting bench: the broods on it, their labels, and what really went into pots. */
final class PottingViewModel {
    private final PottingDesk desk;
    private final LabelForm form;
    private final LabelNews news = new LabelNews();
    private final LabelOutput output;
    private final PottingDeeds deeds;
    private final BenchSheets sheets;
    private final ReadOnlyObjectWrapper<Optional<Bench>> bench = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<List<String>> choices = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyObjectWrapper<BenchSums> sums = new ReadOnlyObjectWrapper<>(BenchSums.NOTHING);
    private final ReadOnlyObjectWrapper<List<String>> sizes = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyObjectWrapper<String> shownSize = new ReadOnlyObjectWrapper<>("");
    private final ReadOnlyObjectWrapper<SheetWay> shown;
    private final ReadOnlyObjectWrapper<List<LabelJob>> jobs = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyStringWrapper codes = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper empty = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper subtitle = new ReadOnlyStringWrapper("");
    private Optional<Set<String>> chosen = Optional.empty();
    private TakenCodes taken = TakenCodes.of(List.of());
    private boolean laying;

    PottingViewModel(PottingDesk desk) {
        this.desk = desk;
        this.form = new LabelForm(desk.pattern().chosen());
        this.output = new LabelOutput(desk.labels(), news);
        this.deeds = new PottingDeeds(desk, news, () -> bench.set(Optional.empty()));
        this.sheets = new BenchSheets(this::newWay);
        this.shown = new ReadOnlyObjectWrapper<>(sheets.common());
        form.whenChanged(this::edited);
        desk.room().addListener((observed, before, now) -> read(now));
        desk.vocabulary().addListener((observed, before, now) -> read(room()));
        read(room());
    }

    LabelForm form() {
        return form;
    }

    BenchSheets sheets() {
        return sheets;
    }

    LabelNews news() {
        return news;
    }

    /** What is on the bench; nothing while no animal is ready. */
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

    /** The sizes of the pots on the bench; several only where a tray names its own. */
    ReadOnlyObjectProperty<List<String>> sizesProperty() {
        return sizes.getReadOnlyProperty();
    }

    /** The size whose sheet is shown. */
    ReadOnlyObjectProperty<String> shownSizeProperty() {
        return shownSize.getReadOnlyProperty();
    }

    /** The sheet shown. */
    ReadOnlyObjectProperty<SheetWay> shownProperty() {
        return shown.getReadOnlyProperty();
    }

    /** One job for each stack of sheets; none while anything about them is not sound. */
    ReadOnlyObjectProperty<List<LabelJob>> jobsProperty() {
        return jobs.getReadOnlyProperty();
    }

    /** The codes given, or what they will look like. */
    ReadOnlyStringProperty codesProperty() {
        return codes.getReadOnlyProperty();
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

    /** The size of all pots whose tray names no other. */
    StringProperty potSizeProperty() {
        return form.potSizeProperty();
    }

    boolean isOnBench(String broodCode) {
        return onBench().contains(broodCode);
    }

    /** Lays a brood on the bench, or takes it off; the last one stays. */
    void lay(String broodCode, boolean isOn) {
        Set<String> broods = new HashSet<>(onBench());
        if (isOn ? broods.add(broodCode) : broods.remove(broodCode)) {
            if (!broods.isEmpty()) {
                chosen = Optional.of(broods);
            }
            lay(ReadyBroods.of(room()).chosen(chosen.orElse(broods)));
        }
    }

    /** Begins a portion of this tray's animals for pots of another size. */
    void addSize(Taking taking) {
        taking.addPortion();
        bench.set(bench.get().map(open -> new Bench(open.takings())));
        recompute();
    }

    void showSheetOf(String size) {
        shownSize.set(size);
        shown.set(sheets.of(size));
    }

    /** Gives pots of the size shown their own sheet, or puts them with the others again. */
    void setOwnSheet(boolean isOwn) {
        sheets.setOwn(shownSize.get(), isOwn);
        recompute();
        showSheetOf(shownSize.get());
    }

    void saveLabels() {
        output.save(jobs.get());
    }

    void printLabels() {
        output.print(jobs.get());
    }

    void saveCalibration() {
        shown.get().form().calibration(desk.clock().instant()).ifPresent(output::saveCalibration);
    }

    void printCalibration() {
        shown.get().form().calibration(desk.clock().instant()).ifPresent(output::printCalibration);
    }

    /** Writes down what really went into pots. */
    void done() {
        if (sums.get().canBeDone()) {
            bench.get().ifPresent(open -> {
                CodePattern pattern = form.pattern().orElseThrow();
                List<SheetWay> used = sheets.of(sizes.get());
                deeds.keep(
                        open.potting(
                                labels(open, pattern),
                                form.potSizeProperty().get(),
                                desk.clock().instant()),
                        () -> {
                            desk.pattern().choose().accept(pattern);
                            used.forEach(PottingViewModel::goOnAfter);
                            chosen = Optional.empty();
                        });
            });
        }
    }

    private static void goOnAfter(SheetWay way) {
        way.preview()
                .jobProperty()
                .get()
                .ifPresent(job -> way.form().firstCellProperty().set(OptionalInt.of(LabelWords.nextFreeCell(job))));
    }

    private SheetWay newWay() {
        SheetWay way = new SheetWay(new SheetForm(), new PreviewModel(desk.printer(), desk.runner()));
        way.form().whenChanged(this::edited);
        way.preview().faultProperty().addListener((observed, before, now) -> tellFaults());
        return way;
    }

    /** Codes that have no room on the label are a matter of their pattern, anything else of the machine. */
    private void tellFaults() {
        List<RuntimeException> faults = sheets.of(sizes.get()).stream()
                .flatMap(way -> way.preview().faultProperty().get().stream())
                .toList();
        form.tellMisfit(faults.stream()
                .filter(PottingViewModel::isMisfit)
                .findFirst()
                .map(LabelWords::notDrawn)
                .orElse(""));
        news.failed(faults.stream()
                .filter(fault -> !isMisfit(fault))
                .findFirst()
                .map(LabelWords::notDrawn)
                .orElse(""));
        recompute();
    }

    private static boolean isMisfit(RuntimeException fault) {
        return fault instanceof DocumentException said && said.reason() == DocumentException.Reason.LABEL_TOO_SMALL;
    }

    private Set<String> onBench() {
        return bench.get().stream()
                .flatMap(open -> open.takings().stream())
                .map(taking -> taking.brood().code())
                .collect(Collectors.toSet());
    }

    /** A bench with animals on it is left as it is while its trays are; any other tray is laid anew. */
    private void read(RoomView room) {
        ReadyBroods ready = ReadyBroods.of(room);
        taken = TakenCodes.of(room.broods().stream()
                .flatMap(brood -> brood.record().pots().stream())
                .map(Pot::code)
                .toList());
        choices.set(ready.codes());
        tellWhere(room, ready.codes().isEmpty());
        List<BroodView> next =
                chosen.map(ready::chosen).filter(broods -> !broods.isEmpty()).orElseGet(ready::unasked);
        if (next.isEmpty()) {
            bench.set(Optional.empty());
            recompute();
        } else {
            lay(next);
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
        empty.set(nothingReady ? PottingWords.empty(trays, stage, names, desk.days(), room.now()) : "");
    }

    private void lay(List<BroodView> broods) {
        laying = true;
        Bench before = bench.get().orElse(new Bench(List.of()));
        Bench laid = before.of(broods, this::edited);
        if (!laid.trays().equals(before.trays())) {
            bench.set(Optional.of(laid));
        }
        laying = false;
        recompute();
    }

    private void edited() {
        if (!laying) {
            news.pass();
            recompute();
        }
    }

    private void recompute() {
        Map<String, Integer> bySize = bench.get()
                .map(open -> open.pottedBySize(form.potSizeProperty().get()))
                .orElse(Map.of());
        sizes.set(List.copyOf(bySize.keySet()));
        if (!sizes.get().contains(shownSize.get())) {
            shownSize.set(sizes.get().stream().findFirst().orElse(""));
        }
        shown.set(sheets.of(shownSize.get()));
        Optional<Bench.Labels> labels = bench.get()
                .filter(Bench::takesWhatIsThere)
                .flatMap(open -> form.pattern().map(pattern -> labels(open, pattern)));
        List<SheetWay> used = sheets.of(sizes.get());
        used.forEach(way -> way.preview().show(labels.flatMap(all -> job(all, way))));
        List<LabelJob> made = used.stream()
                .flatMap(way -> way.preview().jobProperty().get().stream())
                .toList();
        boolean isSound = made.size() == used.size()
                && form.patternProblemProperty().get().isEmpty();
        jobs.set(isSound ? made : List.of());
        codes.set(labels.map(all -> LabelWords.codes(all.of(all.byPortion().keySet())))
                .orElse("–"));
        sums.set(bench.get()
                .map(open -> new BenchSums(
                        open.taken(),
                        open.potted(),
                        open.lost(),
                        PottingWords.bySize(bySize),
                        PottingWords.balanceDetail(
                                open, labels.map(Bench.Labels::leftOver).orElse(List.of())),
                        open.holdsTogether() && !jobs.get().isEmpty()))
                .orElse(BenchSums.NOTHING));
    }

    private Optional<LabelJob> job(Bench.Labels labels, SheetWay way) {
        String ofAll = form.potSizeProperty().get();
        return way.form()
                .job(
                        labels.of(labels.byPortion().keySet().stream()
                                .filter(portion ->
                                        sheets.of(portion.potSize(ofAll)).equals(way))
                                .toList()),
                        room().now());
    }

    private Bench.Labels labels(Bench open, CodePattern pattern) {
        return open.labels(
                pattern,
                taken.copy(),
                room().now(),
                (taking, portion) -> PottingWords.labelLine(
                        desk.vocabulary().get(),
                        taking.stage(),
                        desk.days(),
                        taking.seen(room().now()),
                        portion.potSize(form.potSizeProperty().get())));
    }

    private RoomView room() {
        return desk.room().get();
    }
}
