package org.moultwright.ui.broods;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Stage;
import org.moultwright.language.Texts;
import org.moultwright.ui.broods.WeighedSamples.Weighed;
import org.moultwright.workflow.BroodView;
import org.moultwright.workflow.Deed;
import org.moultwright.workflow.OpenSac;
import org.moultwright.workflow.ShelfAt;
import org.moultwright.workflow.Standing;

/** A sac being opened: sorted, or weighed, and spread over trays. */
final class OpeningForm extends SacForm {
    /** The form as it is named among those begun. */
    static final String FORM = "opening";

    private final SacContents contents;
    private final WeighedSamples weighing;
    private final TrayShares shares;
    private final FormField inside;
    private final FormField day;
    private final ReadOnlyStringWrapper sum = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper spread = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper estimate = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper estimateNote = new ReadOnlyStringWrapper("");
    private final ReadOnlyObjectWrapper<Optional<OpeningQuestion>> question =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private boolean isTotalWrong;

    OpeningForm(SacFormDesk desk, String brood) {
        super(desk, FORM, brood);
        this.contents = new SacContents(this);
        this.weighing = new WeighedSamples(this);
        this.shares = new TrayShares(this);
        this.inside = placeField("stands-in", Texts.say("container new trays stand in"));
        this.day = dayField("opened-on", Texts.say("day it was opened"));
        inside.set(usual(inside));
        layBack();
        read();
    }

    SacContents contents() {
        return contents;
    }

    WeighedSamples weighing() {
        return weighing;
    }

    TrayShares shares() {
        return shares;
    }

    /** The day it was opened; empty for today. */
    FormField day() {
        return day;
    }

    /** The container new trays are stood in. */
    FormField inside() {
        return inside;
    }

    /** What was in the sac, balanced, in words. */
    ReadOnlyStringProperty sumProperty() {
        return sum.getReadOnlyProperty();
    }

    /** Where the good ones are, in words. */
    ReadOnlyStringProperty spreadProperty() {
        return spread.getReadOnlyProperty();
    }

    /** What was weighed comes to, such as "about 233". */
    ReadOnlyStringProperty estimateProperty() {
        return estimate.getReadOnlyProperty();
    }

    /** How sure that is, in a sentence. */
    ReadOnlyStringProperty estimateNoteProperty() {
        return estimateNote.getReadOnlyProperty();
    }

    /** What is asked before it is kept. */
    ReadOnlyObjectProperty<Optional<OpeningQuestion>> questionProperty() {
        return question.getReadOnlyProperty();
    }

    String stageWord(Stage stage) {
        return desk().vocabulary().get().label(stage);
    }

    @Override
    String usual(FormField field) {
        return field.key().equals("stands-in") ? usualPlace() : shares.usual(field);
    }

    @Override
    void changed() {
        isTotalWrong = false;
        contents.setGone(0);
        question.set(Optional.empty());
        read();
    }

    @Override
    Optional<Supplier<Deed.Summary>> filledIn() {
        question.set(Optional.empty());
        boolean isWeighed = !weighing.onProperty().get() || weighing.isComplete();
        boolean isPlaced = isPlace(inside);
        boolean arePossible = shares.arePossible();
        Optional<Instant> at = openedAt();
        if (!(isWeighed && isPlaced && arePossible && at.isPresent())) {
            return Optional.empty();
        }
        if (goodOnes() == 0) {
            refuse(Texts.say("Count at least one good one. A sac without any is written into its mother's notes."));
            return Optional.empty();
        }
        question.set(asked());
        if (question.get().isPresent()) {
            return Optional.empty();
        }
        OpenSac.Opening opening = new OpenSac.Opening(
                about(), shares.trays(), contents.putAside(), weighed().map(Weighed::note), place(inside));
        return Optional.of(() -> desk().waysIn().sacs().open().open(opening, at.get()));
    }

    /** The moment of the opening; a sac taken from its mother on that very day was opened once it had been. */
    private Optional<Instant> openedAt() {
        Optional<BroodRecord> record = desk().room().get().brood(about()).map(BroodView::record);
        Optional<String> opened = record.flatMap(OpenSac::against);
        if (opened.isPresent()) {
            refuse(opened.get());
            return Optional.empty();
        }
        Optional<LocalDate> written = day.isEmpty() ? Optional.of(today()) : day(day);
        Optional<Instant> at = written.map(chosen -> record.flatMap(known -> known.brood()
                        .pulled()
                        .filter(pulled -> chosen.equals(desk().days().date(pulled))))
                .filter(pulled -> pulled.isAfter(instant(chosen)))
                .orElse(instant(chosen)));
        return at.filter(moment -> record.map(known -> refuse(day, OpenSac.against(known, moment, now())))
                .orElse(true));
    }

