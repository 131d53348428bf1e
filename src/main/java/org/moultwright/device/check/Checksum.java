package org.moultwright.device.check;

import java.util.Arrays;
import java.util.Optional;

/**
 * A check value sent with a record, so that the receiver sees what the wire did to it. Known by a name of its
 * form.
 */
public enum Checksum {
    /** x⁸+x⁵+x⁴+1, lowest bit first, from 0: the check of the one-wire bus. */
    CRC8_1WIRE("crc8-1wire", 1) {
        @Override
        int of(byte[] bytes) {
            return lowestBitFirst(bytes, 0x8C, 0);
        }
    },
    /** x⁸+x⁵+x⁴+1, highest bit first, from all ones: the check of many humidity sensors. */
    CRC8_31_FF("crc8-31-ff", 1) {
        @Override
        int of(byte[] bytes) {
            int crc = 0xFF;
            for (byte next : bytes) {
                crc ^= next & 0xFF;
                for (int bit = 0; bit < 8; bit++) {
                    crc = (crc & 0x80) == 0 ? crc << 1 : (crc << 1 ^ 0x31) & 0xFF;
                }
            }
            return crc;
        }
    },
    /** x¹⁶+x¹⁵+x²+1, lowest bit first, from all ones, low byte sent first: Modbus RTU. */
    CRC16_MODBUS("crc16-modbus", 2) {
        @Override
        int of(byte[] bytes) {
            return Short.toUnsignedInt(Short.reverseBytes((short) lowestBitFirst(bytes, 0xA001, 0xFFFF)));
        }
    },
    /** All bytes by exclusive or. */
    XOR8("xor8", 1) {
        @Override
        int of(byte[] bytes) {
            int check = 0;
            for (byte next : bytes) {
                check ^= next & 0xFF;
            }
            return check;
        }
    },
    /** The lowest eight bits of the sum. */
    SUM8("sum8", 1) {
        @Override
        int of(byte[] bytes) {
            int sum = 0;
            for (byte next : bytes) {
                sum += next & 0xFF;
            }
            return sum & 0xFF;
        }
    },
    /** What makes the sum of all bytes 0 in its lowest eight bits: the check of Modbus in text form. */
    LRC8("lrc8", 1) {
        @Override
        int of(byte[] bytes) {
            return -SUM8.of(bytes) & 0xFF;
        }
    };

    private final String key;
    private final int width;

    Checksum(String key, int width) {
        this.key = key;
        this.width = width;
    }

    public String key() {
        return key;
    }

    public static Optional<Checksum> fromKey(String key) {
        return Arrays.stream(values())
                .filter(checksum -> checksum.key.equals(key))
                .findFirst();
    }

    /** The check bytes in the order they are sent, as one number. */
    abstract int of(byte[] bytes);

    /** The check bytes in the order they are sent. */
    public byte[] checkOf(byte[] bytes) {
        int check = of(bytes);
        return width == 1 ? new byte[] {(byte) check} : new byte[] {(byte) (check >> 8), (byte) check};
    }

    /** Whether these bytes end in the check of those before it. */
    public boolean endsRightly(byte[] bytes) {
        int length = bytes.length - width;
        return length > 0
                && Arrays.equals(
                        Arrays.copyOfRange(bytes, length, bytes.length), checkOf(Arrays.copyOf(bytes, length)));
    }

    private static int lowestBitFirst(byte[] bytes, int polynomial, int start) {
        int crc = start;
        for (byte next : bytes) {
            crc ^= next & 0xFF;
            for (int bit = 0; bit < 8; bit++) {
                crc = (crc & 1) == 0 ? crc >> 1 : crc >> 1 ^ polynomial;
            }
        }
        return crc;
    }
}
