package org.moultwright.document;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.GregorianCalendar;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;

/**
 * What a PDF says of itself.
 *
 * @param title what it is
 * @param madeAt when
 */
record DocumentFacts(String title, Instant madeAt) {
    private static final String PRODUCT = "Moultwright";

    void describe(PDDocument document) {
        GregorianCalendar at = GregorianCalendar.from(madeAt.atZone(ZoneOffset.UTC));
        PDDocumentInformation facts = new PDDocumentInformation();
        facts.setTitle(title);
        facts.setCreator(PRODUCT);
        facts.setProducer(PRODUCT);
        facts.setCreationDate(at);
        facts.setModificationDate(at);
        document.setDocumentInformation(facts);
        // Without this the file's identity is drawn from the clock.
        document.setDocumentId(madeAt.toEpochMilli());
    }
}
