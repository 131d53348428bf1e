package org.moultwright.ui.broods;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableObjectValue;
import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.moultwright.domain.Stage;
import org.moultwright.language.Texts;
import org.moultwright.settings.Theme;
import org.moultwright.ui.chart.CalendarStrip;
import org.moultwright.ui.chart.ClimateStrip;
import org.moultwright.ui.chart.LedgerBars;
import org.moultwright.ui.chart.RibbonChart;
import org.moultwright.ui.chart.SurvivalChart;
import org.moultwright.ui.control.Card;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.StageChip;
import org.moultwright.ui.control.Swatch;
import org.moultwright.ui.control.Words;
import org.moultwright.ui.theme.Palette;

/** The pictures of a brood's page, the same on screen and on paper. */
final class BroodCharts {
    static final String CLIMATE_WORDS =
            Texts.say("Below it the air where most of it lived: lowest, mean, highest of each day. Bars: how far a "
                    + "week's air favoured mould, an index, no date. Diamond: mould found.");
    static final String EXPECTED_WORDS = Texts.say("paler = expected · dashed = 80 % interval");

    private final BroodPage page;
    private final ObservableObjectValue<Palette> palette;
    private final ObservableObjectValue<Optional<Instant>> reading;
    private final RibbonChart ribbon;
    private final ClimateStrip climate;
    private final LedgerBars way;
    private final SurvivalChart survival;
    private final Label balance = Words.wrapped(Words.caption(""));
    private final Label survives = Words.wrapped(Words.caption(""));

    /** On a screen, where days are read in them. */
    static BroodCharts onScreen(BroodPage page, ObservableObjectValue<Palette> palette) {
        BroodCharts charts = new BroodCharts(page, palette, page.readingProperty());
        page.readingProperty().addListener((observed, before, now) -> charts.follow());
        return charts;
    }

    /** On paper, where nobody points at a day. */
    static BroodCharts onPaper(BroodPage page) {
        return new BroodCharts(
                page,
                new SimpleObjectProperty<>(new Palette(Theme.LIGHT)),
                new SimpleObjectProperty<>(Optional.empty()));
    }

    private BroodCharts(
            BroodPage page, ObservableObjectValue<Palette> palette, ObservableObjectValue<Optional<Instant>> reading) {
        this.page = page;
        this.reading = reading;
        this.palette = palette;
        this.ribbon = new RibbonChart(palette);
        this.climate = new ClimateStrip(palette);
        this.way = new LedgerBars(palette);
        this.survival = new SurvivalChart(palette);
        ribbon.shownProperty().set(Optional.of(page.ribbon()));
        page.beside().facts().addListener((ListChangeListener<BroodFacts>) change -> show());
        show();
    }

    RibbonChart ribbon() {
        return ribbon;
    }

    /** The ribbon, and the air on the same calendar. */
    Card overTime() {
        CalendarStrip strip = new CalendarStrip(palette, page::nowWord, 0);
        strip.calendarProperty().set(Optional.of(page.calendar()));
        VBox.setVgrow(ribbon, Priority.ALWAYS);
        VBox.setVgrow(climate, Priority.SOMETIMES);
        ribbon.getStyleClass().add("close-ribbon");
        climate.getStyleClass().add("climate-strip");
        return new Card(strip, ribbon, climate);
    }

    /** Where every animal went. */
    Card whereTheyWent() {
        VBox bars = new VBox(way, balance);
        bars.getStyleClass().add("lines");
        Card card = Card.titled(Texts.say("Every animal's way"), bars);
        card.getStyleClass().add("way-card");
        return card;
    }

    Card survival() {
        VBox.setVgrow(survival, Priority.ALWAYS);
        return Card.titled(Texts.say("Alive since the opening"), survival, survives);
    }

    Node legend() {
        List<Node> chips = new ArrayList<>();
        Arrays.stream(Stage.values())
                .map(stage -> new StageChip(stage, page.vocabulary().label(stage)))
                .forEach(chips::add);
        chips.add(new StageChip(Swatch.potted(), Texts.say("Potted")));
        chips.add(new StageChip(Swatch.dead(), Texts.say("Dead")));
        chips.add(Words.caption(EXPECTED_WORDS));
        Flow legend = new Flow(chips.toArray(Node[]::new));
        legend.getStyleClass().add("legend-row");
        return legend;
    }

    private void follow() {
        ribbon.readingProperty().set(reading.get());
        climate.shownProperty().set(page.climate(reading.get()));
    }

    private void show() {
        climate.shownProperty().set(page.climate(reading.get()));
        climate.setAccessibleText(Texts.say(
                "the air it lived in, day by day; {0}",
                page.climate(reading.get())
                        .map(shown -> Texts.say(
                                "{0} days measured, mould found {1} times",
                                shown.days().size(), shown.mould().size()))
                        .orElse(Texts.say("being read"))));
        way.bars().setAll(page.bars());
        balance.setText(page.balance());
        survival.curves().setAll(page.curves());
        survives.setText(page.survivalWords());
        survival.setAccessibleText(page.survivalWords());
        ribbon.setAccessibleText(page.line().spoken());
    }
}
