package org.moultwright.exchange;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/**
 * In which encoding a file nobody vouches for is written: by its byte order mark, else by where its zero bytes are,
 * else UTF-8 if it is that, else the Latin-1 of old loggers.
 */
final class TextCoding {
    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private TextCoding() {}

    /** The encoding of a file that begins so. */
    static Charset of(byte[] head) {
        if (startsWith(head, 0xFF, 0xFE)) {
            return StandardCharsets.UTF_16LE;
        }
        if (startsWith(head, 0xFE, 0xFF)) {
            return StandardCharsets.UTF_16BE;
        }
        int zerosAtEven = zeros(head, 0);
        int zerosAtOdd = zeros(head, 1);
        if (zerosAtOdd > head.length / 4) {
            return StandardCharsets.UTF_16LE;
        }
        if (zerosAtEven > head.length / 4) {
            return StandardCharsets.UTF_16BE;
        }
        return isUtf8(head) ? StandardCharsets.UTF_8 : StandardCharsets.ISO_8859_1;
    }

    /** The text of a file past its byte order mark; bytes that are no text become a replacement mark. */
    static Reader open(InputStream content, Charset charset) throws IOException {
        CharsetDecoder lenient = charset.newDecoder()
                .onMalformedInput(CodingErrorAction.REPLACE)
                .onUnmappableCharacter(CodingErrorAction.REPLACE);
        BufferedReader reader = new BufferedReader(new InputStreamReader(content, lenient), 1 << 16);
        reader.mark(1);
        if (reader.read() != BYTE_ORDER_MARK) {
            reader.reset();
        }
        return reader;
    }

    private static boolean startsWith(byte[] head, int first, int second) {
        return head.length >= 2 && (head[0] & 0xFF) == first && (head[1] & 0xFF) == second;
    }

    private static int zeros(byte[] head, int from) {
        int zeros = 0;
        for (int i = from; i < head.length; i += 2) {
            zeros += head[i] == 0 ? 1 : 0;
        }
        return zeros;
    }

    /** A character cut off at the end of the head is no fault. */
    private static boolean isUtf8(byte[] head) {
        CharsetDecoder strict = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        return !strict.decode(ByteBuffer.wrap(head), CharBuffer.allocate(head.length + 1), false)
                .isError();
    }
}
