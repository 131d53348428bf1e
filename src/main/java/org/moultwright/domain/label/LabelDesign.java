package org.moultwright.domain.label;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What stands on the labels of pots.
 *
 * @param parts what does, beside the code
 * @param ownWords words of the keeper's own on every label, possibly empty
 */
public record LabelDesign(Set<LabelPart> parts, String ownWords) {
    public static final LabelDesign STANDARD = new LabelDesign(
            EnumSet.of(LabelPart.SQUARE, LabelPart.NAME, LabelPart.STAGE_AND_DAY, LabelPart.POT_SIZE), "");

    private static final String SEPARATOR = ",";

    public LabelDesign {
        parts = Set.copyOf(parts);
        ownWords = ownWords.strip();
    }

    public boolean has(LabelPart part) {
        return parts.contains(part);
    }

    /** The same with a part on it, or without. */
    public LabelDesign with(LabelPart part, boolean isOn) {
        Set<LabelPart> others = EnumSet.noneOf(LabelPart.class);
        others.addAll(parts);
        if (isOn) {
            others.add(part);
        } else {
            others.remove(part);
        }
        return new LabelDesign(others, ownWords);
    }

    public LabelDesign withOwnWords(String words) {
        return new LabelDesign(parts, words);
    }

    /** Its parts as they are written in settings: "square,name". */
    public String written() {
        return Arrays.stream(LabelPart.values())
                .filter(parts::contains)
                .map(LabelPart::key)
                .collect(Collectors.joining(SEPARATOR));
    }

    /** Parts as they are written in settings; empty if one of them is none. */
    public static Optional<Set<LabelPart>> read(String written) {
        Set<LabelPart> parts = EnumSet.noneOf(LabelPart.class);
        for (String key : written.isBlank() ? new String[0] : written.split(SEPARATOR, -1)) {
            Optional<LabelPart> part = Arrays.stream(LabelPart.values())
                    .filter(known -> known.key().equals(key.strip()))
                    .findFirst();
            if (part.isEmpty()) {
                return Optional.empty();
            }
            parts.add(part.get());
        }
        return Optional.of(parts);
    }
}
