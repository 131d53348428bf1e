package org.moultwright.ui.potting;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import org.moultwright.domain.Pot;
import org.moultwright.domain.code.CodePattern;
import org.moultwright.domain.code.TakenCodes;
import org.moultwright.ui.label.LabelNews;
import org.moultwright.ui.label.LabelWords;
import org.moultwright.ui.label.PreviewModel;
import org.moultwright.ui.label.SheetForm;
import org.moultwright.workflow.DocumentException;
import org.moultwright.workflow.LabelJob;
import org.moultwright.workflow.RoomView;

/** The labels of what is taken: the codes on them, and the sheets they go on. */
final class BenchLabels {
    private final PottingDesk desk;
    private final LabelForm form;
    private final LabelNews news;
    private final Runnable edited;
    private final Runnable again;
    private final BenchSheets sheets;
    private final ReadOnlyObjectWrapper<List<String>> sizes = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyObjectWrapper<String> shownSize = new ReadOnlyObjectWrapper<>("");
    private final ReadOnlyObjectWrapper<SheetWay> shown;
    private final ReadOnlyObjectWrapper<List<LabelJob>> jobs = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyStringWrapper codes = new ReadOnlyStringWrapper("");
    private TakenCodes taken = TakenCodes.of(List.of());

    /**
     * @param edited is told when the keeper fills in a sheet in another way
     * @param again is told when they are to be made anew for another reason
     */
    BenchLabels(PottingDesk desk, LabelForm form, LabelNews news, Runnable edited, Runnable again) {
        this.desk = desk;
        this.form = form;
        this.news = news;
        this.edited = edited;
        this.again = again;
        this.sheets = new BenchSheets(this::newWay);
        this.shown = new ReadOnlyObjectWrapper<>(sheets.common());
    }

    BenchSheets sheets() {
        return sheets;
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

    void showSheetOf(String size) {
        shownSize.set(size);
        shown.set(sheets.of(size));
    }

    /** Gives pots of the size shown their own sheet, or puts them with the others again. */
    void setOwnSheet(boolean isOwn) {
        sheets.setOwn(shownSize.get(), isOwn);
        again.run();
        showSheetOf(shownSize.get());
    }

    /** Codes that stand on a pot of the room are not given again. */
    void read(RoomView room) {
        taken = TakenCodes.of(room.broods().stream()
                .flatMap(brood -> brood.record().pots().stream())
                .map(Pot::code)
                .toList());
    }

    /**
     * Makes the labels of what is taken, and lays them on their sheets.
     *
     * @return them, unless more is taken than there is or their codes have no sound pattern
     */
    Optional<Bench.Labels> make(Optional<Bench> bench) {
        sizes.set(bench.map(open -> List.copyOf(
                        open.pottedBySize(form.potSizeProperty().get()).keySet()))
                .orElse(List.of()));
        if (!sizes.get().contains(shownSize.get())) {
            shownSize.set(sizes.get().stream().findFirst().orElse(""));
        }
        shown.set(sheets.of(shownSize.get()));
        Optional<Bench.Labels> labels = bench.filter(Bench::takesWhatIsThere)
                .flatMap(open -> form.pattern().map(pattern -> of(open, pattern)));
        List<SheetWay> used = used();
        used.forEach(way -> way.preview().show(labels.flatMap(all -> job(all, way))));
        List<LabelJob> made = used.stream()
                .flatMap(way -> way.preview().jobProperty().get().stream())
                .toList();
        boolean isSound = made.size() == used.size()
                && form.patternProblemProperty().get().isEmpty();
        jobs.set(isSound ? made : List.of());
        codes.set(labels.map(all -> LabelWords.codes(all.of(all.byPortion().keySet())))
                .orElse("–"));
        return labels;
    }

    /** The labels of a bench, their codes made by this pattern. */
    Bench.Labels of(Bench open, CodePattern pattern) {
        RoomView room = desk.room().get();
        return open.labels(
                pattern,
                form.designProperty().get(),
                taken.copy(),
                room.now(),
                (taking, portion) -> LabelLine.of(
                        form.designProperty().get(),
                        PottingWords.reached(
                                desk.vocabulary().get(), taking.stage(), desk.days(), taking.seen(room.now())),
                        portion.potSize(form.potSizeProperty().get()),
                        taking.brood().code(),
                        taking.tray().tray()));
    }

    /** The stacks of sheets that the labels made last go on. */
    List<SheetWay> used() {
        return sheets.of(sizes.get());
    }

    /** What is on these sheets is used up: the next labels go on after it. */
    static void goOnAfter(List<SheetWay> used) {
        used.forEach(way -> way.preview()
                .jobProperty()
                .get()
                .ifPresent(job -> way.form().firstCellProperty().set(OptionalInt.of(LabelWords.nextFreeCell(job)))));
    }

    private Optional<LabelJob> job(Bench.Labels labels, SheetWay way) {
        String ofAll = form.potSizeProperty().get();
        return way.form()
                .job(
                        labels.of(labels.byPortion().keySet().stream()
                                .filter(portion ->
                                        sheets.of(portion.potSize(ofAll)).equals(way))
                                .toList()),
                        desk.room().get().now());
    }

    private SheetWay newWay() {
        SheetWay way =
                new SheetWay(new SheetForm(desk.stack().last().get()), new PreviewModel(desk.printer(), desk.runner()));
        way.form().whenChanged(edited);
        way.preview().faultProperty().addListener((observed, before, now) -> tellFaults());
        return way;
    }

    /** Codes that have no room on the label are a matter of their pattern, anything else of the machine. */
    private void tellFaults() {
        form.tellMisfit(firstFault(BenchLabels::isMisfit));
        news.failed(firstFault(fault -> !isMisfit(fault)));
        again.run();
    }

    private String firstFault(Predicate<RuntimeException> which) {
        return used().stream()
                .flatMap(way -> way.preview().faultProperty().get().stream())
                .filter(which)
                .findFirst()
                .map(LabelWords::notDrawn)
                .orElse("");
    }

    private static boolean isMisfit(RuntimeException fault) {
        return fault instanceof DocumentException said && said.reason() == DocumentException.Reason.LABEL_TOO_SMALL;
    }
}
