package org.moultwright.document;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.moultwright.text.TaxonWords;
import org.moultwright.workflow.PotLabel;

/**
 * The words of a label, set in the room they have: code, name and the words beneath each as large as the width allows,
 * then all together as the height allows.
 *
 * @param rows one below the other, the code first
 * @param scale by how much all of them are smaller for the height there is
 */
record LabelText(List<Row> rows, float scale) {
    private static final float LARGEST_CODE_POINTS = 16;
    private static final float LARGEST_WORDS_POINTS = 11;
    private static final float LINE_SPACING = 1.35f;
    private static final String BETWEEN_WORDS = ", ";

    /** The words beneath the name stand in as many rows as make the smallest letters largest. */
    static LabelText of(PotLabel label, LabelFonts fonts, float widthPoints, float heightPoints) {
        String[] words = label.line().split(BETWEEN_WORDS);
        return IntStream.rangeClosed(1, words.length)
                .mapToObj(count -> set(label, rows(words, count), fonts, widthPoints, heightPoints))
                .reduce((best, next) -> next.smallestPoints() > best.smallestPoints() ? next : best)
                .orElseThrow();
    }

    float heightPoints() {
        return (float) rows.stream().mapToDouble(this::heightPoints).sum();
    }

    float heightPoints(Row row) {
        return row.points() * LINE_SPACING * scale;
    }

    float points(Row row) {
        return row.points() * scale;
    }

    private float smallestPoints() {
        return (float) rows.stream().mapToDouble(this::points).min().orElse(0);
    }

    private static LabelText set(
            PotLabel label, List<String> words, LabelFonts fonts, float widthPoints, float heightPoints) {
        List<TextLine> lines =
                words.stream().map(row -> new TextLine(fonts.plain(), row)).toList();
        float wordsPoints = (float) lines.stream()
                .mapToDouble(line -> line.sizeWithin(widthPoints, LARGEST_WORDS_POINTS))
                .min()
                .orElse(LARGEST_WORDS_POINTS);
        TextLine name = new TextLine(fonts.italic(), TaxonWords.abbreviated(label.taxon()));
        TextLine code = new TextLine(fonts.strong(), label.code());
        List<Row> rows = Stream.concat(
                        Stream.of(
                                new Row(code, code.sizeWithin(widthPoints, LARGEST_CODE_POINTS)),
                                new Row(name, name.sizeWithin(widthPoints, LARGEST_WORDS_POINTS))),
                        lines.stream().map(line -> new Row(line, wordsPoints)))
                .filter(row -> !row.text().text().isEmpty())
                .toList();
        float wanted = new LabelText(rows, 1).heightPoints();
        return new LabelText(rows, Math.min(1, heightPoints / wanted));
    }

    /** So many rows of these words, each with as many of them as the next, or one more. */
    private static List<String> rows(String[] words, int count) {
        List<String> rows = new ArrayList<>();
        for (int row = 0; row < count; row++) {
            int from = words.length * row / count;
            int to = words.length * (row + 1) / count;
            rows.add(String.join(BETWEEN_WORDS, List.of(words).subList(from, to)));
        }
        return rows;
    }

    /** One row at its size before the height is looked at. */
    record Row(TextLine text, float points) {}
}
