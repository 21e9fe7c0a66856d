package org.lagwright.bench;

import java.util.List;

/**
 * A program that does something with one model.
 *
 * @param name shown in the table
 * @param command the process
 * @param expected what it must print for its answer to be right
 */
record Engine(String name, List<String> command, String expected) {

  Engine {
    command = List.copyOf(command);
  }
}
