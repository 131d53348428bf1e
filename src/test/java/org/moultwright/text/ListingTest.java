package org.moultwright.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class ListingTest {
    @Test
    void thingsAreNamedAsInASentence() {
        assertThat(Listing.and(List.of())).isEmpty();
        assertThat(Listing.and(List.of("A1"))).isEqualTo("A1");
        assertThat(Listing.and(List.of("A1", "A2"))).isEqualTo("A1 and A2");
        assertThat(Listing.and(List.of("A1", "A2", "B1"))).isEqualTo("A1, A2 and B1");
    }

    @Test
    void beyondAFewTheRestIsCounted() {
        List<String> five = List.of("A1", "A2", "A3", "A4", "A5");
        assertThat(Listing.few(five, 5)).isEqualTo("A1, A2, A3, A4 and A5");
        assertThat(Listing.few(five, 3)).isEqualTo("A1, A2, A3 and 2 more");
    }
}