    private Optional<OpeningQuestion> asked() {
        if (!shares.left().isEmpty()) {
            return Optional.of(spreadQuestion());
        }
        OptionalInt difference = isTotalWrong ? OptionalInt.empty() : contents.notSorted(goodOnes());
        return difference.isEmpty() ? Optional.empty() : Optional.of(totalQuestion(difference.getAsInt()));
    }

    private OpeningQuestion spreadQuestion() {
        int placed = goodOnes()
                - shares.left().values().stream().mapToInt(Integer::intValue).sum();
        String sentence = Texts.say("{0} in trays, {1} good. Which is right?", placed, goodOnes());
        boolean hasRest = shares.left().values().stream().allMatch(left -> left > 0);
        List<OpeningQuestion.Answer> answers = hasRest && !weighing.onProperty().get()
                ? List.of(
                        answer("P", Texts.say("Put the rest into the last tray"), shares::placeRest),
                        answer("W", Texts.say("{0} were good", placed), this::believeTrays))
                : List.of(answer("E", Texts.say("Share them equally"), shares::shareEqually));
        return new OpeningQuestion(sentence, answers);
    }

    private OpeningQuestion totalQuestion(int difference) {
        int counted = contents.inAll().count();
        int sorted = counted - difference;
        OpeningQuestion.Answer wrong = answer("M", Texts.say("The count in all was wrong"), () -> isTotalWrong = true);
        return difference > 0
                ? new OpeningQuestion(
                        Texts.say(
                                "{0} counted in all, {1} sorted. Count again, a miscount in all, or some gone?",
                                counted, sorted),
                        List.of(
                                wrong,
                                answer("G", Texts.say("{0} gone", difference), () -> contents.setGone(difference))))
                : new OpeningQuestion(
                        Texts.say(
                                "{0} counted in all, {1} sorted. Count again, or was the count in all wrong?",
                                counted, sorted),
                        List.of(wrong));
    }

    private OpeningQuestion.Answer answer(String key, String words, Runnable does) {
        return new OpeningQuestion.Answer(key, words, () -> {
            does.run();
            question.set(Optional.empty());
            read();
            keep();
        });
    }

    private void believeTrays() {
        shares.placed()
                .forEach((stage, count) -> Optional.ofNullable(contents.good().get(stage))
                        .ifPresent(field -> field.set(Integer.toString(count))));
    }

    private void read() {
        Map<Stage, Integer> good = weighing.onProperty().get()
                ? weighed()
                        .map(weighed -> Map.of(weighing.stageProperty().get(), weighed.animals()))
                        .orElse(Map.of())
                : contents.counted();
        if (!good.equals(shares.good())) {
            shares.spread(good);
        }
        boolean isEstimate = weighing.onProperty().get();
        sum.set(contents.sum(goodOnes(), isEstimate && goodOnes() > 0));
        spread.set(shares.sum());
        estimate.set(weighed()
                .map(weighed -> Texts.say("about {0}", weighed.animals()))
                .orElse(""));
        estimateNote.set(weighed()
                .map(weighed -> weighed.hasInterval()
                        ? Texts.say(
                                "{0} in 95 of 100 such samplings. An estimate: a full count replaces it.",
                                weighed.interval())
                        : Texts.say("From one sample nobody can say how far off it is. Weigh a second."))
                .orElse(Texts.say("Count and weigh two samples or more, then all good ones together.")));
    }

    private Optional<Weighed> weighed() {
        return weighing.onProperty().get() ? weighing.weighed() : Optional.empty();
    }

    private int goodOnes() {
        return shares.good().values().stream().mapToInt(Integer::intValue).sum();
    }

    /** Where the sac stood, else where trays stand already. */
    private String usualPlace() {
        ShelfAt shelf = shelf();
        return shelf.find(about())
                .flatMap(Standing::inside)
                .or(() -> shelf.all().stream()
                        .filter(standing -> standing.alive() > 0)
                        .flatMap(standing -> standing.inside().stream())
                        .findFirst())
                .filter(places()::contains)
                .orElse("");
    }
}
