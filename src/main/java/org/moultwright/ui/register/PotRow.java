package org.moultwright.ui.register;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.moultwright.domain.Brood;
import org.moultwright.domain.PotEvent;
import org.moultwright.domain.PotEvent.What;
import org.moultwright.domain.PotLife;
import org.moultwright.domain.label.LabelDesign;
import org.moultwright.language.Texts;
import org.moultwright.text.DayWords;
import org.moultwright.workflow.PotLabel;
import org.moultwright.workflow.RoomReading;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.TendPots;

/**
 * A pot as a line of the register.
 *
 * @param brood the brood its animal is of
 * @param life the pot and what happened to its animal
 * @param state how the animal is
 * @param words all that it is found by, in small letters, a space before each
 */
record PotRow(Brood brood, PotLife life, PotState state, String words) {
    /** All pots of a room, those of one brood together, in the order they were made. */
    static final RoomReading<List<PotRow>> ALL = PotRow::all;

    static PotRow of(Brood brood, PotLife life) {
        PotState state = PotState.of(life);
        String code = life.pot().code();
        String words = String.join(
                        " ",
                        "",
                        code,
                        code.replace("-", ""),
                        code.substring(code.indexOf('-') + 1),
                        brood.code(),
                        brood.taxon(),
                        life.pot().tray(),
                        life.pot().size(),
                        state.word())
                .toLowerCase(Locale.ROOT);
        return new PotRow(brood, life, state, words);
    }

    private static List<PotRow> all(RoomView room) {
        List<PotRow> rows = new ArrayList<>();
        room.broods()
                .forEach(view -> PotLife.of(view.record())
                        .forEach(life -> rows.add(of(view.record().brood(), life))));
        return rows;
    }

    /** This pot after something more happened. */
    PotRow with(PotEvent event) {
        List<PotEvent> events = new ArrayList<>(life.events());
        events.add(event);
        return of(brood, new PotLife(life.pot(), events));
    }

    /** This pot as if that had not happened. */
    PotRow without(PotEvent event) {
        return of(
                brood,
                new PotLife(
                        life.pot(),
                        life.events().stream()
                                .filter(other -> !other.equals(event))
                                .toList()));
    }

    /** The words that stood on its label the first time; where nobody wrote them down, the day it was filled. */
    PotLabel label(LabelDesign design, DayWords days) {
        String line = life.pot().label();
        return PotLabel.of(
                design,
                code(),
                brood.taxon(),
                line.isEmpty() ? Texts.say("potted {0}", days.shortDay(potted())) : line);
    }

    String code() {
        return life.pot().code();
    }

    String broodCode() {
        return brood.code();
    }

    String size() {
        return life.pot().size();
    }

    Instant potted() {
        return life.pot().potted();
    }

    Optional<Instant> last(What what) {
        return life.last(what);
    }

    boolean isAlive() {
        return state == PotState.ALIVE;
    }

    TendPots.Chosen chosen() {
        return new TendPots.Chosen(brood.code(), code());
    }
}
