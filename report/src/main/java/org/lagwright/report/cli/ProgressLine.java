package org.lagwright.report.cli;

import java.io.PrintWriter;
import org.lagwright.ifc.source.ProgressListener;
import org.lagwright.report.PlainText;

/** One line in the terminal that is written over and over. */
final class ProgressLine implements ProgressListener {

  private final PrintWriter terminal;
  private String shown = "";

  ProgressLine(PrintWriter terminal) {
    this.terminal = terminal;
  }

  @Override
  public void progress(String what, double fraction) {
    show(PlainText.oneLine(what) + " " + Math.round(fraction * 100) + " %");
  }

  /** Wipes the line, so that what follows starts on an empty one. */
  void clear() {
    show("");
    terminal.print("\r");
    terminal.flush();
  }

  private void show(String text) {
    if (text.equals(shown)) {
      return;
    }
    String rest = " ".repeat(Math.max(0, shown.length() - text.length()));
    terminal.print("\r" + text + rest);
    terminal.flush();
    shown = text;
  }
}
