package org.lagwright.ifc.step;

/**
 * How much a file may ask of us before it is refused. One value, so that hostile files meet the
 * same bounds everywhere.
 *
 * @param maxRecords instances in one file
 * @param maxKeywords different keywords in one file
 * @param maxNesting brackets within brackets in one record
 * @param maxRecordBytes length of one record
 * @param maxTextBytes length of one string; a longer one reads as none
 * @param maxReferenceDepth records followed from one to the next in one question
 * @param maxInflatedBytes size of an unpacked archive entry
 * @param maxInflateRatio unpacked size against packed size, held from 10 MB on
 */
public record StepLimits(
    long maxRecords,
    int maxKeywords,
    int maxNesting,
    int maxRecordBytes,
    int maxTextBytes,
    int maxReferenceDepth,
    long maxInflatedBytes,
    int maxInflateRatio) {

  /** Wide enough for every real file we met, tight enough to end in a message. */
  public static final StepLimits DEFAULT =
      new StepLimits(500_000_000L, 1 << 16, 100, 1 << 28, 1 << 20, 200, 16L << 30, 200);
}
