/** The checksum by which a zip knows damage (CRC-32 of ISO 3309 and ITU-T V.42, reflected 0xEDB88320). */
const table = Uint32Array.from({ length: 256 }, (_, byte) => {
  let value = byte;
  for (let bit = 0; bit < 8; bit += 1) value = (value >>> 1) ^ (value & 1 ? 0xedb88320 : 0);
  return value;
});

/** As a number from 0 to 2^32 - 1. */
export const crc32 = (bytes: Uint8Array): number => {
  let value = 0xffffffff;
  for (const byte of bytes) value = (value >>> 8) ^ (table[(value ^ byte) & 0xff] ?? 0);
  return (value ^ 0xffffffff) >>> 0;
};
