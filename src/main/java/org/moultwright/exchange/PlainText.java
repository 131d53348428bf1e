package org.moultwright.exchange;

import java.io.BufferedReader;
import java.io.FilterReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/**
 * UTF-8 text, read strictly: bytes that are none are a fault, never a question mark.
 *
 * <p>It also stops at a row too long to be one, such as all that follows a forgotten quotation mark, before
 * that fills the memory.
 */
final class PlainText extends FilterReader {
    private static final int LONGEST_ROW = 100_000;
    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private int inRow;

    private PlainText(Reader reader) {
        super(reader);
    }

    /** Text past its byte order mark, if it has one. */
    static PlainText open(InputStream content) throws IOException {
        BufferedReader reader = new BufferedReader(new InputStreamReader(
                content,
                StandardCharsets.UTF_8
                        .newDecoder()
                        .onMalformedInput(CodingErrorAction.REPORT)
                        .onUnmappableCharacter(CodingErrorAction.REPORT)));
        reader.mark(1);
        if (reader.read() != BYTE_ORDER_MARK) {
            reader.reset();
        }
        return of(reader);
    }

    /** Text that is told row by row. */
    static PlainText of(Reader reader) {
        return new PlainText(reader);
    }

    /** Says that a row has been read whole. */
    void nextRow() {
        inRow = 0;
    }

    @Override
    public int read() throws IOException {
        int character = super.read();
        count(1);
        return character;
    }

    @Override
    public int read(char[] buffer, int offset, int length) throws IOException {
        int read = super.read(buffer, offset, length);
        count(read);
        return read;
    }

    private void count(int characters) throws IOException {
        inRow += characters;
        if (inRow > LONGEST_ROW) {
            throw new IOException("a row is longer than " + LONGEST_ROW + " characters");
        }
    }
}
