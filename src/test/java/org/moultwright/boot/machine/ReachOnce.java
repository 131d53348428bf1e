package org.moultwright.boot.machine;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.moultwright.domain.AlarmEntry;
import org.moultwright.domain.AlarmKind;
import org.moultwright.domain.AlarmTurn;

/** Tries every way an alarm has on a machine, and then tells of one; what was played is left in a file. */
final class ReachOnce {
    private ReachOnce() {}

    public static void main(String[] arguments) throws Exception {
        MachineReach reach = new MachineReach();
        System.out.println(reach.tryTone());
        Files.write(Path.of(arguments[0]), RecordedSound.played());
        reach.notice(new AlarmEntry(
                UUID.randomUUID(),
                Instant.EPOCH,
                "--box 1",
                AlarmKind.VERY_HIGH,
                AlarmTurn.RAISED,
                33.4,
                Optional.empty()));
        System.out.println(reach.tryNotice());
        System.exit(0);
    }
}
