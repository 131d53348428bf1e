package org.moultwright.boot;

import org.moultwright.store.StoreException;

/**
 * Why the desk cannot be opened, as it is told to the keeper.
 *
 * @param sentence what is the matter
 * @param remedy what to do about it, possibly empty
 * @param code a short code to search for, possibly empty
 */
record RefusedOpening(String sentence, String remedy, String code) {

    static RefusedOpening of(RuntimeException fault) {
        String message = String.valueOf(fault.getMessage());
        if (fault instanceof StoreException refused) {
            String remedy = refused.reason().remedy();
            int end = message.indexOf(remedy);
            return new RefusedOpening(
                    end < 0 ? message : message.substring(0, end).strip(),
                    remedy,
                    refused.reason().code());
        }
        return new RefusedOpening(message, "", "");
    }
}
