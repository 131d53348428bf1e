package org.moultwright.ui.broods;

import java.util.Optional;
import org.moultwright.task.Runner;

/**
 * The ways broods come to the desk.
 *
 * @param sacs what is done with a sac until it is opened
 * @param folders asks which folder
 * @param intake takes in that folder
 * @param intakeRunner runs it aside, behind nothing else: it may take a while
 * @param demoRoom opens the demo room; empty in the demo room itself
 */
public record WaysIn(
        SacWays sacs, FolderChooser folders, FolderIntake intake, Runner intakeRunner, Optional<Runnable> demoRoom) {}
