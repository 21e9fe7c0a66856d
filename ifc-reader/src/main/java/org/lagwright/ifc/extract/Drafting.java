package org.lagwright.ifc.extract;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleConsumer;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.draft.DraftReader;
import org.lagwright.ifc.extract.draft.Drafts;
import org.lagwright.ifc.extract.measure.SeenValues;
import org.lagwright.ifc.extract.property.OpenedFile;
import org.lagwright.ifc.extract.property.PropertyReader;
import org.lagwright.ifc.extract.property.RepeatedProperties;
import org.lagwright.ifc.schema.IfcRecord;
import org.lagwright.ifc.threads.Workers;

/** Reads every element by itself, some at a time. */
final class Drafting implements Workers.Work<Drafting.Drafted> {

  private final OpenedFile opened;
  private final DraftReader reader;
  private final long[] ids;
  private final DoubleConsumer progress;
  private final List<Draft> drafts;
  private final RepeatedProperties repeated = new RepeatedProperties();
  private final SeenValues seen = new SeenValues();

  /** Some drafts, and what was seen on them that concerns all. */
  static final class Drafted {
    private final List<Draft> drafts = new ArrayList<>(Drafts.RUN);
    private final List<List<PropertyReader.Repeated>> repeated = new ArrayList<>();
    private final SeenValues seen = new SeenValues();
  }

  /**
   * @param ids the elements
   * @param progress told how much of them is read, 0 to 1, now and then
   */
  Drafting(OpenedFile opened, DraftReader reader, long[] ids, DoubleConsumer progress) {
    this.opened = opened;
    this.reader = reader;
    this.ids = ids;
    this.progress = progress;
    this.drafts = new ArrayList<>(ids.length);
  }

  List<Draft> drafts() {
    return drafts;
  }

  /** The properties that stand twice in a set. */
  RepeatedProperties repeated() {
    return repeated;
  }

  /** What may turn out to be placeholders among the properties. */
  SeenValues seen() {
    return seen;
  }

  @Override
  public Drafted on(int from, int to) {
    Drafted drafted = new Drafted();
    for (int i = from; i < to; i++) {
      IfcRecord record = opened.file().find(ids[i]);
      if (record != null && !opened.relations().onlyDeclares(ids[i])) {
        Draft draft = reader.read(record, drafted.repeated);
        drafted.seen.look(draft);
        if (draft.kind() == null || draft.kind().isLagged()) {
          draft.fold();
        } else {
          draft.foldMeasured();
        }
        drafted.drafts.add(draft);
      }
    }
    return drafted;
  }

  @Override
  public void take(Drafted done) {
    drafts.addAll(done.drafts);
    for (List<PropertyReader.Repeated> each : done.repeated) {
      repeated.addAll(each);
    }
    seen.addAll(done.seen);
    progress.accept((double) drafts.size() / ids.length);
  }
}
