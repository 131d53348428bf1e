package org.moultwright.text;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import org.moultwright.domain.Require;
import org.moultwright.domain.Stage;
import org.moultwright.language.Texts;

/**
 * The names a keeper uses for the stages.
 *
 * <p>Three ways of naming are in use, and the same short name means different stages in two of them, so
 * stages are stored by key and only shown through one of these.
 *
 * @param key the name this vocabulary has in the settings
 * @param title what a keeper calls this way of naming
 * @param labels one label a stage
 */
public record Vocabulary(String key, String title, Map<Stage, String> labels) {
    public static final Vocabulary ENGLISH_HOBBY = of(
            "english-hobby",
            Texts.kept("English hobby"),
            Texts.kept("Egg"),
            Texts.kept("Egg with legs"),
            Texts.kept("Nymph"),
            Texts.kept("Dark nymph"),
            Texts.kept("Sling"));
    public static final Vocabulary SCIENTIFIC = of(
            "scientific",
            Texts.kept("Scientific"),
            Texts.kept("Embryo"),
            Texts.kept("Postembryo"),
            Texts.kept("First instar"),
            Texts.kept("First instar, pre-moult"),
            Texts.kept("Second instar"));
    public static final Vocabulary N_L_COUNTING =
            of("n-l", Texts.kept("N and L counting"), Texts.kept("Egg"), "N1", "N2", Texts.kept("N2 dark"), "L1");

    public Vocabulary {
        EnumMap<Stage, String> complete = new EnumMap<>(Stage.class);
        for (Stage stage : Stage.values()) {
            complete.put(stage, Require.text(stage.key(), labels.getOrDefault(stage, "")));
        }
        labels = Collections.unmodifiableMap(complete);
    }

    private static Vocabulary of(String key, String title, String... labels) {
        EnumMap<Stage, String> byStage = new EnumMap<>(Stage.class);
        Stage[] stages = Stage.values();
        for (int i = 0; i < stages.length; i++) {
            byStage.put(stages[i], labels[i]);
        }
        return new Vocabulary(key, title, byStage);
    }

    public String label(Stage stage) {
        return Texts.say(kept(stage));
    }

    /** The label inside a sentence: "sling", "egg with legs", "N1". */
    public String singular(Stage stage) {
        return Texts.say(one(stage));
    }

    private String kept(Stage stage) {
        return Require.text(stage.key(), labels.getOrDefault(stage, ""));
    }

    private String one(Stage stage) {
        String label = kept(stage);
        boolean isCode = label.length() > 1 && !Character.isLowerCase(label.charAt(1));
        return isCode ? label : label.substring(0, 1).toLowerCase(Locale.ROOT) + label.substring(1);
    }

    /** The label inside a sentence, in the plural: "slings", "eggs with legs". A label of the keeper's own gets an English one. */
    public String plural(Stage stage) {
        String one = one(stage);
        int space = one.indexOf(" with ");
        return Texts.say(space < 0 ? one + "s" : one.substring(0, space) + "s" + one.substring(space));
    }
}
