package org.moultwright.ui.shell;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;
import org.moultwright.language.Texts;
import org.moultwright.ui.alarm.AlarmViewModel;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.FirstScene;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.StrongParts;
import org.moultwright.ui.control.Swatch;
import org.moultwright.ui.control.Tone;
import org.moultwright.ui.control.Words;

/**
 * The line above every screen: the watch, probes that fell silent, trays left, the next moult, the other probes with
 * their age, and what was saved. In the order of how much they matter: what has no room at the end is left to the tooltip.
 */
final class TopLineView extends Flow {
    /** More silent probes than these are counted where there is no room to name them. */
    private static final int SILENT_NAMED = 2;

    private final WhatFits state = new WhatFits();
    private Optional<Tooltip> whole = Optional.empty();
    private String everything = "";
    private final ShellViewModel model;
    private final ReadOnlyObjectProperty<AlarmViewModel.AlarmLine> alarms;

    TopLineView(ShellViewModel model, ReadOnlyObjectProperty<AlarmViewModel.AlarmLine> alarms) {
        this.model = model;
        this.alarms = alarms;
        setHgrow(state, Priority.ALWAYS);
        getStyleClass().add("top-line");
        FirstScene.of(this, this::fill);
    }

    private void fill() {
        Label saved = Words.muted("");
        saved.textProperty().bind(model.savedWordsProperty());
        saved.setMinWidth(USE_PREF_SIZE);
        Button undo = Buttons.plain(Texts.say("Undo"), model::undo);
        undo.setAccessibleText(Texts.say("Undo what was saved last"));
        undo.visibleProperty().bind(model.undoProperty().map(Optional::isPresent));
        undo.managedProperty().bind(undo.visibleProperty());
        state.getStyleClass().add("top-line-group");
        // A tooltip is a window of its own, which nobody asks for before pointing here.
        state.setOnMouseEntered(event -> sayAll());
        getChildren().addAll(state, saved, undo);
        model.probes().addListener((ListChangeListener<ShellViewModel.ProbeWords>) change -> show());
        model.topLineProperty().addListener((observed, before, now) -> show());
        alarms.addListener((observed, before, now) -> show());
        show();
    }

    private void show() {
        List<ShellViewModel.ProbeWords> silent = model.probes().stream()
                .filter(ShellViewModel.ProbeWords::isSilent)
                .toList();
        int named = Math.min(silent.size(), SILENT_NAMED);
        List<HBox> needed = new ArrayList<>();
        needed.add(watch(alarms.get()));
        silent.subList(0, named).forEach(probe -> needed.add(probe(probe)));
        if (silent.size() > named) {
            needed.add(moreSilent(silent.size() - named));
        }
        TopLine line = model.topLineProperty().get();
        line.trays().ifPresent(trays -> needed.add(part(rule(), trays(trays))));
        line.next().ifPresent(next -> needed.add(part(rule(), next(next))));
        List<HBox> others = Stream.concat(
                        silent.stream().skip(named), model.probes().stream().filter(probe -> !probe.isSilent()))
                .map(TopLineView::probe)
                .toList();
        state.show(needed, others);
        everything = Stream.concat(needed.stream(), others.stream())
                .map(TopLineView::words)
                .collect(Collectors.joining("\n"));
        whole.ifPresent(shown -> shown.setText(everything));
    }

    private void sayAll() {
        if (whole.isEmpty()) {
            Tooltip made = new Tooltip(everything);
            Tooltip.install(state, made);
            whole = Optional.of(made);
        }
    }

    private static HBox watch(AlarmViewModel.AlarmLine line) {
        String age = line.age().isEmpty() ? "" : ", " + line.age();
        return part(Swatch.dot(line.tone()), flow(strong(line.state()), muted(age)));
    }

    private static HBox probe(ShellViewModel.ProbeWords probe) {
        return part(Swatch.dot(probe.tone()), flow(strong(probe.reading()), muted(" " + probe.placeAndAge())));
    }

    private static HBox moreSilent(int probes) {
        return part(
                Swatch.dot(Tone.WARN),
                flow(strong(Texts.count(probes, "1 more is silent", "{0} more are silent", probes))));
    }

    private static TextFlow trays(TopLine.TraysLeft trays) {
        return trays.left() == 0
                ? StrongParts.of(Texts.count(
                        trays.all(), "The one tray is done", "All {0} trays done", StrongParts.mark(trays.all())))
                : StrongParts.of(Texts.count(
                        trays.all(),
                        "{0} of {1} tray left",
                        "{0} of {1} trays left",
                        StrongParts.mark(trays.left()),
                        trays.all()));
    }

    private static TextFlow next(TopLine.NextMoult next) {
        return StrongParts.of(Texts.say("Next: {0}, {1}", StrongParts.mark(next.event()), next.window()));
    }

    /** Between a part and the one before it in its line. */
    private static Label rule() {
        return Words.styled("|", "muted", "top-line-rule");
    }

    private static HBox part(Node... nodes) {
        HBox part = new HBox(nodes);
        part.getStyleClass().add("top-line-probe");
        for (Node node : nodes) {
            if (node instanceof TextFlow flow) {
                flow.setMinWidth(USE_PREF_SIZE);
                flow.setMaxHeight(USE_PREF_SIZE);
            }
        }
        return part;
    }

    private static String words(HBox part) {
        return part.getChildren().stream()
                .filter(TextFlow.class::isInstance)
                .flatMap(flow -> ((TextFlow) flow).getChildren().stream())
                .map(text -> ((Text) text).getText())
                .collect(Collectors.joining());
    }

    private static TextFlow flow(Text... parts) {
        return new TextFlow(parts);
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
