package org.moultwright.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.moultwright.domain.label.Paper;
import org.moultwright.language.PseudoLanguage;
import org.moultwright.language.Texts;
import org.moultwright.text.SitterWords;
import org.moultwright.workflow.SitterSheet.Tray;

/** Prints sitter's sheets in an invented wordy language, and fails where one leaves its page or lacks a rule. */
final class PseudoSheets {
    private PseudoSheets() {}

    public static void main(String[] none) throws IOException {
        Texts.use(PseudoLanguage.made());
        for (Paper paper : Paper.values()) {
            for (int count : new int[] {1, 13, 40}) {
                print(paper, count);
            }
        }
    }

    private static void print(Paper paper, int count) throws IOException {
        List<Tray> trays = SitterDocumentTest.trays(count, tray -> Texts.say("Nothing special."));
        PrintedSheets printed = SitterDocumentTest.printed(
                SitterDocumentTest.sheet(paper, trays), "wordy-" + paper.key() + "-" + count);
        assertThat(printed.count()).isEqualTo(1);
        SitterDocumentTest.staysOnThePage(printed, paper);
        String words = SitterDocumentTest.words(printed);
        for (List<String> rules :
                List.of(SitterWords.TO_DO, SitterWords.call(Optional.of("28.3 °C (INC-1)")), SitterWords.NEVER)) {
            rules.forEach(rule -> assertThat(words).contains(rule));
        }
        trays.forEach(tray -> assertThat(words).contains(" " + tray.code()));
    }
}
