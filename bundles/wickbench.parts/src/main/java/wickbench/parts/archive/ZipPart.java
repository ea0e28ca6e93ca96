package wickbench.parts.archive;

/**
 * A file in a zip, as its directory describes it.
 *
 * @param packed whether it is deflated; else it is stored as it is
 * @param crc the check sum of what comes out
 * @param packedSize bytes it takes in the zip
 * @param size bytes that come out
 * @param header where its own header begins
 */
record ZipPart(String name, boolean packed, long crc, int packedSize, int size, int header) {}
