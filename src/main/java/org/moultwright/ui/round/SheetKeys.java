package org.moultwright.ui.round;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.moultwright.workflow.RoundSheet;

/**
 * What typed keys mean on a sheet, step by step: {@code d 3 f} takes out one nymph dead of a failed moult,
 * {@code m s} notes mould on shells. A key that means nothing here is left to the field it was typed in.
 */
final class SheetKeys {
    static final char AS_EXPECTED = '=';
    static final char LOSS = 'd';
    static final char MOULD = 'm';
    static final char TALLY = 't';
    static final char SOUNDS = 's';
    static final char NOTE = 'j';

    private static final Prompt OPEN = new Prompt.Open();
    private static final int MOST_DIGITS = 4;

    private final ReadOnlyObjectWrapper<Prompt> prompt = new ReadOnlyObjectWrapper<>(OPEN);
    private final Deque<Tallied> tallied = new ArrayDeque<>();
    private final SheetViewModel sheet;
    private final Consumer<FocusRequest.Target> lead;
    private final TallyEar ear;

    /**
     * @param lead puts the keeper's hands elsewhere
     * @param ear says tallies by ear
     */
    SheetKeys(SheetViewModel sheet, Consumer<FocusRequest.Target> lead, TallyEar ear) {
        this.sheet = sheet;
        this.lead = lead;
        this.ear = ear;
    }

    ReadOnlyObjectProperty<Prompt> promptProperty() {
        return prompt.getReadOnlyProperty();
    }

    void ask(Prompt question) {
        tallied.clear();
        prompt.set(question);
    }

    void close() {
        ask(OPEN);
    }

    boolean isOpen() {
        return prompt.get() instanceof Prompt.Open;
    }

    /** Whether keys count animals, so that none of them may reach a field. */
    boolean tallies() {
        return prompt.get() instanceof Prompt.Tally;
    }

    /** Takes a typed key; tells whether it meant something. */
    boolean typed(char typed) {
        char key = Character.toLowerCase(typed);
        Prompt now = prompt.get();
        if (now instanceof Prompt.LossStage) {
            return lossStage(key);
        } else if (now instanceof Prompt.LossWhy why) {
            return lossWhy(why, key);
        } else if (now instanceof Prompt.MouldWhere) {
            return mouldWhere(key);
        } else if (now instanceof Prompt.MouldMore) {
            return mouldMore(key) || anywhere(key);
        } else if (now instanceof Prompt.Tally) {
            return tally(key);
        }
        return anywhere(key);
    }

    /** Takes the last tallied animal back. */
    void takeBack() {
        if (tallied.isEmpty()) {
            ear.sounds().refused();
        } else {
            Tallied last = tallied.pop();
            last.row().countOneLess(last.before());
            ear.sounds().takenBack();
            showTally();
        }
    }

    /** Enter where the prompt has a usual answer: one animal, of unknown cause. */
    boolean acceptUsual() {
        if (prompt.get() instanceof Prompt.LossWhy why) {
            take(why, LossCause.UNKNOWN);
            return true;
        }
        return false;
    }

    private boolean anywhere(char key) {
        switch (key) {
            case AS_EXPECTED -> {
                sheet.writeAsExpected();
                lead.accept(new FocusRequest.Done());
            }
            case LOSS -> ask(new Prompt.LossStage());
            case MOULD -> ask(new Prompt.MouldWhere());
            case TALLY -> {
                tallied.clear();
                showTally();
            }
            case NOTE -> lead.accept(new FocusRequest.Note());
            default -> {
                return care(key);
            }
        }
        return true;
    }

    private boolean care(char key) {
        Optional<KeyedWord> word = KeyedWord.ofKey(KeyedWord.CARE, key);
        word.ifPresent(chosen -> sheet.toggleCare(chosen.text()));
        return word.isPresent();
    }

    private boolean lossStage(char key) {
        row(key).ifPresent(row -> ask(new Prompt.LossWhy(row.stage(), "")));
        return true;
    }

    private boolean lossWhy(Prompt.LossWhy why, char key) {
        if (Character.isDigit(key) && why.digits().length() < MOST_DIGITS) {
            ask(new Prompt.LossWhy(why.stage(), why.digits() + key));
        } else {
            LossCause.ofKey(key).ifPresent(cause -> take(why, cause));
        }
        return true;
    }

    private void take(Prompt.LossWhy why, LossCause cause) {
        sheet.take(why.stage(), cause.cause(), why.count());
        close();
    }

    private boolean mouldWhere(char key) {
        KeyedWord.ofKey(KeyedWord.MOULD_WHERE, key).ifPresent(this::mouldAt);
        return true;
    }

    /** Notes mould at a place and waits for more about it. */
    void mouldAt(KeyedWord where) {
        sheet.mouldAt(where.text());
        ask(new Prompt.MouldMore());
    }

    private boolean mouldMore(char key) {
        Optional<RoundSheet.Mould> found = sheet.mouldProperty().get();
        Optional<RoundSheet.Mould> told = found.flatMap(mould -> KeyedWord.ofKey(KeyedWord.MOULD_EXTENT, key)
                .map(extent -> new RoundSheet.Mould(mould.where(), extent.text(), mould.action()))
                .or(() -> KeyedWord.ofKey(KeyedWord.MOULD_ACTION, key)
                        .map(action -> new RoundSheet.Mould(mould.where(), mould.extent(), action.text()))));
        told.ifPresentOrElse(sheet::tellMould, this::close);
        return told.isPresent();
    }

    private boolean tally(char key) {
        if (key == TALLY) {
            close();
            lead.accept(new FocusRequest.Row(sheet.firstRow().stage()));
            return true;
        }
        if (key == SOUNDS) {
            ear.turn(this::toldMute);
        } else {
            row(key).ifPresentOrElse(this::count, ear.sounds()::refused);
        }
        showTally();
        return true;
    }

    private void count(StageRow row) {
        tallied.push(new Tallied(row, row.textProperty().get()));
        row.countOneMore();
        ear.sounds().counted(sheet.rows().indexOf(row));
    }

    private void toldMute() {
        if (tallies()) {
            showTally();
        }
    }

    private void showTally() {
        prompt.set(new Prompt.Tally(tallied.size(), ear.state()));
    }

    private Optional<StageRow> row(char key) {
        int position = Character.digit(key, 10) - 1;
        return position >= 0 && position < sheet.rows().size()
                ? Optional.of(sheet.rows().get(position))
                : Optional.empty();
    }

    /** An animal counted, and what its row said before. */
    private record Tallied(StageRow row, String before) {}
}
