package org.lagwright.report.bimserver;

import java.util.Map;

/**
 * What is needed to speak to any server.
 *
 * @param environment variables of the process, of which {@link Credentials} says which count
 */
public record ServerAccess(Map<String, String> environment, ServerLimits limits) {

  public ServerAccess {
    environment = Map.copyOf(environment);
  }

  /** Never shows a variable: some are secrets. */
  @Override
  public String toString() {
    return "access with " + limits;
  }
}
