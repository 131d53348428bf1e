package org.moultwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.store.StoreException.Reason;

/** A store that is open elsewhere is refused by the name of the other, which goes on undisturbed. */
class InUseStoreTest {
    @TempDir
    Path folder;

    @Test
    void bySameProgram() {
        Path file = folder.resolve("room.store");
        try (H2Store first = H2Store.open(file)) {
            assertRefused(file, ProcessHandle.current().pid());
            assertThat(first.book().broods()).isEmpty();
        }
        H2Store.open(file).close();
        assertThat(folder.resolve("room.store.owner")).doesNotExist();
    }

    @Test
    void byAnotherProgram() throws IOException {
        Path file = folder.resolve("room.store");
        Process other = ChildJvm.start(StoreHolder.class, file.toString());
        try (BufferedReader said =
                new BufferedReader(new InputStreamReader(other.getInputStream(), StandardCharsets.UTF_8))) {
            assertThat(said.readLine()).isEqualTo("open");
            assertRefused(file, other.pid());
            other.getOutputStream().write('\n');
            other.getOutputStream().flush();
            assertThat(said.readLine()).isEqualTo("0 broods");
        } finally {
            other.destroyForcibly();
        }
    }

    @Test
    void aNoteLeftByAKilledProgramDoesNoHarm() throws IOException {
        Path file = folder.resolve("room.store");
        Files.writeString(folder.resolve("room.store.owner"), "process 1 on elsewhere");
        H2Store.open(file).close();
    }

    private static void assertRefused(Path file, long ownerPid) {
        StoreException refusal = catchThrowableOfType(
                StoreException.class, () -> H2Store.open(file).close());
        assertThat(refusal.reason()).isEqualTo(Reason.IN_USE);
        assertThat(refusal).hasMessageContaining("process " + ownerPid + " on ");
    }

    /** Holds a store open until told to go on, then uses it once more. */
    static final class StoreHolder {
        private StoreHolder() {}

        public static void main(String[] arguments) throws IOException {
            try (H2Store store = H2Store.open(Path.of(arguments[0]))) {
                System.out.println("open");
                int go = System.in.read();
                System.out.println(
                        go < 0 ? "nobody there" : store.book().broods().size() + " broods");
            }
        }
    }
}
