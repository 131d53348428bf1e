package org.moultwright.workflow;

import java.util.List;

/** Keeps the sheets that are begun and not saved, so that an interruption loses none of them. */
@FunctionalInterface
public interface SheetDrafts {
    /**
     * Keeps these, and no others; they are on disk when this returns.
     *
     * @throws DocumentException if that cannot be done; those kept before are then kept still
     */
    void keep(List<SheetDraft> drafts);
}
