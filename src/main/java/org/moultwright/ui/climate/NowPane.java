package org.moultwright.ui.climate;

import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Scrolled;
import org.moultwright.ui.control.Words;

/** The chosen probe's last reading, large; its air, the coldest wall and mould beneath. */
final class NowPane extends VBox {
    private final ClimateViewModel model;
    private final VBox words = new VBox();
    private final Label celsius = Words.styled("", "reading");
    private final Label age = Words.wrapped(Words.muted(""));
    private final Label air = Words.wrapped(Words.plain(""));
    private final Label wall = Words.wrapped(Words.plain(""));
    private final Label assumes = Words.wrapped(Words.caption(""));
    private final Label mould = Words.wrapped(Words.caption(""));
    private final Button say = Buttons.plain(Texts.say("How cold is the wall?"), this::ask);

    NowPane(ClimateViewModel model) {
        this.model = model;
        for (Label label : new Label[] {air, wall, assumes, mould}) {
            label.managedProperty().bind(label.textProperty().isNotEmpty());
        }
        say.managedProperty().bind(say.visibleProperty());
        words.getStyleClass().add("lines");
        words.getChildren().addAll(air, wall, assumes, say, mould);
        getStyleClass().add("probe-now");
        getChildren()
                .addAll(
                        Words.muted(Texts.say("now")),
                        celsius,
                        age,
                        new Scrolled(Texts.say("the air in words"), words));
        model.nowProperty().addListener((observed, before, now) -> show());
        model.airProperty().addListener((observed, before, now) -> show());
        mould.textProperty().bind(model.factsProperty().map(ProbeFacts::mould));
        show();
    }

    private void show() {
        ProbeNow now = model.nowProperty().get();
        celsius.setText(now.celsius());
        celsius.setOpacity(now.isStale() ? 0.55 : 1);
        age.setText(now.age());
        AirNow said = model.airProperty().get();
        air.setText(said.air());
        wall.setText(said.wall());
        Words.restyle(wall, said.tone().styleClass());
        assumes.setText(said.assumes());
        say.setVisible(!said.air().isEmpty() && model.container().isPresent());
    }

    private void ask() {
        WallForm form = new WallForm(model, () -> {
            words.getChildren().setAll(air, wall, assumes, say, mould);
            say.requestFocus();
        });
        words.getChildren().setAll(form);
        form.takeFocus();
    }
}
