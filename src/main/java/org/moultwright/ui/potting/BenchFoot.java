package org.moultwright.ui.potting;

import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Banner;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.Tone;

/** Beneath the bench and never scrolled away with it: the balance of what is on it, its labels, and what ends the deed. */
final class BenchFoot extends Flow {
    private final Banner balance = new Banner(Tone.ACCENT);

    BenchFoot(PottingViewModel model) {
        Button save = Buttons.taking(Texts.say("Save labels as PDF"), model::saveLabels);
        Button print = Buttons.taking(Texts.say("Print"), model::printLabels);
        List.of(save, print)
                .forEach(button -> button.disableProperty()
                        .bind(model.labels().jobsProperty().map(List::isEmpty)));
        Button done = Buttons.primary("", model::done);
        done.textProperty().bind(model.sumsProperty().map(sums -> PottingWords.done(sums.potted())));
        done.disableProperty().bind(model.sumsProperty().map(sums -> !sums.canBeDone()));
        Flow actions = new Flow(save, print, done);
        actions.getStyleClass().add("page-actions");
        HBox.setHgrow(balance, Priority.ALWAYS);
        getStyleClass().add("page-foot");
        getChildren().addAll(balance, actions);
        model.sumsProperty().subscribe(this::show);
    }

    private void show(BenchSums sums) {
        balance.setTone(sums.addsUp() ? Tone.ACCENT : Tone.WARN);
        balance.sentenceProperty().set(PottingWords.balance(sums.taken(), sums.potted(), sums.lost()));
        balance.detailProperty().set(sums.detail());
    }
}
