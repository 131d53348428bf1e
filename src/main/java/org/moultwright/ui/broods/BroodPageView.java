package org.moultwright.ui.broods;

import java.util.Optional;
import javafx.beans.value.ObservableObjectValue;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.image.Image;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Banner;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Card;
import org.moultwright.ui.control.Columns;
import org.moultwright.ui.control.PageHeader;
import org.moultwright.ui.control.Tone;
import org.moultwright.ui.control.Words;
import org.moultwright.ui.theme.Appearance;
import org.moultwright.ui.theme.Palette;

/** Lays out one brood looked at closely, on screen and on paper. */
final class BroodPageView extends VBox {
    private static final KeyCombination PRINT = new KeyCodeCombination(KeyCode.P, KeyCombination.SHORTCUT_DOWN);
    private static final int DAYS_IN_A_LEAP = 7;

    /** A4 on its side at 270 dots an inch. */
    private static final int PAPER_WIDTH_PIXELS = 2940;

    private static final int PAPER_HEIGHT_PIXELS = 2020;
    private static final int PAPER_TEXT_PIXELS = 32;

    private final BroodPage page;
    private final BroodCharts charts;

    BroodPageView(BroodPage page, ObservableObjectValue<Palette> palette) {
        this.page = page;
        this.charts = BroodCharts.onScreen(page, palette);
        PageHeader header = new PageHeader(
                page.line().code(),
                Buttons.secondary(Texts.say("Back"), page::close),
                Buttons.secondary(Texts.say("Save as PDF"), () -> page.save(this::paper)),
                Buttons.secondary(Texts.say("Print"), () -> page.print(this::paper)));
        header.subtitleProperty().set(page.line().alive() + " · " + page.line().stages());
        Banner news = new Banner(Tone.ACCENT);
        news.sentenceProperty().bind(page.newsProperty());
        Banner problem = new Banner(Tone.BAD);
        problem.sentenceProperty().bind(page.problemProperty());
        Card over = charts.overTime();
        Label words = Words.wrapped(Words.caption(""));
        words.textProperty()
                .bind(page.readingWordsProperty()
                        .map(day -> day.isEmpty() ? Texts.say("{0} ← → read a day.", BroodCharts.CLIMATE_WORDS) : day));
        over.getChildren().addAll(charts.legend(), words);
        setVgrow(over, Priority.ALWAYS);
        charts.ribbon().setFocusTraversable(true);
        charts.ribbon().setOnMousePressed(event -> charts.ribbon().requestFocus());
        charts.ribbon().readingProperty().addListener((observed, before, now) -> {
            if (charts.ribbon().isHover()) {
                page.readingProperty().set(now);
            }
        });
        Columns below = below();
        getStyleClass().add("page");
        getChildren().addAll(header, news, problem, over, new PhotoRow(page), below);
        addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
    }

    void takeFocus() {
        charts.ribbon().requestFocus();
    }

    private Columns below() {
        Card survival = charts.survival();
        HBox.setHgrow(survival, Priority.ALWAYS);
        Columns below = new Columns(charts.whereTheyWent(), survival, new CompareCard(page));
        below.getStyleClass().add("card-row");
        below.getStyleClass().add("close-below");
        return below;
    }

    private void pressed(KeyEvent event) {
        if (event.getCode() == KeyCode.ESCAPE) {
            page.close();
        } else if (PRINT.match(event)) {
            page.print(this::paper);
        } else if (charts.ribbon().isFocused() && event.getCode() == KeyCode.LEFT) {
            page.step(event.isShiftDown() ? -DAYS_IN_A_LEAP : -1);
        } else if (charts.ribbon().isFocused() && event.getCode() == KeyCode.RIGHT) {
            page.step(event.isShiftDown() ? DAYS_IN_A_LEAP : 1);
        } else {
            return;
        }
        event.consume();
    }

    /** What is put on paper: the same pictures in light colours, larger. */
    Image paper() {
        BroodCharts printed = BroodCharts.onPaper(page);
        Card over = printed.overTime();
        over.getChildren().addAll(printed.legend(), Words.wrapped(Words.caption(BroodCharts.CLIMATE_WORDS)));
        VBox.setVgrow(over, Priority.ALWAYS);
        Card survival = printed.survival();
        HBox.setHgrow(survival, Priority.ALWAYS);
        Columns below = new Columns(printed.whereTheyWent(), survival);
        below.getStyleClass().add("card-row");
        String taxon = page.beside()
                .own()
                .map(own -> own.brood().record().brood().taxon())
                .orElse("");
        VBox paper = new VBox(
                Words.styled(page.line().code(), "page-title"),
                Words.plain(Optional.of(taxon)
                                .filter(name -> !name.isEmpty())
                                .map(name -> name + " · ")
                                .orElse("") + page.line().alive() + " · "
                        + page.line().stages() + " · " + page.dateWord()),
                over,
                below);
        paper.getStyleClass().addAll("page", "on-paper");
        Scene scene = new Scene(paper, PAPER_WIDTH_PIXELS, PAPER_HEIGHT_PIXELS);
        new Appearance().dress(scene.getStylesheets());
        paper.setStyle("-fx-font-size: " + PAPER_TEXT_PIXELS + "px; -fx-background-color: white;");
        return scene.snapshot(null);
    }
}
