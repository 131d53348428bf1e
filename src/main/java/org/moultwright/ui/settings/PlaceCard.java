package org.moultwright.ui.settings;

import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.control.ComboBox;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import org.jspecify.annotations.Nullable;
import org.moultwright.language.TemperatureUnit;
import org.moultwright.language.Texts;
import org.moultwright.language.Translations;
import org.moultwright.settings.PlaceSettings;
import org.moultwright.ui.control.Card;
import org.moultwright.ui.control.Words;

/** The language of the desk, and how numbers, dates and temperatures are written. In force from the next start on. */
final class PlaceCard extends VBox {
    private static final String MACHINE = "";
    private static final String ENGLISH = "en";

    private final SettingsViewModel model;

    PlaceCard(SettingsViewModel model, Translations translations) {
        this.model = model;
        ChoiceRow<String> languages = new ChoiceRow<>(
                Stream.concat(Stream.of(MACHINE, ENGLISH), translations.own().stream())
                        .distinct()
                        .toList(),
                PlaceCard::language,
                model.settingsProperty().map(settings -> settings.place().language()),
                tag -> choose(place().withLanguage(tag)));
        ChoiceRow<Optional<TemperatureUnit>> units = new ChoiceRow<>(
                List.of(
                        Optional.empty(),
                        Optional.of(TemperatureUnit.CELSIUS),
                        Optional.of(TemperatureUnit.FAHRENHEIT)),
                unit -> unit.map(TemperatureUnit::symbol).orElse(Texts.say("As usual there")),
                model.settingsProperty().map(settings -> settings.place().temperature()),
                unit -> choose(place().withTemperature(unit)));
        getChildren()
                .add(Card.titled(
                        Texts.say("Language and place"),
                        Words.caption(Texts.say("language")),
                        languages,
                        Words.caption(Texts.say("numbers and dates as in")),
                        places(),
                        Words.caption(Texts.say("temperatures")),
                        units,
                        Words.wrapped(Words.muted(Texts.say(
                                "In force when the desk is next opened. What is kept and what goes into files stays "
                                        + "in °C and in one form for all. Own translations lie in {0}.",
                                translations.folder())))));
    }

    private ComboBox<String> places() {
        ComboBox<String> places = new ComboBox<>();
        places.setAccessibleText(Texts.say("numbers and dates as in"));
        places.setConverter(new StringConverter<@Nullable String>() {
            @Override
            public String toString(@Nullable String tag) {
                return place(tag == null ? MACHINE : tag);
            }

            @Override
            public @Nullable String fromString(@Nullable String text) {
                return text;
            }
        });
        places.setValue(place().forms());
        // Hundreds, which nobody reads who does not come to them.
        places.focusedProperty().addListener((observed, before, now) -> fill(places));
        places.setOnShowing(event -> fill(places));
        places.getStyleClass().add("place-choice");
        places.valueProperty().addListener((observed, before, now) -> choose(place().withForms(now)));
        return places;
    }

    private static void fill(ComboBox<String> places) {
        if (places.getItems().isEmpty()) {
            places.getItems().setAll(tags());
        }
    }

    /** The machine, and after it all places by name; each of hundreds is named once. */
    private static List<String> tags() {
        Map<String, String> names = new HashMap<>();
        Arrays.stream(Locale.getAvailableLocales())
                .filter(locale ->
                        !locale.getCountry().isEmpty() && locale.getVariant().isEmpty())
                .map(Locale::toLanguageTag)
                .forEach(tag -> names.computeIfAbsent(tag, PlaceCard::place));
        return Stream.concat(
                        Stream.of(MACHINE),
                        names.keySet().stream()
                                .sorted(Comparator.<String, String>comparing(names::get)
                                        .thenComparing(tag -> tag)))
                .toList();
    }

    private PlaceSettings place() {
        return model.settingsProperty().get().place();
    }

    private void choose(PlaceSettings chosen) {
        model.choose(chosen);
    }

    private static String language(String tag) {
        return tag.isEmpty()
                ? Texts.say("As the machine")
                : Locale.forLanguageTag(tag).getDisplayName(locale());
    }

    private static String place(String tag) {
        Locale place = Locale.forLanguageTag(tag);
        return tag.isEmpty()
                ? Texts.say("as the machine")
                : place.getDisplayCountry(locale()) + ", " + place.getDisplayLanguage(locale());
    }

    private static Locale locale() {
        return Texts.language().locale();
    }
}
