package org.moultwright.ui.shelf;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import javafx.beans.Observable;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.beans.value.ObservableValue;
import org.moultwright.domain.Cause;
import org.moultwright.domain.Stage;
import org.moultwright.language.Texts;
import org.moultwright.workflow.Deed;
import org.moultwright.workflow.ShareTrays;
import org.moultwright.workflow.ShareTrays.Part;
import org.moultwright.workflow.ShelfAt;
import org.moultwright.workflow.Standing;
import org.moultwright.workflow.Standing.Occupants;

/** Animals to be taken out of a tray into another or a new one; isolated, with a reason, or just moved. */
final class SplitForm extends ShelfForm {
    private static final Pattern NUMBERED = Pattern.compile("(.*?)(\\d+)");

    private final ShelfDesk desk;
    private ShelfAt shelf;
    private final Standing tray;
    private final Occupants before;
    private final ReadOnlyObjectWrapper<Occupants> occupants;
    private final boolean isolates;
    private final Map<Stage, ObjectProperty<OptionalInt>> counts = new LinkedHashMap<>();
    private final StringProperty to = new SimpleStringProperty("");

    /** Whether there was no such tray when its code was written. */
    private boolean isNew;

    private final StringProperty reason = new SimpleStringProperty("");

    SplitForm(ShelfDesk desk, ShelfAt shelf, Standing tray, Occupants occupants, List<Stage> stages, boolean isolates) {
        super(
                isolates ? Texts.say("Isolate from {0}", tray.code()) : Texts.say("Split {0}", tray.code()),
                isolates ? Texts.say("Isolate") : Texts.say("Split"));
        this.desk = desk;
        this.shelf = shelf;
        this.tray = tray;
        this.before = occupants;
        this.occupants = new ReadOnlyObjectWrapper<>(occupants);
        this.isolates = isolates;
        stages.forEach(stage -> counts.put(stage, new SimpleObjectProperty<>(OptionalInt.empty())));
        to.addListener(
                (observed, before, now) -> isNew = this.shelf.find(now.strip()).isEmpty());
        to.set(nextFree(shelf, tray.code()));
    }

    /** Animals may have come or gone, and the new tray proposed may be somebody else's by now. */
    @Override
    void see(ShelfAt read) {
        boolean isProposed = to.get().equals(nextFree(shelf, tray.code()));
        shelf = read;
        occupants.set(read.find(tray.code())
                .flatMap(standing -> standing.occupantsOf(before.brood()))
                .orElseGet(() -> new Occupants(before.brood(), before.taxon(), 0, Map.of())));
        if (isProposed) {
            to.set(nextFree(read, tray.code()));
        }
    }

    boolean isolates() {
        return isolates;
    }

    /** How many of each stage, in the order of the stages. */
    Map<Stage, ObjectProperty<OptionalInt>> counts() {
        return counts;
    }

    /** How many of a stage were seen there last: "of 54"; "of 52 now" once it is another figure than the form began with. */
    ObservableValue<String> seen(Stage stage) {
        return occupants.map(there -> count(there, stage) == count(before, stage)
                ? Texts.say("of {0}", count(there, stage))
                : Texts.say("of {0} now", count(there, stage)));
    }

    /** Whether any of a stage were seen there last. */
    boolean holds(Stage stage) {
        return count(occupants.get(), stage) > 0;
    }

    private static int count(Occupants occupants, Stage stage) {
        return occupants.byStage().getOrDefault(stage, 0);
    }

    StringProperty toProperty() {
        return to;
    }

    StringProperty reasonProperty() {
        return reason;
    }

    @Override
    Optional<Supplier<Deed.Summary>> filledIn() {
        EnumMap<Stage, Integer> taken = new EnumMap<>(Stage.class);
        counts.forEach((stage, count) -> taken.put(stage, count.get().orElse(0)));
        Part part = new Part(
                before.brood(),
                tray.code(),
                to.get().strip(),
                isNew,
                taken,
                isolates ? Cause.ISOLATED : Cause.MOVED,
                reason.get());
        Optional<Refusal> wrong = ShareTrays.againstCounts(shelf, part)
                .map(tooMany -> new Refusal(countOf(tooMany.stage()), tooMany.why()))
                .or(() -> ShareTrays.againstTarget(shelf, part).map(why -> new Refusal(to, why)))
                .or(() -> ShareTrays.againstReason(part).map(why -> new Refusal(reason, why)));
        return unless(wrong, () -> desk.share().split(part));
    }

    /** The count of a stage; of the first that was seen where none was said. */
    private Observable countOf(Optional<Stage> stage) {
        return stage.or(() -> counts.keySet().stream().filter(this::holds).findFirst())
                .map(counts::get)
                .orElseGet(() -> counts.values().iterator().next());
    }

    /** A1 leads to the first of A2, A3, ... that is free; a code without a number gets one. */
    private static String nextFree(ShelfAt shelf, String code) {
        Matcher numbered = NUMBERED.matcher(code);
        boolean hasNumber = numbered.matches() && numbered.group(2).length() < 6;
        String stem = hasNumber ? numbered.group(1) : code + "-";
        int first = hasNumber ? Integer.parseInt(numbered.group(2)) + 1 : 2;
        return IntStream.iterate(first, number -> number + 1)
                .mapToObj(number -> stem + number)
                .filter(free -> shelf.find(free).isEmpty())
                .findFirst()
                .orElseThrow();
    }
}
