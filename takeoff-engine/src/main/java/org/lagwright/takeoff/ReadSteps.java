package org.lagwright.takeoff;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.Section;

/** The steps of a trace that say what was read from the model, losers included. */
final class ReadSteps {

  private ReadSteps() {}

  static List<Trace.Step> of(MepElement element) {
    List<Trace.Step> steps = new ArrayList<>();
    add(steps, "section", element.section(), ReadSteps::inWords);
    add(steps, "length", element.lengthM(), Show::metres);
    add(steps, "angle", element.angleDeg(), Show::degrees);
    add(steps, "bend radius", element.bendRadiusM(), Show::metres);
    add(steps, "ends", element.endSections(), ReadSteps::inWords);
    add(steps, "eccentricity", element.eccentricityM(), Show::metres);
    add(steps, "branch", element.branchLengthM(), Show::metres);
    return steps;
  }

  private static <T> void add(
      List<Trace.Step> steps,
      String what,
      @Nullable Measured<T> measured,
      Function<T, String> inWords) {
    if (measured == null) {
      return;
    }
    steps.add(
        new Trace.Read(what, inWords.apply(measured.value()), measured.how(), measured.evidence()));
    measured
        .lost()
        .forEach(
            c ->
                steps.add(
                    new Trace.Lost(
                        what, inWords.apply(c.value()), c.how(), c.evidence(), c.why())));
  }

  private static String inWords(List<Section> sections) {
    return sections.stream().map(ReadSteps::inWords).collect(Collectors.joining(" / "));
  }

  private static String inWords(Section section) {
    if (section instanceof Section.Round round) {
      return "round " + Show.millimetres(round.outsideDiameterM());
    }
    if (section instanceof Section.Rectangular r) {
      return Show.millimetres(r.widthM()) + " x " + Show.millimetres(r.heightM());
    }
    if (section instanceof Section.Oval o) {
      return "oval " + Show.millimetres(o.widthM()) + " x " + Show.millimetres(o.heightM());
    }
    throw new IllegalArgumentException("no words for " + section);
  }
}
