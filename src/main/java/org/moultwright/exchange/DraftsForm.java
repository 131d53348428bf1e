package org.moultwright.exchange;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.util.List;

/** How drafts of one sort stand in their file. */
interface DraftsForm<T> {
    byte[] print(List<T> drafts) throws JsonProcessingException;

    /**
     * Reads what {@link #print} wrote.
     *
     * @throws IllegalArgumentException if any of it is not understood: half a draft would pass for a whole one
     */
    List<T> read(String content) throws JsonProcessingException;
}
