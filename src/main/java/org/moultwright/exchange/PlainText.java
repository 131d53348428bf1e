package org.moultwright.exchange;

import java.io.BufferedReader;
import java.io.FilterReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/** Opens UTF-8 text strictly: bytes that are none are a fault, never a question mark. */
final class PlainText {
    private PlainText() {}

    /** A reader past the byte order mark, if there is one, that refuses lines no hand ever wrote. */
    static Reader open(InputStream content) throws IOException {
        BufferedReader reader = new BufferedReader(new InputStreamReader(
                content,
                StandardCharsets.UTF_8
                        .newDecoder()
                        .onMalformedInput(CodingErrorAction.REPORT)
                        .onUnmappableCharacter(CodingErrorAction.REPORT)));
        reader.mark(1);
        if (reader.read() != '\uFEFF') {
            reader.reset();
        }
        return new LineLimit(reader);
    }

    /** Stops at a line too long to be one, before it fills the memory. */
    private static final class LineLimit extends FilterReader {
        private static final int LONGEST = 100_000;
        private int inLine;

        LineLimit(Reader reader) {
            super(reader);
        }

        @Override
        public int read() throws IOException {
            int character = super.read();
            count(character);
            return character;
        }

        @Override
        public int read(char[] buffer, int offset, int length) throws IOException {
            int read = super.read(buffer, offset, length);
            for (int i = 0; i < read; i++) {
                count(buffer[offset + i]);
            }
            return read;
        }

        private void count(int character) throws IOException {
            inLine = character == '\n' || character == '\r' ? 0 : inLine + 1;
            if (inLine > LONGEST) {
                throw new IOException("a line is longer than " + LONGEST + " characters");
            }
        }
    }
}
