package org.moultwright.ui.settings;

import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.ObjectBinding;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.value.ObservableObjectValue;
import org.moultwright.domain.ColdestWall;
import org.moultwright.domain.Stage;
import org.moultwright.language.Texts;
import org.moultwright.settings.AlarmSettings;
import org.moultwright.settings.DeskSettings;
import org.moultwright.settings.PlaceSettings;
import org.moultwright.settings.PlanSettings;
import org.moultwright.settings.Settings;
import org.moultwright.settings.TextSize;
import org.moultwright.settings.Theme;
import org.moultwright.task.Outcome;
import org.moultwright.task.Runner;
import org.moultwright.text.Vocabulary;

/** The keeper's choices: what they are now, and every change kept at once. */
public final class SettingsViewModel {
    private static final List<Vocabulary> VOCABULARIES =
            List.of(Vocabulary.ENGLISH_HOBBY, Vocabulary.SCIENTIFIC, Vocabulary.N_L_COUNTING);

    private final ReadOnlyObjectWrapper<Settings> settings;
    private final ObjectBinding<Vocabulary> vocabulary;
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    private final Consumer<Settings> file;
    private final Runner runner;

    /**
     * @param found the settings as they were found
     * @param file keeps settings; may throw {@link UncheckedIOException}
     */
    public SettingsViewModel(Settings found, Consumer<Settings> file, Runner runner) {
        this.settings = new ReadOnlyObjectWrapper<>(found);
        this.vocabulary = Bindings.createObjectBinding(() -> vocabularyOf(settings.get()), settings);
        this.file = file;
        this.runner = runner;
    }

    public ReadOnlyObjectProperty<Settings> settingsProperty() {
        return settings.getReadOnlyProperty();
    }

    /** The names stages have now, for every screen. */
    public ObservableObjectValue<Vocabulary> vocabularyProperty() {
        return vocabulary;
    }

    /** What went wrong as the last change was kept, in a sentence; empty when nothing did. */
    public ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }

    /** The ways of naming there are to choose from. */
    public List<Vocabulary> vocabularies() {
        return VOCABULARIES;
    }

    public void choose(Theme theme) {
        change(settings.get().withTheme(theme));
    }

    public void choose(TextSize size) {
        change(settings.get().withTextSize(size));
    }

    public void choose(Vocabulary chosen) {
        change(settings.get().withVocabulary(chosen.key()));
    }

    public void choose(AlarmSettings alarms) {
        change(settings.get().withAlarms(alarms));
    }

    public void choose(DeskSettings desk) {
        change(settings.get().withDesk(desk));
    }

    public void choose(PlaceSettings place) {
        change(settings.get().withPlace(place));
    }

    public void choose(PlanSettings plans) {
        change(settings.get().withPlans(plans));
    }

    /** Notes how cold the coldest wall of a container is; empty takes back what was said. */
    public void wall(String container, Optional<ColdestWall> wall) {
        Map<String, ColdestWall> walls = new TreeMap<>(settings.get().walls());
        walls.remove(container);
        wall.ifPresent(said -> walls.put(container, said));
        change(settings.get().withWalls(walls));
    }

    /** Tries something of the machine aside, and tells in a sentence what came of it. */
    void tryOut(Supplier<String> attempt, Consumer<String> tell) {
        runner.run(
                progress -> attempt.get(),
                outcome -> tell.accept(
                        outcome instanceof Outcome.Done<String> done
                                ? done.value()
                                : Texts.say("It could not be tried.")));
    }

    /** Names a stage as the keeper does; a blank name, or the vocabulary's own, takes the keeper's away. */
    public void label(Stage stage, String label) {
        Map<Stage, String> labels = new EnumMap<>(Stage.class);
        labels.putAll(settings.get().labels());
        String stripped = label.strip();
        if (stripped.isEmpty() || stripped.equals(base(settings.get()).label(stage))) {
            labels.remove(stage);
        } else {
            labels.put(stage, stripped);
        }
        change(settings.get().withLabels(labels));
    }

    /** Puts theme and text size into force, now and at every later change. */
    public void bind(ObjectProperty<Theme> theme, ObjectProperty<TextSize> size) {
        theme.bind(settings.map(Settings::theme));
        size.bind(settings.map(Settings::textSize));
    }

    private void change(Settings changed) {
        if (changed.equals(settings.get())) {
            return;
        }
        settings.set(changed);
        runner.<Boolean>run(
                progress -> {
                    file.accept(changed);
                    return true;
                },
                this::kept);
    }

    private void kept(Outcome<Boolean> outcome) {
        problem.set(
                outcome instanceof Outcome.Failed<Boolean> failed
                        ? Texts.say(
                                "Your choice holds for now but could not be kept. See who may write there, and"
                                        + " whether the disk is full: {0}",
                                reason(failed.fault()))
                        : "");
    }

    /** What the system said, which tells the file, without the words of this program around it. */
    private static String reason(RuntimeException fault) {
        Throwable said = Optional.ofNullable(fault.getCause()).orElse(fault);
        return String.valueOf(said.getMessage());
    }

    private static Vocabulary vocabularyOf(Settings settings) {
        Vocabulary base = base(settings);
        Map<Stage, String> labels = new EnumMap<>(base.labels());
        labels.putAll(settings.labels());
        return new Vocabulary(base.key(), base.title(), labels);
    }

    private static Vocabulary base(Settings settings) {
        return VOCABULARIES.stream()
                .filter(vocabulary -> vocabulary.key().equals(settings.vocabulary()))
                .findFirst()
                .orElse(Vocabulary.ENGLISH_HOBBY);
    }
}
