package org.moultwright.ui.label;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class LabelNewsTest {
    private final LabelNews news = new LabelNews();

    /** "1 sheet sent" above "not printed" would leave open which of the two holds. */
    @Test
    void whatWentIsNotToldBesideWhatDidNot() {
        news.done("1 sheet sent to the printer.");
        news.failed("");
        assertThat(news.doneProperty().get()).isEqualTo("1 sheet sent to the printer.");
        news.failed("Sheet 1 was not printed.");
        assertThat(news.doneProperty().get()).isEmpty();
        news.done("1 sheet sent to the printer.");
        assertThat(news.problemProperty().get()).isEmpty();
    }
}
