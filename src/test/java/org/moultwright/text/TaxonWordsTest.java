package org.moultwright.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TaxonWordsTest {

    @ParameterizedTest
    @CsvSource({
        "Chromatopelma cyaneopubescens, C. cyaneopubescens",
        "Tliltocatl sp. north, T. sp. north",
        "Theraphosidae, Theraphosidae"
    })
    void shortensTheGenus(String taxon, String abbreviated) {
        assertThat(TaxonWords.abbreviated(taxon)).isEqualTo(abbreviated);
    }
}
