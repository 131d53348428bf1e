package org.moultwright.ui.broods;

import org.moultwright.ui.draft.BegunDesk;
import org.moultwright.workflow.BeginBrood;
import org.moultwright.workflow.FormDraft;
import org.moultwright.workflow.OpenSac;
import org.moultwright.workflow.PullSac;

/**
 * What is done with a sac until it is opened.
 *
 * @param begin writes it down
 * @param pull writes down that it was taken from its mother
 * @param open opens it
 * @param begun where forms wait that are begun and not saved
 */
public record SacWays(BeginBrood begin, PullSac pull, OpenSac open, BegunDesk<FormDraft> begun) {}
