package org.moultwright.ui.round;

import java.util.List;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.moultwright.domain.Stage;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Banner;
import org.moultwright.ui.control.Card;
import org.moultwright.ui.control.Columns;
import org.moultwright.ui.control.EmptyState;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.KeyCap;
import org.moultwright.ui.control.NoteArea;
import org.moultwright.ui.control.PageHeader;
import org.moultwright.ui.control.Roomy;
import org.moultwright.ui.control.Sign;
import org.moultwright.ui.control.Tone;
import org.moultwright.ui.control.Words;
import org.moultwright.ui.shell.FootedPage;

/** Lays out the round: trays at the left, the open sheet, mould, care and note at the right, and what ends it beneath. */
final class RoundView extends VBox {
    /** From a page of this size on, fields and words are larger: eyes are on the loupe, not on the display. */
    private static final double ROOMY_WIDTH_EMS = 110;

    private static final double ROOMY_HEIGHT_EMS = 58;

    private final RoundViewModel model;
    private final StackPane middle = new StackPane();
    private final TrayListView trays;
    private final VBox side = new VBox();
    private final VBox page = new VBox();
    private final NoteArea note = new NoteArea(Texts.say("note"), Texts.say("Anything else worth knowing."));
    private final RoundFoot foot;
    private Optional<SheetView> shown = Optional.empty();

    RoundView(RoundViewModel model) {
        this.model = model;
        this.trays = new TrayListView(model);
        this.foot = new RoundFoot(model);
        build();
        new RoundKeys(model, this);
        model.openProperty().addListener((observed, before, now) -> {
            before.ifPresent(sheet ->
                    note.textProperty().unbindBidirectional(sheet.fields().noteProperty()));
            show(now);
        });
        sceneProperty()
                .flatMap(Scene::focusOwnerProperty)
                .addListener((observed, before, now) -> foot.setLast(isLast(now)));
        model.focusProperty().addListener((observed, before, now) -> focus(now.target()));
        show(model.openProperty().get());
    }

    List<Region> besideTheSheet() {
        return List.of(side, trays);
    }

    /** Leads to the field after, or before, the one in focus; tells whether there was one. */
    boolean moveFocus(boolean back) {
        Optional<StageRow> next =
                at(getScene().getFocusOwner()).flatMap(row -> back ? sheet().rowBefore(row) : sheet().rowAfter(row));
        next.ifPresent(row -> model.focus(new FocusRequest.Row(row.stage())));
        return next.isPresent();
    }

    /** Opens the newest photo of the open tray large. */
    void openPhotos() {
        shown.ifPresent(view -> view.photos().open());
    }

    /** The row whose field a node is. */
    private Optional<StageRow> at(@Nullable Node focused) {
        return shown.flatMap(view -> view.grid().at(focused)).flatMap(stage -> sheet().row(stage));
    }

    private boolean isLast(@Nullable Node focused) {
        return focused == foot.done()
                || at(focused).filter(row -> sheet().rowAfter(row).isEmpty()).isPresent();
    }

    private SheetViewModel sheet() {
        return model.openProperty().get().orElseThrow().fields();
    }

    private void build() {
        PageHeader header = new PageHeader(
                Texts.say("Round"),
                KeyCap.hint("T", Texts.say("tally")),
                KeyCap.hint("=", Texts.say("looked, as expected")),
                KeyCap.hint("?", Texts.say("keys")));
        header.subtitleProperty().bind(model.subtitleProperty());
        Banner finished = new Banner(Tone.OK);
        finished.sentenceProperty().bind(model.finishedProperty());
        trays.visibleProperty().bind(Bindings.isNotEmpty(model.lines()));
        trays.managedProperty().bind(trays.visibleProperty());
        Columns columns = new Columns(trays, middle, side);
        columns.getStyleClass().add("round-columns");
        HBox.setHgrow(middle, Priority.ALWAYS);
        side.getStyleClass().add("round-side");
        side.getChildren().addAll(new Region(), new Region(), noteCard());
        setVgrow(columns, Priority.ALWAYS);
        PhotoDrops.on(this, model.photos());
        page.getChildren().addAll(header, finished, new StrayPane(model), columns);
        page.getStyleClass().addAll("page", "round-page");
        FootedPage footed = new FootedPage(page, foot);
        setVgrow(footed, Priority.ALWAYS);
        getStyleClass().add("round");
        getChildren().add(footed);
        List.of(columns, foot).forEach(part -> Roomy.mark(this, part, ROOMY_WIDTH_EMS, ROOMY_HEIGHT_EMS));
    }

    private void show(Optional<OpenSheet> sheet) {
        List.of(side, foot).forEach(part -> {
            part.setManaged(sheet.isPresent());
            part.setVisible(sheet.isPresent());
        });
        sheet.ifPresentOrElse(this::lay, () -> {
            shown = Optional.empty();
            middle.getChildren().setAll(empty());
        });
    }

    /** What stays from tray to tray is left where it is. */
    private void lay(OpenSheet sheet) {
        shown.filter(view -> view.takes(sheet)).ifPresentOrElse(view -> view.lay(sheet), () -> {
            SheetView made = new SheetView(model, sheet);
            shown = Optional.of(made);
            middle.getChildren().setAll(made);
        });
        foot.lay(sheet);
        note.textProperty().bindBidirectional(sheet.fields().noteProperty());
        side.getChildren().set(0, new MouldCard(sheet));
        side.getChildren().set(1, CareCard.of(sheet));
    }

    private Card noteCard() {
        Flow title = new Flow(Words.cardTitle(Texts.say("Note")), new KeyCap("J"));
        title.getStyleClass().add("key-hint");
        Card noteCard = new Card(title, note);
        VBox.setVgrow(note, Priority.ALWAYS);
        VBox.setVgrow(noteCard, Priority.ALWAYS);
        return noteCard;
    }

    private static Node empty() {
        return new Card(new EmptyState(
                Sign.ROUND,
                Texts.say(
                        "No trays to look at. They appear here once a sac is opened or a brood folder is taken in.")));
    }

    private void focus(FocusRequest.Target target) {
        if (target instanceof FocusRequest.Row row) {
            focus(row.stage());
        } else if (target instanceof FocusRequest.Done) {
            foot.done().requestFocus();
        } else {
            note.requestFocus();
        }
    }

    private void focus(Stage stage) {
        shown.ifPresent(view -> view.grid().focus(stage));
    }
}
