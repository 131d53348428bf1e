package org.moultwright.ui.shell;

import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.shape.Rectangle;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;
import org.moultwright.language.Texts;
import org.moultwright.ui.alarm.AlarmViewModel;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Swatch;
import org.moultwright.ui.control.Words;

/** The line above every screen: probes with their age, trays left, the next moult, what was saved. */
final class TopLineView extends HBox {
    private final HBox watch = new HBox();
    private final HBox probes = new HBox();
    private final HBox facts = new HBox();
    private final ShellViewModel model;

    TopLineView(ShellViewModel model, ReadOnlyObjectProperty<AlarmViewModel.AlarmLine> alarms) {
        this.model = model;
        Label saved = Words.muted("");
        saved.textProperty().bind(model.savedWordsProperty());
        saved.setMinWidth(USE_PREF_SIZE);
        Button undo = Buttons.plain(Texts.say("Undo"), model::undo);
        undo.setAccessibleText(Texts.say("Undo what was saved last"));
        undo.visibleProperty().bind(model.undoProperty().map(Optional::isPresent));
        undo.managedProperty().bind(undo.visibleProperty());
        HBox state = new HBox(watch, probes, facts);
        state.setMinWidth(0);
        clip(state);
        setHgrow(state, Priority.ALWAYS);
        getStyleClass().add("top-line");
        state.getStyleClass().add("top-line-group");
        watch.getStyleClass().add("top-line-probe");
        probes.getStyleClass().add("top-line-group");
        facts.getStyleClass().add("top-line-group");
        getChildren().addAll(state, saved, undo);
        model.probes().addListener((ListChangeListener<ShellViewModel.ProbeWords>) change -> showProbes());
        model.topLineProperty().addListener((observed, before, now) -> showFacts(now));
        alarms.addListener((observed, before, now) -> showWatch(now));
        showWatch(alarms.get());
        showProbes();
        showFacts(model.topLineProperty().get());
    }

    /** Where there is little room the far end is cut, never what was saved. */
    private static void clip(Region region) {
        Rectangle seen = new Rectangle();
        seen.widthProperty().bind(region.widthProperty());
        seen.heightProperty().bind(region.heightProperty());
        region.setClip(seen);
    }

    private void showWatch(AlarmViewModel.AlarmLine line) {
        String age = line.age().isEmpty() ? "" : ", " + line.age();
        watch.getChildren().setAll(Swatch.dot(line.tone()), flow(strong(line.state()), muted(age)));
    }

    private void showProbes() {
        probes.getChildren()
                .setAll(model.probes().stream().map(TopLineView::probe).toList());
    }

    private static Node probe(ShellViewModel.ProbeWords probe) {
        HBox row = new HBox(Swatch.dot(probe.tone()), flow(strong(probe.reading()), muted(" " + probe.placeAndAge())));
        row.getStyleClass().add("top-line-probe");
        return row;
    }

    private void showFacts(TopLine line) {
        facts.getChildren().clear();
        line.trays()
                .ifPresent(trays -> add(
                        trays.left() == 0
                                ? flow(strong(Texts.say("All {0}", trays.all())), plain(Texts.say(" trays done")))
                                : flow(
                                        strong(Integer.toString(trays.left())),
                                        plain(Texts.say(" of {0} trays left", trays.all())))));
        line.next()
                .ifPresent(next ->
                        add(flow(plain(Texts.say("Next: ")), strong(next.event()), plain(", " + next.window()))));
    }

    private void add(Node fact) {
        if (!model.probes().isEmpty() || !facts.getChildren().isEmpty()) {
            facts.getChildren().add(Words.muted("|"));
        }
        facts.getChildren().add(fact);
    }

    private static TextFlow flow(Text... parts) {
        TextFlow flow = new TextFlow(parts);
        flow.setMinWidth(USE_PREF_SIZE);
        flow.setMaxHeight(USE_PREF_SIZE);
        return flow;
    }

    private static Text plain(String words) {
        return new Text(words);
    }

    private static Text strong(String words) {
        return styled(words, "strong");
    }

    private static Text muted(String words) {
        return styled(words, "muted");
    }

    private static Text styled(String words, String styleClass) {
        Text text = new Text(words);
        text.getStyleClass().add(styleClass);
        return text;
    }
}
