package org.moultwright.settings;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.moultwright.domain.code.CodePattern;
import org.moultwright.domain.label.LabelDesign;
import org.moultwright.domain.label.LabelPart;
import org.moultwright.domain.label.LabelStack;

/** How a keeper works at the desk, as values of settings. */
final class DeskSettingsText {
    private static final String PHOTO_FOLDER = "photo-folder";

    private static final String CODE_PATTERN = "code-pattern";

    private static final String LABEL_PARTS = "label-parts";

    private static final String LABEL_WORDS = "label-words";

    private static final String LABEL_STACK = "label-stack";

    private DeskSettingsText() {}

    static Map<String, String> print(DeskSettings desk) {
        Map<String, String> values = new LinkedHashMap<>();
        values.put(PHOTO_FOLDER, desk.photoFolder());
        values.put(CODE_PATTERN, desk.codePattern().written());
        values.put(LABEL_PARTS, desk.labelDesign().written());
        values.put(LABEL_WORDS, desk.labelDesign().ownWords());
        values.put(LABEL_STACK, desk.labelStack().written());
        return values;
    }

    /**
     * Settings with one value read; empty where it is none of theirs.
     *
     * @throws IllegalArgumentException if it is one of theirs and not understood
     */
    static Optional<DeskSettings> with(DeskSettings desk, String name, String value) {
        return switch (name) {
            case PHOTO_FOLDER -> Optional.of(desk.withPhotoFolder(value));
            case CODE_PATTERN -> Optional.of(desk.withCodePattern(pattern(value)));
            case LABEL_PARTS ->
                Optional.of(desk.withLabelDesign(
                        new LabelDesign(parts(value), desk.labelDesign().ownWords())));
            case LABEL_WORDS ->
                Optional.of(desk.withLabelDesign(desk.labelDesign().withOwnWords(value)));
            case LABEL_STACK -> Optional.of(desk.withLabelStack(stack(value)));
            default -> Optional.empty();
        };
    }

    private static Set<LabelPart> parts(String value) {
        return LabelDesign.read(value)
                .orElseThrow(() -> new IllegalArgumentException(
                        "settings hold the parts of a label '" + value + "', of which one is none"));
    }

    private static LabelStack stack(String value) {
        return LabelStack.read(value)
                .orElseThrow(() -> new IllegalArgumentException(
                        "settings hold the sheet of labels '" + value + "', which cannot be"));
    }

    private static CodePattern pattern(String value) {
        return CodePattern.read(value)
                .orElseThrow(() -> new IllegalArgumentException(
                        "settings hold the pattern of codes '" + value + "', by which no code can be made"));
    }
}
