package org.moultwright.store.file;

import java.io.IOException;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A small file beside the store in which a program says who it is. It means nothing once that program has ended. */
final class ProcessNote {
    private static final Pattern PROCESS = Pattern.compile("process (\\d+) on (.*?)(, .*)?");

    private static final DateTimeFormatter MINUTE =
            DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm 'UTC'", Locale.ROOT).withZone(ZoneOffset.UTC);

    private final Path file;

    ProcessNote(Path store, String ending) {
        this.file = store.resolveSibling(store.getFileName() + ending);
    }

    /** @param more further words about this program, which may be none */
    void write(String more) throws IOException {
        ProcessHandle self = ProcessHandle.current();
        String since = self.info()
                .startInstant()
                .map(start -> ", started " + MINUTE.format(start))
                .orElse("");
        Files.writeString(file, "process " + self.pid() + " on " + host() + since + more);
    }

    void remove() throws IOException {
        Files.deleteIfExists(file);
    }

    Optional<String> read() {
        try {
            return Optional.of(Files.readString(file).strip()).filter(words -> !words.isEmpty());
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** Whether the program that wrote it runs on this machine; of one elsewhere nothing is known. */
    boolean isOfARunningProgram() {
        return process()
                .flatMap(ProcessHandle::of)
                .filter(ProcessHandle::isAlive)
                .isPresent();
    }

    boolean isOfThisProgram() {
        return process().filter(id -> id == ProcessHandle.current().pid()).isPresent();
    }

    /** The number of the process that wrote it, if that was on this machine. */
    private Optional<Long> process() {
        Matcher words = PROCESS.matcher(read().orElse(""));
        return words.matches() && words.group(2).equals(host())
                ? Optional.of(Long.valueOf(words.group(1)))
                : Optional.empty();
    }

    private static String host() {
        try {
            return InetAddress.getLocalHost().getHostName();
        } catch (UnknownHostException e) {
            return "this machine";
        }
    }
}
