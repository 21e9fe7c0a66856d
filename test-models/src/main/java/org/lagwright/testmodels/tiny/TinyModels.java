package org.lagwright.testmodels.tiny;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** The tiny models, as they lie on the class path. */
public final class TinyModels {

  private static final Map<String, Supplier<String>> MODELS = models();

  private TinyModels() {}

  /** The names of all tiny models, in a fixed order. */
  public static List<String> list() {
    return List.copyOf(MODELS.keySet());
  }

  /**
   * The bytes of a model.
   *
   * @throws IllegalArgumentException where {@link #list} does not have the name
   */
  public static byte[] read(String name) {
    try (InputStream in = TinyModels.class.getResourceAsStream(name + "/model.ifc")) {
      if (in == null) {
        throw new IllegalArgumentException("no tiny model " + name + "; there are " + list());
      }
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The text that our writer makes for a model. */
  static String write(String name) {
    Supplier<String> model = MODELS.get(name);
    if (model == null) {
      throw new IllegalArgumentException("no tiny model " + name);
    }
    return model.get();
  }

  private static Map<String, Supplier<String>> models() {
    Map<String, Supplier<String>> models = new LinkedHashMap<>();
    models.putAll(ShapeRules.models());
    models.putAll(PropertyRules.models());
    models.putAll(RelationRules.models());
    models.putAll(FittingRules.models());
    models.putAll(BelongingRules.models());
    models.putAll(TextRules.models());
    return models;
  }
}
