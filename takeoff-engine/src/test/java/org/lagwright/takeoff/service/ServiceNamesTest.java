package org.lagwright.takeoff.service;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.takeoff.TestElement;

class ServiceNamesTest {

  private static final ServiceClassifier CLASSIFIER =
      new ServiceClassifier(ServicePack.bundled(), List.of(), Map.of());

  @ParameterizedTest(name = "{0} {1}: {2}")
  @CsvFileSource(resources = "names.csv")
  void nameIsRead(String language, String carrier, String name, String service) {
    MepElement element = element(carrier, name);

    assertThat(CLASSIFIER.classify(List.of(element)).values())
        .extracting(Classification::serviceId, Classification::contradiction)
        .containsExactly(tuple(service, null));
  }

  @Test
  void everyLanguageOfThePackHasExamples() {
    WordPack pack = WordPack.bundled();
    List<String> languages =
        pack.meanings().stream()
            .flatMap(meaning -> meaning.words().keySet().stream())
            .filter(language -> !language.equals("abbr"))
            .distinct()
            .sorted()
            .collect(Collectors.toList());

    assertThat(languages)
        .containsExactly(
            "bg", "cs", "da", "de", "el", "en", "es", "fi", "fr", "hr", "hu", "it", "nl", "no",
            "pl", "pt", "ro", "ru", "sk", "sl", "sr", "sv", "tr", "uk");
  }

  private static MepElement element(String carrier, String name) {
    TestElement element =
        carrier.equals("pipe") ? TestElement.pipe(1, 60.3, 1) : TestElement.duct(1, 300, 200, 1);
    return element.inSystem(name).build();
  }
}
