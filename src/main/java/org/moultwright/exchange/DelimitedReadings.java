package org.moultwright.exchange;

import java.io.ByteArrayInputStream;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.moultwright.language.Texts;
import org.moultwright.workflow.DocumentException;
import org.moultwright.workflow.ReadingFiles;
import org.moultwright.workflow.ReadingMapping;

/** Files of readings on disk, of any delimiter, encoding and way to write a date. */
public final class DelimitedReadings implements ReadingFiles {
    /** Some hundred rows; more tells no more. */
    private static final int LOOKED_AT = 1 << 16;

    @Override
    public ReadingMapping propose(Path file, ZoneId zone) {
        byte[] head = head(file);
        Charset charset = TextCoding.of(head);
        return proposal(file, head, charset, zone).best();
    }

    @Override
    public ReadingMapping propose(Path file, ZoneId zone, Charset charset, char delimiter) {
        return proposal(file, head(file), charset, zone).with(delimiter);
    }

    @Override
    public List<Row> first(Path file, ReadingMapping mapping, int rows) {
        List<Row> first = new ArrayList<>();
        read(file, mapping, (row, share) -> {
            first.add(row);
            return first.size() < rows;
        });
        return first;
    }

    @Override
    public void each(Path file, ReadingMapping mapping, Sink read) {
        read(file, mapping, (row, share) -> {
            read.accept(row, share);
            return true;
        });
    }

    private static void read(Path file, ReadingMapping mapping, RowTaker taker) {
        RowMeaning meaning = new RowMeaning(mapping);
        int[] before = {0};
        try (Counted bytes = new Counted(Files.newInputStream(file));
                Reader text = TextCoding.open(bytes, mapping.charset())) {
            double size = Math.max(1, Files.size(file));
            DelimitedRows.each(text, mapping.delimiter(), (line, cells) -> {
                boolean isReading = before[0] >= mapping.rowsBefore();
                before[0]++;
                Row row = isReading ? meaning.of(line, cells) : new Row(line, cells, Optional.empty(), "");
                return taker.take(row, Math.min(1, bytes.count / size));
            });
        } catch (IOException fault) {
            throw unreadable(file, fault);
        }
    }

    private static MappingProposal proposal(Path file, byte[] head, Charset charset, ZoneId zone) {
        try (Reader text = TextCoding.open(new ByteArrayInputStream(head), charset)) {
            StringWriter beginning = new StringWriter();
            text.transferTo(beginning);
            return new MappingProposal(wholeLines(beginning.toString(), head.length == LOOKED_AT), charset, zone);
        } catch (IOException | UncheckedIOException fault) {
            throw unreadable(file, fault);
        }
    }

    /** A line cut off in the middle could mean anything. */
    private static String wholeLines(String beginning, boolean isCutOff) {
        int end = Math.max(beginning.lastIndexOf('\n'), beginning.lastIndexOf('\r'));
        return isCutOff && end > 0 ? beginning.substring(0, end) : beginning;
    }

    private static byte[] head(Path file) {
        try (InputStream bytes = Files.newInputStream(file)) {
            return bytes.readNBytes(LOOKED_AT);
        } catch (IOException fault) {
            throw unreadable(file, fault);
        }
    }

    private static DocumentException unreadable(Path file, Exception fault) {
        return new DocumentException(
                DocumentException.Reason.NOT_READABLE,
                Texts.say("'{0}' cannot be read: {1}.", file.getFileName(), fault.getMessage()),
                fault);
    }

    @FunctionalInterface
    private interface RowTaker {
        boolean take(Row row, double share);
    }

    /** Counts the bytes read through it. */
    private static final class Counted extends FilterInputStream {
        private long count;

        Counted(InputStream bytes) {
            super(bytes);
        }

        @Override
        public int read() throws IOException {
            int read = super.read();
            count += read < 0 ? 0 : 1;
            return read;
        }

        @Override
        public int read(byte[] buffer, int offset, int length) throws IOException {
            int read = super.read(buffer, offset, length);
            count += Math.max(0, read);
            return read;
        }
    }
}
