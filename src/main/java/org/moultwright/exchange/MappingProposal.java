package org.moultwright.exchange;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.moultwright.workflow.ReadingMapping;

/** Proposes a mapping by trying what the beginning of a file could mean: the delimiter that makes most sense of it. */
final class MappingProposal {
    private static final List<Character> DELIMITERS = List.of(';', '\t', ',', '|', ' ');
    private static final int SAMPLED_ROWS = 400;

    private final String beginning;
    private final Charset charset;
    private final ZoneId zone;

    /** @param beginning whole lines of the file's text */
    MappingProposal(String beginning, Charset charset, ZoneId zone) {
        this.beginning = beginning;
        this.charset = charset;
        this.zone = zone;
    }

    ReadingMapping best() {
        return DELIMITERS.stream()
                .map(this::tried)
                .max(Comparator.comparingLong(Tried::understood)
                        .thenComparingInt(tried -> tried.mapping().columns().size()))
                .orElseThrow()
                .mapping();
    }

    ReadingMapping with(char delimiter) {
        return tried(delimiter).mapping();
    }

    private Tried tried(char delimiter) {
        List<List<String>> rows = rows(delimiter);
        ColumnGuess guess = new ColumnGuess(rows);
        ReadingMapping mapping = new ReadingMapping(charset, delimiter, 0, guess.meanings(), guess.dateOrder(), zone);
        RowMeaning meaning = new RowMeaning(mapping);
        int first = -1;
        long understood = 0;
        if (mapping.missing().isEmpty()) {
            for (int i = 0; i < rows.size(); i++) {
                if (meaning.of(i, rows.get(i)).reading().isPresent()) {
                    first = first < 0 ? i : first;
                    understood++;
                }
            }
        }
        return new Tried(mapping.withRowsBefore(first < 0 ? guess.headerRows() : first), understood);
    }

    private List<List<String>> rows(char delimiter) {
        List<List<String>> rows = new ArrayList<>();
        try {
            DelimitedRows.each(new StringReader(beginning), delimiter, (line, cells) -> {
                rows.add(cells);
                return rows.size() < SAMPLED_ROWS;
            });
        } catch (IOException tooLongARow) {
            throw new UncheckedIOException(tooLongARow);
        }
        return rows;
    }

    private record Tried(ReadingMapping mapping, long understood) {}
}
