package org.moultwright.ui.round;

import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.util.Subscription;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Banner;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.KeyCap;
import org.moultwright.ui.control.Tone;
import org.moultwright.ui.control.Words;
import org.moultwright.workflow.Balance;

/** Beneath the page and never scrolled away with it: the balance of the open sheet, and what ends the sheet. */
final class RoundFoot extends Flow {
    private final Banner balance = new Banner(Tone.ACCENT);
    private final Label enter = Words.plain(Texts.say("Enter"));
    private final Label fromAnywhere = Words.plain(Texts.say("Ctrl + Enter"));
    private final RoundViewModel model;
    private final Button done;
    private Optional<OpenSheet> open = Optional.empty();
    private Subscription balanced = Subscription.EMPTY;
    private boolean isLast;

    RoundFoot(RoundViewModel model) {
        this.model = model;
        this.done = Buttons.primary(Texts.say("Done"), model::done);
        done.getStyleClass().add("done");
        done.setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
        // Both keep their room, so that the button is as wide whichever is shown.
        StackPane keys = new StackPane(enter, fromAnywhere);
        keys.getStyleClass().add("done-keys");
        done.setGraphic(keys);
        done.setContentDisplay(ContentDisplay.RIGHT);
        // As wide as the column above, or as its words need.
        Region column = new Region();
        column.getStyleClass().add("round-side");
        VBox end = new VBox(column, done);
        end.getStyleClass().add("round-end");
        VBox.setVgrow(done, Priority.ALWAYS);
        HBox.setHgrow(balance, Priority.ALWAYS);
        getStyleClass().addAll("page-foot", "round-foot");
        getChildren().addAll(balance, end);
        showKey();
    }

    Button done() {
        return done;
    }

    void lay(OpenSheet sheet) {
        balanced.unsubscribe();
        open = Optional.of(sheet);
        // In large text the tray's name above is scrolled away while its last stages are counted.
        done.setText(Texts.say("{0} done, next tray", sheet.facts().tray()));
        Runnable show = () -> {
            show(sheet);
            showKey();
        };
        balanced = Subscription.combine(
                sheet.fields().balanceProperty().subscribe(show),
                sheet.keys().promptProperty().subscribe(show),
                sheet.fields().factsProperty().subscribe(show));
        show.run();
    }

    /** Tells whether the keyboard is where there is no field to go on to. */
    void setLast(boolean last) {
        isLast = last;
        showKey();
    }

    /** The key that does end the sheet from where the keyboard is. */
    private void showKey() {
        boolean isEnter = isLast
                && open.filter(sheet -> sheet.keys().promptProperty().get() instanceof Prompt.LossWhy)
                        .isEmpty();
        enter.setVisible(isEnter);
        fromAnywhere.setVisible(!isEnter);
    }

    private void show(OpenSheet sheet) {
        Balance now = sheet.fields().balanceProperty().get();
        Prompt prompt = sheet.keys().promptProperty().get();
        balance.setActions();
        balance.setTone(now.holds() ? Tone.ACCENT : Tone.WARN);
        balance.sentenceProperty().set(RoundWords.balance(now));
        balance.detailProperty()
                .set(RoundWords.foresight(
                        sheet.facts(), model.days(), model.vocabularyProperty().get()));
        if (prompt instanceof Prompt.Explanation && !now.holds()) {
            ask(now);
        } else if (prompt instanceof Prompt.Tally tally) {
            balance.sentenceProperty().set(RoundWords.tally(tally, now));
            balance.detailProperty()
                    .set(RoundWords.tallyKeys(tally, sheet.fields().rows().size()));
        }
    }

    private void ask(Balance now) {
        Button recount = keyed("R", Texts.say("Recount"), model::recount);
        Button miscount =
                keyed("E", Texts.say("Earlier miscount"), () -> model.explain(Balance.Answer.EARLIER_MISCOUNT));
        Button gone = keyed("G", Texts.say("Gone"), () -> model.explain(Balance.Answer.GONE));
        balance.sentenceProperty().set(RoundWords.question(now));
        balance.detailProperty().set(RoundWords.balance(now));
        if (now.unexplained() > 0) {
            balance.setActions(recount, miscount, gone);
        } else {
            balance.setActions(recount, miscount);
        }
    }

    private static Button keyed(String key, String word, Runnable action) {
        Button button = Buttons.secondary(word, action);
        button.setGraphic(new KeyCap(key));
        button.setFocusTraversable(false);
        return button;
    }
}
