package org.lagwright.ifc.source;

/** Told how far reading has come. */
@FunctionalInterface
public interface ProgressListener {

  /** Tells nobody. */
  ProgressListener SILENT =
      new ProgressListener() {
        @Override
        public void progress(String what, double fraction) {}
      };

  /**
   * Some progress.
   *
   * @param what what is being done, in words
   * @param fraction how much of it is done, 0 to 1
   */
  void progress(String what, double fraction);
}
