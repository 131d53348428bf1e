package org.moultwright.ui.climate;

import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableObjectValue;
import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Ageing;
import org.moultwright.ui.control.Banner;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Card;
import org.moultwright.ui.control.Columns;
import org.moultwright.ui.control.EmptyState;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.Keys;
import org.moultwright.ui.control.PageHeader;
import org.moultwright.ui.control.Sign;
import org.moultwright.ui.control.Tone;
import org.moultwright.ui.theme.Palette;

/** Lays out traces and probes: one trace large, its last reading beside it, all probes beneath. */
final class TracesPage extends VBox {

    private final ClimateViewModel model;
    private final Ways ways;
    private final TraceCard trace;
    private final ListView<ProbeRow> probes;
    private final StackPane side = new StackPane();

    /**
     * Where this page leads.
     *
     * @param writeIn leads to what is written in by hand
     */
    record Ways(Runnable calibrate, Runnable display, Runnable find, Node writeIn) {}

    TracesPage(ClimateViewModel model, ObservableObjectValue<Palette> palette, Ways ways) {
        this.model = model;
        this.ways = ways;
        this.trace = new TraceCard(model, palette);
        this.probes = new ListView<>(model.probes());
        Ageing.whileSeen(this, model::age);
        Flow actions = new Flow(
                Buttons.secondary(Texts.say("Read a display off"), ways.display()),
                Buttons.secondary(Texts.say("Connect a probe"), this::connect));
        actions.getStyleClass().add("page-actions");
        show(actions, true);
        PageHeader header = new PageHeader(Texts.say("Climate"), actions, ways.writeIn());
        header.subtitleProperty().bind(model.subtitleProperty());
        Banner problem = new Banner(Tone.WARN);
        problem.sentenceProperty().bind(model.problemProperty());
        Banner held = new Banner(Tone.ACCENT);
        held.sentenceProperty().bind(model.heldWordsProperty());
        held.setActions(
                Buttons.plain(Texts.say("Go on"), () -> model.heldProperty().set(false)));
        Card empty = new Card(new EmptyState(
                Sign.CLIMATE,
                Texts.say("No probe has been heard yet. Connect one on a serial line, write in what a thermometer "
                        + "shows, or take in a brood with its readings."),
                Buttons.primary(Texts.say("Connect a probe"), this::connect)));
        show(trace, true);
        show(empty, false);
        setVgrow(empty, Priority.ALWAYS);
        setVgrow(trace, Priority.ALWAYS);
        Node list = list();
        Node besides = new SideCard(model, ways);
        Columns below = new Columns(list, besides, side);
        besides.visibleProperty().bind(list.visibleProperty().and(Bindings.isEmpty(side.getChildren())));
        besides.managedProperty().bind(besides.visibleProperty());
        below.getStyleClass().addAll("card-row", "probes-row");
        HBox.setHgrow(list, Priority.ALWAYS);
        side.managedProperty().bind(Bindings.isNotEmpty(side.getChildren()));
        show(list, true);
        below.managedProperty().bind(list.visibleProperty().or(side.managedProperty()));
        getStyleClass().add("page");
        getChildren().addAll(header, problem, held, trace, empty, below);
        addEventHandler(KeyEvent.KEY_PRESSED, this::pressed);
    }

    void takeFocus() {
        trace.takeFocus();
    }

    private void pressed(KeyEvent event) {
        if (Keys.goToText(event) || event.isAltDown()) {
            return;
        }
        if (event.isShortcutDown() && event.getCode() == KeyCode.C) {
            trace.copy();
        } else if (event.isShortcutDown() && event.getCode() == KeyCode.P) {
            trace.print();
        } else if (!event.isShortcutDown() && event.getCode() == KeyCode.H) {
            model.heldProperty().set(!model.heldProperty().get());
        } else {
            return;
        }
        event.consume();
    }

    private void show(Node part, boolean withProbes) {
        part.visibleProperty()
                .bind(withProbes ? Bindings.isNotEmpty(model.probes()) : Bindings.isEmpty(model.probes()));
        part.managedProperty().bind(part.visibleProperty());
    }

    private Node list() {
        probes.getStyleClass().add("bare");
        probes.setAccessibleText(Texts.say("probes"));
        probes.setCellFactory(shown -> new ProbeCell(model));
        probes.getSelectionModel().selectedItemProperty().addListener((observed, before, now) -> {
            if (now != null) {
                model.chosenProperty().set(now.probe());
            }
        });
        model.chosenProperty().addListener((observed, before, now) -> select());
        model.probes().addListener((ListChangeListener<ProbeRow>) change -> select());
        select();
        VBox.setVgrow(probes, Priority.ALWAYS);
        Card card = Card.titled(Texts.say("Probes"), probes);
        card.getStyleClass().add("probes-card");
        return card;
    }

    private void select() {
        String chosen = model.chosenProperty().get();
        model.probes().stream()
                .filter(row -> row.probe().equals(chosen))
                .findFirst()
                .ifPresent(row -> probes.getSelectionModel().select(row));
    }

    /** The form that connects a probe, filled in with what was found out. */
    void connect(String port, String form) {
        connect();
        side.getChildren().stream()
                .filter(ConnectCard.class::isInstance)
                .map(ConnectCard.class::cast)
                .forEach(card -> card.fill(port, form));
    }

    private void connect() {
        ConnectCard form = new ConnectCard(model, ways.find(), () -> {
            side.getChildren().clear();
            takeFocus();
        });
        side.getChildren().setAll(form);
        form.takeFocus();
    }
}
