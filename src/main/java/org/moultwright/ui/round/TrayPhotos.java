package org.moultwright.ui.round;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.value.ObservableObjectValue;
import org.moultwright.domain.PhotoNote;
import org.moultwright.language.Texts;
import org.moultwright.task.Outcome;
import org.moultwright.ui.photo.PhotoDesk;
import org.moultwright.workflow.AttachPhotos;
import org.moultwright.workflow.AttachPhotos.Offer;
import org.moultwright.workflow.Deed;

/** The photos of the tray under the hand: those there are, those that wait for it, and how more are attached. */
final class TrayPhotos {
    private final RoundDesk desk;
    private final ReadOnlyObjectProperty<Optional<OpenSheet>> open;
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper news = new ReadOnlyStringWrapper("");

    TrayPhotos(RoundDesk desk, ReadOnlyObjectProperty<Optional<OpenSheet>> open) {
        this.desk = desk;
        this.open = open;
        open.addListener((observed, before, now) -> problem.set(""));
    }

    PhotoDesk desk() {
        return desk.photos();
    }

    /** Those of a tray, the newest first. */
    static List<PhotoNote> of(TrayFacts facts) {
        return facts.record().photos().stream()
                .filter(photo -> photo.tray().equals(facts.tray()))
                .sorted(Comparator.comparing(PhotoNote::at).reversed())
                .toList();
    }

    /** Why a picture was not attached, in a sentence; empty where all were. */
    ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }

    /** The keeper has read why, and wants the room. */
    void putProblemAway() {
        problem.set("");
    }

    /** What is going on; empty while nothing is. */
    ReadOnlyStringProperty newsProperty() {
        return news.getReadOnlyProperty();
    }

    /** New pictures in the keeper's folder. */
    ObservableObjectValue<List<Path>> offered() {
        return desk.photos().offers().offered();
    }

    void attachOffered() {
        List<Path> pictures = offered().get();
        attach(pictures.stream().map(Offer::of).toList(), pictures);
    }

    void declineOffered() {
        desk.photos().offers().decline(offered().get());
    }

    void attach(List<Offer> offers) {
        attach(offers, List.of());
    }

    private void attach(List<Offer> offers, List<Path> offered) {
        Optional<AttachPhotos> attach = desk.photos().attach();
        Optional<TrayFacts> tray = open.get().map(OpenSheet::facts);
        if (attach.isEmpty() || tray.isEmpty() || offers.isEmpty()) {
            return;
        }
        problem.set("");
        news.set(Texts.count(offers.size(), "Attaching 1 photo.", "Attaching {0} photos.", offers.size()));
        TrayFacts facts = tray.get();
        desk.runner()
                .<AttachPhotos.Attached>run(
                        progress -> attach.get().attach(facts.brood(), facts.tray(), offers),
                        outcome -> ended(facts.tray(), offers.size(), offered, outcome));
    }

    private void ended(String tray, int offers, List<Path> offered, Outcome<AttachPhotos.Attached> outcome) {
        news.set("");
        if (outcome instanceof Outcome.Done<AttachPhotos.Attached> done) {
            List<AttachPhotos.Refusal> refused = done.value().refused();
            problem.set(PhotoRefusals.words(refused, offers - refused.size()));
            desk.photos().offers().decline(withoutThoseToTryAgain(offered, refused));
            done.value().deed().ifPresent(deed -> saved(deed, offered));
        } else if (outcome instanceof Outcome.Failed<AttachPhotos.Attached> failed) {
            problem.set(
                    Texts.say("Not attached to {0}: {1}", tray, failed.fault().getMessage()));
        }
    }

    private static List<Path> withoutThoseToTryAgain(List<Path> offered, List<AttachPhotos.Refusal> refused) {
        List<String> again = refused.stream()
                .filter(refusal -> !refusal.isFinal())
                .map(AttachPhotos.Refusal::name)
                .toList();
        return offered.stream()
                .filter(picture -> !again.contains(String.valueOf(picture.getFileName())))
                .toList();
    }

    private void saved(Deed.Summary deed, List<Path> offered) {
        desk.saveLine().saved(deed.doneAt(), () -> takeBack(deed.id(), offered));
        desk.readAgain().run();
    }

    private void takeBack(UUID deed, List<Path> offered) {
        desk.runner().<Deed.Summary>run(progress -> desk.undo().undo(deed), outcome -> {
            if (outcome instanceof Outcome.Failed<Deed.Summary> failed) {
                problem.set(RoundWords.notUndone(failed.fault()));
            } else {
                desk.photos().offers().offerAgain(offered);
            }
            desk.readAgain().run();
        });
    }
}
