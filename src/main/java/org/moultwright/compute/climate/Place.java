package org.moultwright.compute.climate;

import java.util.List;

/**
 * The containers around some animals, innermost first.
 *
 * @param containers their codes, at least one
 * @param isAssumed whether nobody wrote down that the animals were there
 */
record Place(List<String> containers, boolean isAssumed) {
    String outermost() {
        return containers.get(containers.size() - 1);
    }
}
