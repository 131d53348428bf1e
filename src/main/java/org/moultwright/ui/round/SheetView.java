package org.moultwright.ui.round;

import javafx.beans.InvalidationListener;
import javafx.beans.binding.Bindings;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Banner;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.KeyCap;
import org.moultwright.ui.control.Tone;
import org.moultwright.ui.control.Words;
import org.moultwright.workflow.Balance;

/** The middle of the round: the open tray, its stages, its dead, its balance. */
final class SheetView extends VBox {
    private final StageGrid grid;
    private final SheetPhotos photos;
    private final Banner balance = new Banner(Tone.ACCENT);
    private final RoundViewModel model;
    private final OpenSheet sheet;

    SheetView(RoundViewModel model, OpenSheet sheet) {
        this.model = model;
        this.sheet = sheet;
        this.grid = new StageGrid(model, sheet.fields());
        this.photos = new SheetPhotos(model.photos(), sheet);
        Region gap = new Region();
        setVgrow(gap, Priority.ALWAYS);
        getStyleClass().addAll("card", "sheet");
        getChildren()
                .addAll(
                        title(),
                        outdated(),
                        new PhotoNotices(model.photos(), sheet.facts().tray()),
                        grid,
                        new LossPane(model, sheet),
                        new MouldPane(sheet),
                        gap,
                        problem(),
                        balance);
        InvalidationListener show = changed -> showBalance();
        sheet.fields().balanceProperty().addListener(show);
        sheet.keys().promptProperty().addListener(show);
        sheet.fields().factsProperty().addListener(show);
        showBalance();
    }

    StageGrid grid() {
        return grid;
    }

    SheetPhotos photos() {
        return photos;
    }

    private Node title() {
        Label facts = Words.muted("");
        facts.textProperty().bind(sheet.fields().factsProperty().map(RoundWords::trayFacts));
        Flow title = new Flow(Words.styled(sheet.facts().tray(), "tray-name"), facts);
        title.getStyleClass().add("sheet-title");
        HBox.setHgrow(title, Priority.ALWAYS);
        return new Flow(title, photos);
    }

    /** Said where the tray changed since the sheet was begun. */
    private Node outdated() {
        Banner outdated = new Banner(Tone.WARN);
        // As wide as the sheet, however long the sentence: the columns beside keep theirs.
        outdated.setPrefWidth(0);
        outdated.setActions(Buttons.secondary(Texts.say("Drop this sheet"), model::drop));
        outdated.sentenceProperty()
                .bind(Bindings.createStringBinding(
                        () -> sheet.fields()
                                .outdated()
                                .map(basis -> RoundWords.outdated(sheet.facts(), basis, model.days()))
                                .orElse(""),
                        sheet.fields().factsProperty(),
                        sheet.fields().basisProperty()));
        return outdated;
    }

    private Node problem() {
        Banner problem = new Banner(Tone.BAD);
        problem.sentenceProperty().bind(model.problemProperty());
        return problem;
    }

    private void showBalance() {
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
