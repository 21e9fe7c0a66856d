package org.lagwright.report.json;

import java.util.List;
import org.lagwright.takeoff.Question;

/** Something to decide before pricing. */
record QuestionView(
    String code,
    String question,
    String what,
    String size,
    int pieces,
    double lengthM,
    String example,
    List<String> elements) {

  /**
   * The view of one question.
   *
   * @param elements GlobalIds of its elements
   */
  static QuestionView of(Question question, List<String> elements) {
    return new QuestionView(
        question.code(),
        question.question(),
        question.what(),
        question.size(),
        question.pieces(),
        Finite.number(question.lengthM()),
        question.example(),
        elements);
  }
}
