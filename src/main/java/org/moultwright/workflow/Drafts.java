package org.moultwright.workflow;

import java.util.List;

/**
 * Keeps what is begun and not saved, so that an interruption loses none of it.
 *
 * @param <T> what is begun: a sheet of the round, a form
 */
@FunctionalInterface
public interface Drafts<T> {
    /**
     * Keeps these, and no others; they are on disk when this returns.
     *
     * @throws DocumentException if that cannot be done; those kept before are then kept still
     */
    void keep(List<T> drafts);
}
