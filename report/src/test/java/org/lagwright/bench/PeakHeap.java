package org.lagwright.bench;

import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.util.Arrays;

/** Starts another main class and says at the end how much heap it used at most. */
public final class PeakHeap {

  static final String PREFIX = "peak heap bytes ";

  private PeakHeap() {}

  /**
   * Runs a program.
   *
   * @param arguments its main class, then what it is given
   */
  public static void main(String[] arguments) throws ReflectiveOperationException {
    Runtime.getRuntime().addShutdownHook(new Thread(PeakHeap::print));
    String[] rest = Arrays.copyOfRange(arguments, 1, arguments.length);
    Class.forName(arguments[0]).getMethod("main", String[].class).invoke(null, (Object) rest);
  }

  /** The pools peak at different moments, so this is no less than what was in use at once. */
  private static void print() {
    long bytes =
        ManagementFactory.getMemoryPoolMXBeans().stream()
            .filter(pool -> pool.getType() == MemoryType.HEAP)
            .map(MemoryPoolMXBean::getPeakUsage)
            .mapToLong(usage -> usage.getUsed())
            .sum();
    System.err.println(PREFIX + bytes);
  }
}
