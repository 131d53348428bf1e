package org.moultwright.device.link;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.moultwright.device.DeviceException;
import org.moultwright.device.check.Hex;
import org.moultwright.domain.Quality;
import org.moultwright.workflow.ProbeIdentity;

class EarTest {
    private static final String ROM = "28DC6674050000B9";
    private static final String OWN = ROM + " 91014B467FFF0F1025\r\n";

    /** The first bytes of another ROM code. */
    private static final String OTHER_ROM = "28DC6674050001";

    @Test
    void theFirstSensorHeardIsTheOne() {
        Desk desk = new Desk("key-value").says("id=a T=25.7\r\nid=b T=31.0\r\nid=a T=25.8\r\nid=b T=31.1\r\n");
        assertThat(desk.temperaturesCelsius()).containsExactly(25.7, 25.8);
        assertThat(desk.identities).containsExactly(ProbeIdentity.ofAdapter("", "A"));
        assertThat(desk.others).containsExactly(ProbeIdentity.ofAdapter("", "B"));
    }

    @Test
    void theWantedSensorIsPickedFromTheOthers() {
        Desk desk = new Desk("key-value", ProbeIdentity.ofAdapter("", "B"))
                .says("id=a T=25.7\r\nid=b T=31.0\r\nid=a T=25.8\r\nid=b T=31.1\r\n");
        assertThat(desk.temperaturesCelsius()).containsExactly(31.0, 31.1);
        assertThat(desk.qualities()).containsOnly(Quality.GOOD);
    }

    @Test
    void anotherSensorThatSpeaksAloneIsNotTakenForIt() {
        Desk desk = new Desk("key-value", ProbeIdentity.ofAdapter("", "B")).says("id=a T=25.7\r\n");
        assertThatThrownBy(() -> desk.says("id=a T=25.8\r\n"))
                .isInstanceOf(DeviceException.class)
                .hasMessageContaining("wanted is address B")
                .hasMessageContaining("DE-6");
        assertThat(desk.heard).isEmpty();
    }

    @Test
    void aRomCodeIsTheSensorWhateverItHangsOn() {
        Desk desk = new Desk("one-wire-scratchpad");
        desk.ear.opened("0403:6001:A1");
        desk.says(OWN);
        assertThat(desk.identities).containsExactly(ProbeIdentity.ofSensor(ROM));
        assertThat(desk.identities.get(0).words()).isEqualTo("sensor " + ROM);
    }

    @Test
    void anAddressIsOneOnItsAdapterOnly() {
        Desk desk = new Desk("modbus-int16");
        desk.ear.opened("0403:6001:A1");
        desk.says(new String(Hex.bytes("010404013102222ACE"), StandardCharsets.ISO_8859_1));
        assertThat(desk.identities).containsExactly(ProbeIdentity.ofAdapter("0403:6001:A1", "01"));
    }

    @Test
    void aSensorThatDoesNotTellWhoItIsIsItsAdapter() {
        Desk desk = new Desk("plain-number");
        desk.ear.opened("0403:6001:A1");
        desk.says("26.1\r\n26.2\r\n");
        assertThat(desk.identities).containsExactly(ProbeIdentity.ofAdapter("0403:6001:A1", ""));
    }

    @Test
    void withNeitherNothingIsKnown() {
        Desk desk = new Desk("plain-number").says("26.1\r\n");
        assertThat(desk.identities).isEmpty();
        assertThat(desk.ear.identity().isKnown()).isFalse();
    }

    @Test
    void aRomCodeWithAWrongCheckIsNobodys() {
        Desk desk = new Desk("one-wire-scratchpad", ProbeIdentity.ofSensor(ROM))
                .says(OTHER_ROM + "FF 91014B467FFF0F1025\r\n");
        assertThat(desk.others).isEmpty();
        assertThat(desk.qualities()).containsExactly(Quality.FAULT);
    }

    @Test
    void whatNobodySaysIsKeptAsAFault() {
        Desk desk = new Desk("one-wire-scratchpad", ProbeIdentity.ofSensor(ROM)).says("hello\r\n" + OWN);
        assertThat(desk.rawLines()).containsExactly("hello", OWN.strip());
        assertThat(desk.qualities()).containsExactly(Quality.FAULT, Quality.GOOD);
    }
}
