package org.lagwright.report.cli;

/** What the program returns to the shell. Scripts rely on these numbers. */
final class ExitCode {

  static final int DONE = 0;

  /** Done, but there are findings at or above {@code --fail-on}. */
  static final int FINDINGS = 1;

  static final int USAGE = 2;
  static final int INPUT = 3;

  /** Settings or a data pack are wrong. */
  static final int SETTINGS = 4;

  static final int OUTPUT = 5;

  /** A mistake of this program. */
  static final int BUG = 70;

  private ExitCode() {}
}
