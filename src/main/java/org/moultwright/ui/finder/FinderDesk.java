package org.moultwright.ui.finder;

import java.util.concurrent.Executor;
import org.moultwright.task.Runner;
import org.moultwright.workflow.LineForms;
import org.moultwright.workflow.ProbeLinks;
import org.moultwright.workflow.RawWires;

/**
 * All that the page about unknown lines works with.
 *
 * @param wires ports heard as they are
 * @param forms the forms of line there are
 * @param links tries a form on a port
 * @param runner looks for forms and keeps profiles aside
 * @param screen runs what was heard on the thread of the screen
 */
public record FinderDesk(RawWires wires, LineForms forms, ProbeLinks links, Runner runner, Executor screen) {}
